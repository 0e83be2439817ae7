import type { CellTable } from './cell-table.ts';

/**
 * How many scores a panel lacks: each taster is expected to score each sample as often as is usual in this panel.
 *
 * Usual is the most frequent number of scores of a taster on a sample, the larger one of equally frequent ones.
 */
export function missingScores(cells: CellTable): number {
  const often = new Map<number, number>();
  for (const n of cells.count) if (n > 0) often.set(n, (often.get(n) ?? 0) + 1);
  let usual = 0;
  for (const [n, times] of often) {
    const best = often.get(usual) ?? 0;
    if (times > best || (times === best && n > usual)) usual = n;
  }
  return cells.count.reduce((sum, n) => sum + Math.max(0, usual - n), 0);
}
