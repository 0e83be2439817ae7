import type { StudentizedRange } from '#core/numeric/studentized-range.ts';
import type { MixedModel } from '../model/mixed-model.ts';
import { type CoefficientCovariance, type Contrast, satterthwaite } from '../model/satterthwaite.ts';

/** One sample's mean less another's. */
export interface SamplePair {
  readonly a: number;
  readonly b: number;
  readonly difference: number;
  readonly low: number;
  readonly high: number;
  readonly p: number;
}

/** The difference between two samples' means, on its own degrees of freedom. */
export function sampleDifference(model: MixedModel, spread: CoefficientCovariance, a: number, b: number): Contrast {
  const l = new Float64Array(model.design.columns);
  l[a] = 1;
  l[b] = -1;
  return satterthwaite(model, spread, l);
}

/** Remembers the answers for degrees of freedom met before: in a complete panel all pairs share one. */
export function remembered(compute: (df: number) => number): (df: number) => number {
  const known = new Map<string, number>();
  return (df) => {
    const key = df.toPrecision(10);
    const found = known.get(key) ?? compute(df);
    known.set(key, found);
    return found;
  };
}

/**
 * Every pair of samples compared, all errors held together at alpha (Tukey–Kramer).
 *
 * Method: |t|·√2 of each difference against the studentized range of all samples, on the difference's own Satterthwaite degrees of
 * freedom; intervals to match, so that one leaves out zero exactly when its p is below alpha.
 *
 * @param model fitted with a mean for each sample
 * @param spread coefficientCovariance of it
 * @param range studentizedRange(samples)
 * @param alpha chance of any false difference, 0 to 1
 * @returns pairs a < b, difference a − b
 * Accuracy: p to 1e-9. Tukey–Kramer is conservative for unequal variances (proved for one-way layouts).
 * Source: C. Y. Kramer, Biometrics 12 (1956) 307; A. J. Hayter, Annals of Statistics 12 (1984) 61.
 */
export function pairComparisons(
  model: MixedModel,
  spread: CoefficientCovariance,
  range: StudentizedRange,
  alpha: number,
): SamplePair[] {
  const critical = remembered((df) => range.critical(alpha, df) / Math.SQRT2);
  const pairs: SamplePair[] = [];
  for (let a = 0; a < model.design.columns; a += 1) {
    for (let b = a + 1; b < model.design.columns; b += 1) {
      const { estimate, variance, df } = sampleDifference(model, spread, a, b);
      const error = Math.sqrt(variance);
      const reach = critical(df) * error;
      const p = range.upperTail((Math.SQRT2 * Math.abs(estimate)) / error, df);
      pairs.push({ a, b, difference: estimate, low: estimate - reach, high: estimate + reach, p });
    }
  }
  return pairs;
}
