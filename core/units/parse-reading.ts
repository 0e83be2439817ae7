import { phrase } from '#core/words/phrase.ts';
import { names, ranges } from './reading-kinds.ts';
import { units } from './unit-table.ts';

export const titrationAcids = ['lactic', 'acetic', 'citric', 'malic', 'tartaric'] as const;
export type TitrationAcid = (typeof titrationAcids)[number];

/** What was measured in a jar; only what was said is there. */
export interface JarReading {
  brix?: number;
  sg?: number;
  ph?: number;
  temperature_C?: number;
  acidity?: { g_per_L: number; as: TitrationAcid };
}

export type ReadingProblemCode = 'empty' | 'not-understood' | 'unit-missing' | 'said-twice' | 'off-range';
export type ReadReading =
  | { readonly ok: true; readonly value: JarReading }
  | { readonly ok: false; readonly problem: { readonly code: ReadingProblemCode; readonly message: string } };

type Kind = keyof JarReading;

const numeral = String.raw`-?(?:\d+(?:[.,]\d+)?|[.,]\d+)`;
const brixUnit = String.raw`°?\s?bx|°?\s?brix|°?\s?plato`;
const degrees = String.raw`(?:°|deg(?:ree)?s?)?\s?`;
const acidUnit = String.raw`g\s?\/\s?l`;
const acid = titrationAcids.join('|');
const unitEnd = String.raw`(?![\p{L}\d])`;
const numberFirst = new RegExp(
  String.raw`^(${numeral})\s*(${brixUnit}|sg|ph|${degrees}c(?:elsius)?|${degrees}f(?:ahrenheit)?|${acidUnit})${unitEnd}`,
  'iu',
);
const wordFirst = new RegExp(
  String.raw`^(ph|${brixUnit}|sg|gravity|temp(?:erature)?|ta|acid(?:ity)?)\s*(?:[:=]|of\s)?\s*(${numeral})(?!\.?\d)`,
  'iu',
);
/** What may follow the number of a word; a unit of another kind stays unread, and is named. */
const unitOf: Partial<Record<Kind, RegExp>> = {
  temperature_C: new RegExp(String.raw`^\s*(${degrees}[cf])${unitEnd}`, 'iu'),
  acidity: new RegExp(String.raw`^\s*(${acidUnit})${unitEnd}`, 'iu'),
};
const acidName = new RegExp(String.raw`^\s*(?:as\s+)?(${acid})(?:\s+acid)?${unitEnd}`, 'iu');
const between = /^(?:[\s,;·/|&+]|\.(?=\s|$)|(?:and|at)\b)+/i;
const bareNumber = new RegExp(String.raw`^${numeral}(?![\p{L}\d])`, 'u');
/** Only a hydrometer is read to three places around one. */
const bareGravity = /^(?:0[.,]99\d|1[.,][01]\d\d)(?!\d)/;

function kindOf(word: string): Kind {
  const plain = word.toLowerCase().replace(/[°\s]|deg(?:ree)?s?/g, '');
  if (plain === 'ph') return 'ph';
  if (plain === 'sg' || plain === 'gravity') return 'sg';
  if (/^(bx|brix|plato)$/.test(plain)) return 'brix';
  return /^(c|celsius|f|fahrenheit|temp|temperature)$/.test(plain) ? 'temperature_C' : 'acidity';
}

/** One sign for what is one: minus, degree, and the wide letters and figures of eastern keyboards. */
function plainSigns(text: string): string {
  const narrow = text.replace(/[\uff01-\uff5e℃℉]/g, (sign) => sign.normalize('NFKC'));
  return narrow.replace(/[−–]/g, '-').replace(/º/g, '°').trim();
}

/** Enough of it to be known again. */
function shortened(text: string): string {
  const characters = [...text];
  return characters.length > 60 ? `${characters.slice(0, 59).join('')}…` : text;
}

function refused(code: ReadingProblemCode, message: string): ReadReading {
  return { ok: false, problem: { code, message } };
}

