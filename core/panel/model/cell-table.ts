/** Scores of one attribute as columns: one entry a score, tasters and samples as whole numbers from 0. */
export interface ScoreColumns {
  readonly tasters: number;
  readonly samples: number;
  readonly taster: Int32Array;
  readonly sample: Int32Array;
  readonly score: Float64Array;
}

/** What a mixed model needs to know of the scores: each cell taster × sample, at `taster · samples + sample`. */
export interface CellTable {
  readonly tasters: number;
  readonly samples: number;
  readonly scores: number;
  /** Scores in the cell. */
  readonly count: Int32Array;
  /** Their mean; 0 where there are none. */
  readonly mean: Float64Array;
  /** Sum of their squared distances from that mean. */
  readonly inner: Float64Array;
}

/**
 * Counts, means and inner sums of squares of every taster × sample cell, in one pass over the scores.
 *
 * Method: sums of distances from each cell's own first score, so that scores with many leading digits in common lose none.
 *
 * @param columns every taster and sample code within its range; scores finite
 * @returns the cells
 * Accuracy: rounding of the spread inside a cell, not of the scores' size.
 * @example cellTable({ tasters: 1, samples: 1, taster: Int32Array.of(0, 0), sample: Int32Array.of(0, 0), score: Float64Array.of(5, 7) }).inner[0] // 2
 */
export function cellTable(columns: ScoreColumns): CellTable {
  const { tasters, samples, taster, sample, score } = columns;
  const cells = tasters * samples;
  const count = new Int32Array(cells);
  const first = new Float64Array(cells);
  const mean = new Float64Array(cells);
  const inner = new Float64Array(cells);
  const scores = score.length;
  for (let index = 0; index < scores; index += 1) {
    const cell = (taster[index] as number) * samples + (sample[index] as number);
    const value = score[index] as number;
    if ((count[cell] as number) === 0) first[cell] = value;
    const distance = value - (first[cell] as number);
    count[cell] = (count[cell] as number) + 1;
    mean[cell] = (mean[cell] as number) + distance;
    inner[cell] = (inner[cell] as number) + distance * distance;
  }
  for (let cell = 0; cell < cells; cell += 1) {
    const n = count[cell] as number;
    if (n === 0) continue;
    const sum = mean[cell] as number;
    mean[cell] = (first[cell] as number) + sum / n;
    inner[cell] = n === 1 ? 0 : Math.max(0, (inner[cell] as number) - (sum * sum) / n);
  }
  return { tasters, samples, scores, count, mean, inner };
}
