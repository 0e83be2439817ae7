import type { DunnettDistribution } from '#core/numeric/dunnett-distribution.ts';
import type { MixedModel } from '../model/mixed-model.ts';
import type { CoefficientCovariance } from '../model/satterthwaite.ts';
import { remembered, sampleDifference } from './pair-comparisons.ts';

/** A sample's mean less the control's. */
export interface SampleVersusControl {
  readonly sample: number;
  readonly difference: number;
  readonly low: number;
  readonly high: number;
  readonly p: number;
}

/**
 * Loadings whose products come closest to the correlations of the comparisons with the control.
 *
 * Method: least squares, one loading after the other until none moves. Exact for one-way layouts and complete panels; an
 * approximation for panels with holes.
 *
 * @param correlation k × k, row by row
 * @param size k, at least 1
 * @returns k loadings, each −0.9999 to 0.9999
 */
export function productLoadings(correlation: Float64Array, size: number): number[] {
  const at = (i: number, j: number): number => correlation[i * size + j] ?? 0;
  if (size === 1) return [0];
  const limit = (value: number): number => Math.max(-0.9999, Math.min(0.9999, value));
  if (size === 2) {
    const root = Math.sqrt(Math.abs(at(0, 1)));
    return [limit(root), limit(at(0, 1) < 0 ? -root : root)];
  }
  const loadings = new Array<number>(size).fill(Math.SQRT1_2);
  for (let round = 0; round < 500; round += 1) {
    let moved = 0;
    for (let i = 0; i < size; i += 1) {
      let numerator = 0;
      let denominator = 0;
      for (let j = 0; j < size; j += 1) {
        if (j === i) continue;
        numerator += at(i, j) * (loadings[j] ?? 0);
        denominator += (loadings[j] ?? 0) ** 2;
      }
      const fresh = denominator > 0 ? limit(numerator / denominator) : 0;
      moved = Math.max(moved, Math.abs(fresh - (loadings[i] ?? 0)));
      loadings[i] = fresh;
    }
    if (moved < 1e-14) break;
  }
  // Equal loadings computed by different routes differ in their last digits; taken as equal they cost one factor.
  return loadings.map((loading) => Number(loading.toPrecision(12)));
}

/**
 * Every other sample compared with the control, all errors held together at alpha (Dunnett, two-sided).
 *
 * Method: the largest absolute t of all comparisons, correlated as productLoadings has it, on each comparison's own Satterthwaite
 * degrees of freedom.
 *
 * @param model fitted with a mean for each sample
 * @param spread coefficientCovariance of it
 * @param control which sample
 * @param distributionFor makes (or remembers) the distribution of these loadings
 * @param alpha chance of any false difference, 0 to 1
 * Accuracy: p to 1e-8 where the correlations are products (one-way layouts, complete panels); in panels with holes the nearest products
 * stand for them: on the twenty panels of tests/published/panel/mixed-panels.test.ts they are within 0.014 of the correlations.
 * Source: C. W. Dunnett, J. Am. Stat. Assoc. 50 (1955) 1096.
 */
export function controlComparisons(
  model: MixedModel,
  spread: CoefficientCovariance,
  control: number,
  distributionFor: (loadings: readonly number[]) => DunnettDistribution,
  alpha: number,
): SampleVersusControl[] {
  const columns = model.design.columns;
  const others = Array.from({ length: columns }, (_, sample) => sample).filter((sample) => sample !== control);
  const covariance = (i: number, j: number): number => spread.covariance[i * columns + j] ?? 0;
  const between = (i: number, j: number): number =>
    covariance(i, j) - covariance(i, control) - covariance(control, j) + covariance(control, control);
  const size = others.length;
  const correlation = Float64Array.from({ length: size * size }, (_, place) => {
    const i = others[Math.floor(place / size)] ?? 0;
    const j = others[place % size] ?? 0;
    return between(i, j) / Math.sqrt(between(i, i) * between(j, j));
  });
  const distribution = distributionFor(productLoadings(correlation, size));
  const critical = remembered((df) => distribution.critical(alpha, df));
  return others.map((sample) => {
    const { estimate, variance, df } = sampleDifference(model, spread, sample, control);
    const error = Math.sqrt(variance);
    const reach = critical(df) * error;
    const p = distribution.upperTail(Math.abs(estimate) / error, df);
    return { sample, difference: estimate, low: estimate - reach, high: estimate + reach, p };
  });
}
