import { tCritical } from '#core/numeric/t-distribution.ts';
import type { CellTable } from '../model/cell-table.ts';
import type { MixedModel } from '../model/mixed-model.ts';
import { type CoefficientCovariance, satterthwaite } from '../model/satterthwaite.ts';
import type { SampleMean } from '../panel-analysis.ts';
import { compactLetters } from './compact-letters.ts';
import type { SamplePair } from './pair-comparisons.ts';

/** Plain mean of all scores of a sample, for panels that no model fits. */
function plainMean(cells: CellTable, sample: number): { n: number; mean: number | null } {
  let n = 0;
  let sum = 0;
  for (let taster = 0; taster < cells.tasters; taster += 1) {
    const cell = taster * cells.samples + sample;
    n += cells.count[cell] ?? 0;
    sum += (cells.count[cell] ?? 0) * (cells.mean[cell] ?? 0);
  }
  return { n, mean: n === 0 ? null : sum / n };
}

/**
 * Every sample's mean with its individual interval and its letters.
 *
 * Method: estimated marginal means of the mixed model, which are fair to samples that missed a generous taster; Student's t on
 * Satterthwaite's degrees of freedom. Without a model, plain means without intervals.
 *
 * @param pairs pairComparisons, for the letters; null when there are none
 * @param alpha 1 − confidence
 */
export function sampleMeans(
  names: readonly string[],
  cells: CellTable,
  fit: { readonly model: MixedModel; readonly spread: CoefficientCovariance } | null,
  pairs: readonly SamplePair[] | null,
  alpha: number,
): SampleMean[] {
  const plain = names.map((_, sample) => plainMean(cells, sample));
  if (fit === null) {
    return names.map((sample, index) => ({
      sample,
      n: plain[index]?.n ?? 0,
      mean: plain[index]?.mean ?? null,
      low: null,
      high: null,
      letters: null,
    }));
  }
  const estimates = names.map((_, sample) => {
    const l = new Float64Array(names.length);
    l[sample] = 1;
    return satterthwaite(fit.model, fit.spread, l);
  });
  const different = pairs?.filter(({ p }) => p < alpha) ?? null;
  const letters =
    different === null
      ? null
      : compactLetters(
          estimates.map(({ estimate }) => estimate),
          different,
        );
  return names.map((sample, index) => {
    const { estimate = 0, variance = 0, df = 1 } = estimates[index] ?? {};
    const reach = tCritical(alpha, df) * Math.sqrt(variance);
    return {
      sample,
      n: plain[index]?.n ?? 0,
      mean: estimate,
      low: estimate - reach,
      high: estimate + reach,
      letters: letters?.[index] ?? null,
    };
  });
}
