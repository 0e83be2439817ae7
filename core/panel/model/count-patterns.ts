import type { CellTable } from './cell-table.ts';

/** Tasters who scored the same samples equally often: their part of the model's matrices is the same. */
export interface CountPattern {
  /** Samples they scored. */
  readonly samples: Int32Array;
  /** Scores on each of these. */
  readonly counts: Float64Array;
  /** Who they are. */
  readonly tasters: Int32Array;
}

/**
 * Groups the tasters of a panel by what they scored; tasters without any score belong to no group.
 *
 * @param cells the panel
 * @returns one group for each pattern of counts; a complete panel has one
 */
export function countPatterns(cells: CellTable): CountPattern[] {
  const groups = new Map<string, { samples: number[]; counts: number[]; tasters: number[] }>();
  for (let taster = 0; taster < cells.tasters; taster += 1) {
    const row = cells.count.subarray(taster * cells.samples, (taster + 1) * cells.samples);
    const key = row.join();
    let group = groups.get(key);
    if (group === undefined) {
      group = { samples: [], counts: [], tasters: [] };
      for (let sample = 0; sample < row.length; sample += 1) {
        const n = row[sample] ?? 0;
        if (n === 0) continue;
        group.samples.push(sample);
        group.counts.push(n);
      }
      groups.set(key, group);
    }
    if (group.samples.length > 0) group.tasters.push(taster);
  }
  return [...groups.values()]
    .filter(({ tasters }) => tasters.length > 0)
    .map(({ samples, counts, tasters }) => ({
      samples: Int32Array.from(samples),
      counts: Float64Array.from(counts),
      tasters: Int32Array.from(tasters),
    }));
}
