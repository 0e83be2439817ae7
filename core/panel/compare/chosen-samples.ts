import type { CellTable } from '../model/cell-table.ts';

/** The same panel with only some of its samples, in the order given. */
export function chosenSamples(cells: CellTable, kept: readonly number[]): CellTable {
  const pick = <Kind extends Int32Array | Float64Array>(from: Kind, to: Kind): Kind => {
    for (let taster = 0; taster < cells.tasters; taster += 1) {
      kept.forEach((sample, place) => {
        to[taster * kept.length + place] = from[taster * cells.samples + sample] ?? 0;
      });
    }
    return to;
  };
  const size = cells.tasters * kept.length;
  const count = pick(cells.count, new Int32Array(size));
  return {
    tasters: cells.tasters,
    samples: kept.length,
    scores: count.reduce((sum, n) => sum + n, 0),
    count,
    mean: pick(cells.mean, new Float64Array(size)),
    inner: pick(cells.inner, new Float64Array(size)),
  };
}
