import type { CellTable } from './cell-table.ts';
import type { CountPattern } from './count-patterns.ts';
import type { PatternWeights } from './pattern-weights.ts';

/** rᵀV⁻¹r of the residuals, its derivatives, and XᵀV⁻¹r differentiated by θa and θb. */
export interface ResidualSquares {
  q: number;
  a: number;
  b: number;
  aa: number;
  ab: number;
  bb: number;
  readonly towardsA: Float64Array;
  readonly towardsB: Float64Array;
}

export function emptySquares(samples: number): ResidualSquares {
  const towards = { towardsA: new Float64Array(samples), towardsB: new Float64Array(samples) };
  return { q: 0, a: 0, b: 0, aa: 0, ab: 0, bb: 0, ...towards };
}

/**
 * Adds the weighted squares of one pattern's tasters.
 *
 * @param into changed in place
 * @param fitted what the model expects of each sample
 * @param derivatives whether the derivatives are wanted as well
 */
export function addSquares(
  into: ResidualSquares,
  cells: CellTable,
  pattern: CountPattern,
  weights: PatternWeights,
  fitted: Float64Array,
  derivatives: boolean,
): void {
  const { w, wB, wBB, c, cA, cB, cAA, cAB, cBB } = weights;
  const size = w.length;
  const residual = new Float64Array(size);
  for (const taster of pattern.tasters) {
    const start = taster * cells.samples;
    let sum = 0;
    let sumB = 0;
    let sumBB = 0;
    let square = 0;
    let squareB = 0;
    let squareBB = 0;
    for (let cell = 0; cell < size; cell += 1) {
      const sample = pattern.samples[cell] as number;
      const r = (cells.mean[start + sample] as number) - (fitted[sample] as number);
      residual[cell] = r;
      const wr = (w[cell] as number) * r;
      sum += wr;
      square += wr * r;
      if (derivatives) {
        const wrB = (wB[cell] as number) * r;
        const wrBB = (wBB[cell] as number) * r;
        sumB += wrB;
        squareB += wrB * r;
        sumBB += wrBB;
        squareBB += wrBB * r;
      }
    }
    into.q += square - c * sum * sum;
    if (!derivatives) continue;
    into.a -= cA * sum * sum;
    into.aa -= cAA * sum * sum;
    into.b += squareB - cB * sum * sum - 2 * c * sum * sumB;
    into.ab -= cAB * sum * sum + 2 * cA * sum * sumB;
    into.bb += squareBB - cBB * sum * sum - 4 * cB * sum * sumB - 2 * c * (sum * sumBB + sumB * sumB);
    for (let cell = 0; cell < size; cell += 1) {
      const sample = pattern.samples[cell] as number;
      const wi = w[cell] as number;
      const wiB = wB[cell] as number;
      into.towardsA[sample] = (into.towardsA[sample] as number) - cA * wi * sum;
      into.towardsB[sample] =
        (into.towardsB[sample] as number) +
        wiB * (residual[cell] as number) -
        cB * wi * sum -
        c * (wiB * sum + wi * sumB);
    }
  }
}

/** Adds one pattern’s tasters to XᵀV⁻¹y over the samples. */
export function addRight(
  right: Float64Array,
  cells: CellTable,
  pattern: CountPattern,
  w: Float64Array,
  c: number,
): void {
  for (const taster of pattern.tasters) {
    const start = taster * cells.samples;
    let sum = 0;
    for (let cell = 0; cell < w.length; cell += 1) {
      sum += (w[cell] as number) * (cells.mean[start + (pattern.samples[cell] as number)] as number);
    }
    for (let cell = 0; cell < w.length; cell += 1) {
      const sample = pattern.samples[cell] as number;
      const y = cells.mean[start + sample] as number;
      right[sample] = (right[sample] as number) + (w[cell] as number) * (y - c * sum);
    }
  }
}
