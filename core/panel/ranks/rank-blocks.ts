import type { CellTable } from '../model/cell-table.ts';

/**
 * Ranks of a list, 1 for the smallest; equal values share the mean of their ranks.
 *
 * @example midranks([5, 3, 5]) // [2.5, 1, 2.5]
 */
export function midranks(values: readonly number[]): number[] {
  const order = values.map((_, index) => index).sort((one, other) => (values[one] ?? 0) - (values[other] ?? 0));
  const ranks = new Array<number>(values.length).fill(0);
  for (let start = 0; start < order.length; ) {
    let end = start;
    while (end + 1 < order.length && values[order[end + 1] ?? 0] === values[order[start] ?? 0]) end += 1;
    for (let place = start; place <= end; place += 1) ranks[order[place] ?? 0] = (start + end) / 2 + 1;
    start = end + 1;
  }
  return ranks;
}

/**
 * The ranks each taster gives the samples: one block a taster who tasted all of them, on the mean of their own repeats.
 *
 * Means that differ only by rounding are ties: they are compared at twelve digits.
 *
 * @param cells the panel
 * @param columns which samples, in the order of the ranks
 */
export function rankBlocks(cells: CellTable, columns: readonly number[]): number[][] {
  const blocks: number[][] = [];
  for (let taster = 0; taster < cells.tasters; taster += 1) {
    const row = columns.map((sample) => taster * cells.samples + sample);
    if (row.some((cell) => (cells.count[cell] ?? 0) === 0)) continue;
    blocks.push(midranks(row.map((cell) => Number((cells.mean[cell] ?? 0).toPrecision(12)))));
  }
  return blocks;
}
