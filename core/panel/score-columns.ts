import { phrase } from '#core/words/phrase.ts';
import type { ScoreColumns } from './model/cell-table.ts';
import type { PanelInput, PanelScore } from './panel-analysis.ts';
import { RefusedInput } from './refused-input.ts';

/** One attribute's scores as columns, with the names behind the codes. */
export interface AttributeColumns extends ScoreColumns {
  readonly attribute: string;
  /** Tasters of this attribute, in order of appearance. */
  readonly tasterNames: readonly string[];
  /** Samples with a score in this attribute, in order of appearance anywhere in the input. */
  readonly sampleNames: readonly string[];
  /** Samples named anywhere in the input that have no score here. */
  readonly untasted: readonly string[];
  /** Jar of each score, as a code from 0; −1 where none is given. */
  readonly jar: Int32Array;
  /** Scores left out because they lie outside the attribute's scale. */
  readonly offScale: number;
}

class Codes {
  readonly names: string[] = [];
  readonly #codes = new Map<string, number>();

  of(name: string): number {
    const known = this.#codes.get(name);
    if (known !== undefined) return known;
    this.#codes.set(name, this.names.length);
    this.names.push(name);
    return this.names.length - 1;
  }
}

/** No scale reaches this, and squares of larger numbers leave the range of numbers. */
const largestScore = 1e50;

/** Cells of taster × sample beyond this would not fit a kitchen's computer. */
const mostCells = 20_000_000;

/** Refuses the second score of the same taster, sample, attribute, jar and explicit replicate. */
function refuseDuplicates(scores: readonly PanelScore[]): void {
  const seen = new Set<string>();
  scores.forEach(({ taster, sample, attribute, replicate, jar }, index) => {
    if (replicate === undefined) return;
    const key = JSON.stringify([taster, sample, attribute, jar, replicate]);
    if (seen.has(key)) {
      const what = phrase`${taster} already has replicate ${replicate} of ${sample}, ${attribute}`;
      throw new RefusedInput(what, ['scores', index, 'replicate']);
    }
    seen.add(key);
  });
}

/** Renumbers codes to those that occur, in rising order; returns the old code of each new one. */
function compact(codes: Int32Array, most: number): { codes: Int32Array; old: number[] } {
  const present = new Uint8Array(most);
  for (const code of codes) present[code] = 1;
  const fresh = new Int32Array(most);
  const old: number[] = [];
  for (let code = 0; code < most; code += 1) {
    if (present[code] === 0) continue;
    fresh[code] = old.length;
    old.push(code);
  }
  return { codes: codes.map((code) => fresh[code] ?? 0), old };
}

/**
 * Turns a request's scores into columns, attribute by attribute.
 *
 * Scores outside the attribute's scale are left out and counted. Leaves the order of the scores as it is.
 *
 * @param input the request
 * @returns one entry an attribute, in order of appearance; an attribute whose scores all lie off the scale has none left
 * @throws RefusedInput when the same explicit replicate stands there twice, a score or a level is larger than 1e50,
 * or tasters by samples pass twenty million
 */
export function attributeColumns(input: PanelInput): AttributeColumns[] {
  const { scores } = input;
  for (const [sample, level] of Object.entries(input.levels ?? {})) {
    if (!(Math.abs(level) <= largestScore))
      throw new RefusedInput(phrase`a level must be a number no larger than 1e50`, ['levels', sample]);
  }
  refuseDuplicates(scores);
  const tasters = new Codes();
  const samples = new Codes();
  const attributes = new Codes();
  const jars = new Codes();
  const indexes: number[][] = [];
  const off: number[] = [];
  const taster = new Int32Array(scores.length);
  const sample = new Int32Array(scores.length);
  scores.forEach((one, index) => {
    if (!(Math.abs(one.score) <= largestScore)) {
      throw new RefusedInput(phrase`a score must be a number no larger than 1e50`, ['scores', index, 'score']);
    }
    taster[index] = tasters.of(one.taster);
    sample[index] = samples.of(one.sample);
    const attribute = attributes.of(one.attribute);
    const scale = Object.hasOwn(input.scales ?? {}, one.attribute) ? input.scales?.[one.attribute] : undefined;
    const outside = scale !== undefined && (one.score < scale[0] || one.score > scale[1]);
    off[attribute] = (off[attribute] ?? 0) + (outside ? 1 : 0);
    indexes[attribute] ??= [];
    if (!outside) indexes[attribute].push(index);
  });
  if (tasters.names.length * samples.names.length > mostCells) {
    throw new RefusedInput(phrase`${tasters.names.length} tasters by ${samples.names.length} samples are too many`, [
      'scores',
    ]);
  }
  return attributes.names.map((attribute, code) => {
    const chosen = indexes[code] ?? [];
    const t = compact(
      Int32Array.from(chosen, (index) => taster[index] ?? 0),
      tasters.names.length,
    );
    const s = compact(
      Int32Array.from(chosen, (index) => sample[index] ?? 0),
      samples.names.length,
    );
    const present = new Set(s.old);
    const named = [...Object.keys(input.levels ?? {}), ...(input.control === undefined ? [] : [input.control])];
    const elsewhere = samples.names.filter((_, index) => !present.has(index));
    return {
      attribute,
      tasters: t.old.length,
      samples: s.old.length,
      taster: t.codes,
      sample: s.codes,
      score: Float64Array.from(chosen, (index) => scores[index]?.score ?? 0),
      jar: Int32Array.from(chosen, (index) => {
        const jar = scores[index]?.jar;
        return jar === undefined ? -1 : jars.of(jar);
      }),
      tasterNames: t.old.map((index) => tasters.names[index] ?? ''),
      sampleNames: s.old.map((index) => samples.names[index] ?? ''),
      untasted: [...new Set([...elsewhere, ...named.filter((name) => !samples.names.includes(name))])],
      offScale: off[code] ?? 0,
    };
  });
}
