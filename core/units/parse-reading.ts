import { phrase } from '#core/words/phrase.ts';
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

const ranges: Readonly<Record<Kind, readonly [number, number, () => string]>> = {
  brix: [0, 80, () => phrase`Brix runs from 0 to 80`],
  sg: [0.9, 1.4, () => phrase`Specific gravity runs from ${0.9} to ${1.4}`],
  ph: [0, 14, () => phrase`pH runs from 0 to 14`],
  temperature_C: [-40, 110, () => phrase`A jar’s temperature lies between −40 and 110 °C`],
  acidity: [0, 200, () => phrase`Acidity runs from 0 to 200 g/L`],
};
const names: Readonly<Record<Kind, string>> = {
  get brix() {
    return phrase`Brix`;
  },
  get sg() {
    return phrase`specific gravity`;
  },
  ph: 'pH',
  get temperature_C() {
    return phrase`the temperature`;
  },
  get acidity() {
    return phrase`the acidity`;
  },
};

const numeral = String.raw`-?(?:\d+(?:[.,]\d+)?|[.,]\d+)`;
const brixUnit = String.raw`°?\s?bx|°?\s?brix|°?\s?plato`;
const acidUnit = String.raw`g\s?\/\s?l`;
const acid = titrationAcids.join('|');
const numberFirst = new RegExp(
  String.raw`^(${numeral})\s*(${brixUnit}|sg|ph|°?\s?c(?:elsius)?|°?\s?f(?:ahrenheit)?|${acidUnit})(?![\p{L}\d])(?:\s*(?:as\s+)?(${acid})(?:\s+acid)?)?`,
  'iu',
);
const wordFirst = new RegExp(
  String.raw`^(ph|${brixUnit}|sg|gravity|temp(?:erature)?|ta|acid(?:ity)?)\s*[:=]?\s*(${numeral})(?:\s*(°?\s?[cf]|${acidUnit})(?![\p{L}\d]))?(?:\s*(?:as\s+)?(${acid})(?:\s+acid)?)?`,
  'iu',
);
const bareNumber = new RegExp(String.raw`^${numeral}(?![\p{L}\d])`, 'u');
/** Only a hydrometer is read to three places around one. */
const bareGravity = /^(?:0[.,]99\d|1[.,][01]\d\d)(?!\d)/;

function kindOf(word: string): Kind {
  const plain = word.toLowerCase().replace(/[°\s]/g, '');
  if (plain === 'ph') return 'ph';
  if (plain === 'sg' || plain === 'gravity') return 'sg';
  if (/^(bx|brix|plato)$/.test(plain)) return 'brix';
  return /^(c|celsius|f|fahrenheit|temp|temperature)$/.test(plain) ? 'temperature_C' : 'acidity';
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
  const worded = wordFirst.exec(rest);
  if (worded !== null) {
    const [all, word = '', number = '', unit = '', as] = worded;
    return { length: all.length, kind: kindOf(word), value: value(number), unit, acid: as };
  }
  const counted = numberFirst.exec(rest);
  if (counted !== null) {
    const [all, number = '', unit = '', as] = counted;
    return { length: all.length, kind: kindOf(unit), value: value(number), unit, acid: as };
  }
  const gravity = bareGravity.exec(rest)?.[0];
  if (gravity === undefined) return null;
  return { length: gravity.length, kind: 'sg', value: value(gravity), unit: 'sg', acid: undefined };
}

/**
 * Reads a line of measurements the way people note them: "4.2 brix, pH 3.4, 21 c".
 *
 * Takes °Brix, SG (also a bare 1.012), pH, °C or °F, and acidity as "6.2 g/L lactic"; number or word first, decimal point or comma, in any
 * order, with commas or nothing between. Leaves out: notes; whatever it cannot read it names and refuses, so that nothing is dropped.
 *
 * @returns the reading with the temperature in °C, or a sentence that says what is unclear
 * @example parseReading('4.2 brix, pH 3.4, 21 c') // { brix: 4.2, ph: 3.4, temperature_C: 21 }
 */
export function parseReading(text: string): ReadReading {
  const value: JarReading = {};
  let rest = text.replace(/[−–]/g, '-').replace(/º/g, '°').trim();
  if (rest === '') return refused('empty', phrase`Write what you measured, such as ${4.2} brix, pH ${3.4}, 21 °C.`);
  while (rest !== '') {
    const piece = pieceAt(rest);
    if (piece === null) {
      const bare = bareNumber.exec(rest)?.[0];
      return bare === undefined
        ? refused('not-understood', phrase`“${rest}” is not clear here. Write brix, SG, pH, °C or °F with its number.`)
        : refused('unit-missing', phrase`What is ${bare}? Write ${bare} brix, pH ${bare} or ${bare} °C.`);
    }
    const { kind } = piece;
    if (value[kind] !== undefined)
      return refused('said-twice', phrase`This says ${names[kind]} twice. Log them one by one.`);
    if (kind === 'temperature_C' && piece.unit === '') {
      return refused('unit-missing', phrase`Say whether ${piece.value} is °C or °F.`);
    }
    const isFahrenheit = kind === 'temperature_C' && /f/i.test(piece.unit);
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
    rest = rest.slice(piece.length).replace(/^(?:[\s,;·]+|and\b)+/i, '');
  }
  return { ok: true, value };
}
