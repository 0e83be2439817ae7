import type { CountPattern } from './count-patterns.ts';

/**
 * The inverse covariance of one taster's cell means, V⁻¹ = diag(w) − c·w·wᵀ, with its derivatives.
 *
 * V is in units of the error variance: 1/n + θb in each cell, θa between cells of the same taster. Suffix `A` is a derivative by
 * θa (taster), `B` by θb (taster × sample).
 */
export interface PatternWeights {
  readonly w: Float64Array;
  readonly wB: Float64Array;
  readonly wBB: Float64Array;
  readonly c: number;
  readonly cA: number;
  readonly cB: number;
  readonly cAA: number;
  readonly cAB: number;
  readonly cBB: number;
  /** ln of the determinant of the taster's whole covariance, and its derivatives. */
  readonly log: number;
  readonly logA: number;
  readonly logB: number;
  readonly logAA: number;
  readonly logAB: number;
  readonly logBB: number;
}

/**
 * @param pattern the counts of the cells
 * @param a θa: taster variance over error variance, at least 0
 * @param b θb: taster × sample variance over error variance, at least 0
 * Source: Sherman–Morrison formula; derivatives worked by hand and checked against differences in the tests.
 */
export function patternWeights(pattern: CountPattern, a: number, b: number): PatternWeights {
  const size = pattern.counts.length;
  const w = new Float64Array(size);
  const wB = new Float64Array(size);
  const wBB = new Float64Array(size);
  let sum = 0;
  let sumB = 0;
  let sumBB = 0;
  let log = 0;
  // One logarithm for many factors: it costs more than all else here.
  let factors = 1;
  for (let cell = 0; cell < size; cell += 1) {
    const n = pattern.counts[cell] as number;
    const spread = n * b;
    const weight = n / (1 + spread);
    const square = weight * weight;
    w[cell] = weight;
    wB[cell] = -square;
    wBB[cell] = 2 * square * weight;
    sum += weight;
    sumB -= square;
    sumBB += 2 * square * weight;
    if (spread < 0.01) log += Math.log1p(spread);
    else factors *= 1 + spread;
    if (factors > 1e250) {
      log += Math.log(factors);
      factors = 1;
    }
  }
  log += Math.log(factors);
  const d = 1 + a * sum;
  const c = a / d;
  return {
    w,
    wB,
    wBB,
    c,
    cA: 1 / (d * d),
    cB: -c * c * sumB,
    cAA: (-2 * sum) / d ** 3,
    cAB: (-2 * a * sumB) / d ** 3,
    cBB: 2 * c ** 3 * sumB ** 2 - c * c * sumBB,
    log: log + Math.log1p(a * sum),
    logA: sum / d,
    logB: sum + c * sumB,
    logAA: -((sum / d) ** 2),
    logAB: sumB / (d * d),
    logBB: sumB + c * sumBB - (c * sumB) ** 2,
  };
}
