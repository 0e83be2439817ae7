import type { CountPattern } from './count-patterns.ts';
import type { PatternWeights } from './pattern-weights.ts';

/** XᵀV⁻¹X over the samples, row by row, and its derivatives by θa and θb. */
export interface Information {
  readonly m: Float64Array;
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly aa: Float64Array;
  readonly ab: Float64Array;
  readonly bb: Float64Array;
}

/** Which derivatives are wanted besides the values: none, those by θa, or those by both ratios. */
export type Derivatives = 'none' | 'taster' | 'both';

/** Zeros for so many samples; derivatives that are not wanted share one matrix. */
export function emptyInformation(samples: number, derivatives: Derivatives): Information {
  const zeros = () => new Float64Array(samples * samples);
  const idle = zeros();
  const byA = derivatives === 'none' ? () => idle : zeros;
  const byB = derivatives === 'both' ? zeros : () => idle;
  return { m: zeros(), a: byA(), aa: byA(), b: byB(), ab: byB(), bb: byB() };
}

/**
 * Adds what the tasters of one pattern tell about the samples, in the lower triangles only; `mirror` fills the upper ones.
 *
 * @param into changed in place
 * @param samples how many samples there are
 */
export function addInformation(
  into: Information,
  samples: number,
  pattern: CountPattern,
  weights: PatternWeights,
  derivatives: Derivatives,
): void {
  const { m, a, b, aa, ab, bb } = into;
  const { w, wB, wBB } = weights;
  const times = pattern.tasters.length;
  const c = times * weights.c;
  const cA = times * weights.cA;
  const cB = times * weights.cB;
  const cAA = times * weights.cAA;
  const cAB = times * weights.cAB;
  const cBB = times * weights.cBB;
  for (let row = 0; row < w.length; row += 1) {
    const sample = pattern.samples[row] as number;
    const start = sample * samples;
    const wi = w[row] as number;
    const wiB = wB[row] as number;
    const wiBB = wBB[row] as number;
    const diagonal = start + sample;
    m[diagonal] = (m[diagonal] as number) + times * wi;
    if (derivatives === 'both') {
      b[diagonal] = (b[diagonal] as number) + times * wiB;
      bb[diagonal] = (bb[diagonal] as number) + times * wiBB;
    }
    for (let column = 0; column <= row; column += 1) {
      const place = start + (pattern.samples[column] as number);
      const wj = w[column] as number;
      const each = wi * wj;
      m[place] = (m[place] as number) - c * each;
      if (derivatives === 'none') continue;
      a[place] = (a[place] as number) - cA * each;
      aa[place] = (aa[place] as number) - cAA * each;
      if (derivatives === 'taster') continue;
      const wjB = wB[column] as number;
      const mixed = wiB * wj + wi * wjB;
      const second = wiBB * wj + 2 * wiB * wjB + wi * (wBB[column] as number);
      b[place] = (b[place] as number) - cB * each - c * mixed;
      ab[place] = (ab[place] as number) - cAB * each - cA * mixed;
      bb[place] = (bb[place] as number) - cBB * each - 2 * cB * mixed - c * second;
    }
  }
}

/** Copies the lower triangles to the upper ones. */
export function mirror(information: Information, samples: number): void {
  for (const matrix of new Set<Float64Array>(Object.values(information))) {
    for (let row = 0; row < samples; row += 1) {
      for (let column = 0; column < row; column += 1) {
        matrix[column * samples + row] = matrix[row * samples + column] as number;
      }
    }
  }
}
