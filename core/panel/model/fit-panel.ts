import { type CellTable, cellTable, type ScoreColumns } from './cell-table.ts';
import { type JointTest, jointTest } from './joint-test.ts';
import { fitMixedModel, type MixedModel } from './mixed-model.ts';
import { freeMeans } from './sample-design.ts';
import { type CoefficientCovariance, coefficientCovariance } from './satterthwaite.ts';

export interface PanelFit {
  readonly model: MixedModel;
  readonly spread: CoefficientCovariance;
  /** Null with a single sample. */
  readonly test: JointTest | null;
}

/**
 * Fits the mixed model of one attribute and tests whether its samples differ.
 *
 * Method: one pass over the scores (cellTable); all else works on the cells.
 *
 * @param columns every sample scored at least once; two tasters or more for a test that speaks of more than one person
 * @param order the samples in the order the test's degrees of freedom follow; as coded unless given
 * @returns the fit, or null when no error is left to estimate
 * @example fitPanel(columns)?.test?.f
 */
export function fitPanel(columns: ScoreColumns, order?: readonly number[]): PanelFit | null {
  return fitCells(cellTable(columns), order);
}

/** As fitPanel, from cells already counted. */
export function fitCells(cells: CellTable, order?: readonly number[]): PanelFit | null {
  const model = fitMixedModel(cells, freeMeans(cells.samples));
  const spread = model === null ? null : coefficientCovariance(model);
  if (model === null || spread === null) return null;
  if (cells.samples < 2) return { model, spread, test: null };
  const scores = new Array<number>(cells.samples).fill(0);
  cells.count.forEach((n, cell) => {
    scores[cell % cells.samples] = (scores[cell % cells.samples] ?? 0) + n;
  });
  return { model, spread, test: jointTest(model, spread, scores, order ?? [...scores.keys()]) };
}
