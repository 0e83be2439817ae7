import type { CellTable } from '../model/cell-table.ts';
import { midranks } from './rank-blocks.ts';

/**
 * The ranks each taster gives the levels, in rising order of level: samples of one level are averaged first.
 *
 * @param cells the panel
 * @param levels each sample's level; null where it has none
 * @returns the levels in rising order, and one block a taster who tasted every level
 */
export function pageBlocks(
  cells: CellTable,
  levels: readonly (number | null)[],
): { levels: number[]; blocks: number[][] } {
  const distinct = [...new Set(levels.filter((level) => level !== null))].sort((one, other) => one - other);
  const blocks: number[][] = [];
  for (let taster = 0; taster < cells.tasters; taster += 1) {
    const means = distinct.map((level) => {
      let sum = 0;
      let samples = 0;
      levels.forEach((other, sample) => {
        const cell = taster * cells.samples + sample;
        if (other !== level || (cells.count[cell] ?? 0) === 0) return;
        sum += cells.mean[cell] ?? 0;
        samples += 1;
      });
      return samples === 0 ? null : sum / samples;
    });
    const known = means.filter((mean) => mean !== null);
    if (known.length === distinct.length) blocks.push(midranks(known.map((mean) => Number(mean.toPrecision(12)))));
  }
  return { levels: distinct, blocks };
}
