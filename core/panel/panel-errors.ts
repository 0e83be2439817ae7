import { attributeFit } from './model/attribute-fit.ts';
import type { PanelInput } from './panel-analysis.ts';
import { attributeColumns } from './score-columns.ts';

/** How far scores of one attribute lie about their taster and sample. */
export interface AttributeErrors {
  readonly attribute: string;
  /** Variance of a repeat, in squared points of the scale. */
  readonly error: number;
  /** Variance of a taster's own view of a sample; null where it can't be told from the error. */
  readonly tasterBySample: number | null;
  readonly dfError: number;
}

/**
 * The error variances of a panel, attribute by attribute: the part of `analysePanel` that tells how a panel scores, without
 * comparisons, ranks and trends.
 *
 * @param input scores with their names
 * @returns the attributes whose samples can be tested; none where no error is left to estimate
 * @throws RefusedInput when the same explicit replicate stands there twice
 * Accuracy: as analysePanel.
 * @example panelErrors({ scores })[0]?.error
 */
export function panelErrors(input: PanelInput): AttributeErrors[] {
  return attributeColumns(input).flatMap((columns) => {
    const { fit } = attributeFit(columns);
    const error = fit?.model.pureError ?? null;
    if (fit === null || fit.test === null || error === null) return [];
    return [
      { attribute: columns.attribute, error, tasterBySample: fit.model.tasterBySample, dfError: fit.test.dfError },
    ];
  });
}
