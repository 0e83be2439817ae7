import type { AttributeColumns } from '../score-columns.ts';
import { type CellTable, cellTable } from './cell-table.ts';
import { fitCells, type PanelFit } from './fit-panel.ts';
import { mostSamples } from './model-reasons.ts';

/** Positions of the samples in the order of their names: the same for every order of the input. */
function nameOrder(names: readonly string[]): number[] {
  return [...names.keys()].sort((one, other) => ((names[one] ?? '') < (names[other] ?? '') ? -1 : 1));
}

export interface AttributeFit {
  readonly cells: CellTable;
  /** Whether tasters and samples are enough for a model, and not too many. */
  readonly modelled: boolean;
  /** Null without a model, or when no error is left to estimate. */
  readonly fit: PanelFit | null;
}

/** Counts one attribute's scores into cells and fits the mixed model to them. */
export function attributeFit(columns: AttributeColumns): AttributeFit {
  const cells = cellTable(columns);
  const modelled = columns.tasters >= 2 && columns.samples >= 1 && columns.samples <= mostSamples;
  return { cells, modelled, fit: modelled ? fitCells(cells, nameOrder(columns.sampleNames)) : null };
}