interface Piece {
  readonly length: number;
  readonly kind: Kind;
  readonly value: number;
  readonly unit: string;
  readonly acid: string | undefined;
}

function pieceAt(rest: string): Piece | null {
  const value = (text: string) => Number(text.replace(',', '.'));
  const withAcid = (piece: Omit<Piece, 'acid'>): Piece => {
    const named = piece.kind === 'acidity' ? acidName.exec(rest.slice(piece.length)) : null;
    return { ...piece, length: piece.length + (named?.[0].length ?? 0), acid: named?.[1] };
  };
  const worded = wordFirst.exec(rest);
  if (worded !== null) {
    const [all, word = '', number = ''] = worded;
    const kind = kindOf(word);
    const unit = unitOf[kind]?.exec(rest.slice(all.length));
    const length = all.length + (unit?.[0].length ?? 0);
    return withAcid({ length, kind, value: value(number), unit: unit?.[1] ?? '' });
  }
  const counted = numberFirst.exec(rest);
  if (counted !== null) {
    const [all, number = '', unit = ''] = counted;
    return withAcid({ length: all.length, kind: kindOf(unit), value: value(number), unit });
  }
  const gravity = bareGravity.exec(rest)?.[0];
  if (gravity === undefined) return null;
  return { length: gravity.length, kind: 'sg', value: value(gravity), unit: 'sg', acid: undefined };
}

/**
 * Reads a line of measurements the way people note them: "4.2 brix, pH 3.4, 21 c".
 *
 * Takes °Brix, SG (also a bare 1.012), pH, °C or °F, and acidity as "6.2 g/L lactic"; number or word first, decimal point or comma, in any
 * order, with commas, strokes, "and" or nothing between. Leaves out: notes; whatever it cannot read it names and refuses, so that nothing is dropped.
 *
 * @returns the reading with the temperature in °C, or a sentence that says what is unclear
 * @example parseReading('4.2 brix, pH 3.4, 21 c') // { brix: 4.2, ph: 3.4, temperature_C: 21 }
 */
export function parseReading(text: string): ReadReading {
  const value: JarReading = {};
  let rest = plainSigns(text);
  if (rest === '') return refused('empty', phrase`Write what you measured, such as ${4.2} brix, pH ${3.4}, 21 °C.`);
  while (rest !== '') {
    const piece = pieceAt(rest);
    if (piece === null) {
      const bare = bareNumber.exec(rest)?.[0];
      return bare === undefined
        ? refused(
            'not-understood',
            phrase`“${shortened(rest)}” is not clear here. Write brix, SG, pH, °C or °F with its number.`,
          )
        : refused('unit-missing', phrase`What is ${bare}? Write ${bare} brix, pH ${bare} or ${bare} °C.`);
    }
    const { kind } = piece;
    if (value[kind] !== undefined)
      return refused('said-twice', phrase`This says ${names[kind]} twice. Log them one by one.`);
    if (kind === 'temperature_C' && piece.unit === '') {
      return refused('unit-missing', phrase`Say whether ${piece.value} is °C or °F.`);
    }
    const isFahrenheit = kind === 'temperature_C' && /f(?:ahrenheit)?$/i.test(piece.unit);
    const stored = isFahrenheit ? piece.value * units.fahrenheit.factor + units.fahrenheit.offset : piece.value;
    const [low, high, sentence] = ranges[kind];
    if (!(stored >= low && stored <= high))
      return refused('off-range', phrase`${sentence()}; this says ${piece.value}.`);
    if (kind === 'acidity') {
      const as = titrationAcids.find((one) => one === piece.acid?.toLowerCase());
      if (as === undefined)
        return refused('unit-missing', phrase`Say as which acid: ${piece.value} g/L lactic, acetic …`);
      value.acidity = { g_per_L: stored, as };
    } else value[kind] = stored;
    rest = rest.slice(piece.length).replace(between, '');
  }
  return { ok: true, value };
}
