import { tBothTails, tCritical } from '#core/numeric/t-distribution.ts';
import type { ReasonCode } from '#core/reason.ts';

/** One taster's liking and attribute score of one sample. */
export interface LikingPoint {
  readonly taster: string;
  readonly sample: string;
  readonly liking: number;
  readonly attribute: number;
}

export interface LikingDriver {
  /** Points of liking gained with each point of the attribute, for a taster of this kind of panel. */
  readonly slope: number;
  readonly low: number;
  readonly high: number;
  readonly p: number;
  /** Standard deviation between tasters of their true slopes. */
  readonly betweenTasters: number;
  /** Each taster's own slope, and the same drawn toward the panel's as far as it is uncertain. */
  readonly tasters: { readonly taster: string; readonly own: number; readonly slope: number }[];
}

/** With fewer jars any attribute that happens to differ between them would seem to drive liking. */
export const fewestSamplesForDrivers = 5;

/**
 * How liking moves with one attribute inside each taster, and on the whole.
 *
 * Method: each taster's own regression of liking on the attribute over the samples (their level of either scale drops out); slopes
 * pooled with a variance between tasters by moments, and shrunk toward the pooled one. Interval by Student's t on tasters − 1.
 * Leaves out: the other attributes, which may move together with this one; with few jars they cannot be told apart.
 *
 * @param points one a taster and sample; several are taken as they come
 * @param alpha 1 − confidence, 0 to 1
 * @returns the driver, or the code of why it cannot be told
 * Source: DerSimonian & Laird, Controlled Clinical Trials 7 (1986) 177, for the variance between slopes.
 */
export function likingDriver(
  points: readonly LikingPoint[],
  alpha: number,
): LikingDriver | { readonly code: ReasonCode } {
  if (new Set(points.map(({ sample }) => sample)).size < fewestSamplesForDrivers) return { code: 'too-few-scores' };
  const byTaster = Map.groupBy(points, ({ taster }) => taster);
  const slopes: { taster: string; own: number; sxx: number }[] = [];
  let residual = 0;
  let residualDf = 0;
  for (const [taster, own] of byTaster) {
    const n = own.length;
    const meanX = own.reduce((sum, { attribute }) => sum + attribute, 0) / n;
    const meanY = own.reduce((sum, { liking }) => sum + liking, 0) / n;
    let sxx = 0;
    let sxy = 0;
    let syy = 0;
    for (const { attribute, liking } of own) {
      sxx += (attribute - meanX) ** 2;
      sxy += (attribute - meanX) * (liking - meanY);
      syy += (liking - meanY) ** 2;
    }
    if (n < 3 || !(sxx > 1e-12 * (1 + meanX * meanX))) continue;
    slopes.push({ taster, own: sxy / sxx, sxx });
    residual += Math.max(0, syy - (sxy * sxy) / sxx);
    residualDf += n - 2;
  }
  if (byTaster.size < 2) return { code: 'one-taster' };
  if (slopes.length < 2) return { code: 'no-variation' };
  const error = residual / residualDf;
  if (!(error > 0)) return { code: 'no-variation' };
  const fixedWeights = slopes.map(({ sxx }) => sxx / error);
  const sum = fixedWeights.reduce((total, weight) => total + weight, 0);
  const fixed = slopes.reduce((total, { own }, index) => total + (fixedWeights[index] ?? 0) * own, 0) / sum;
  const q = slopes.reduce((total, { own }, index) => total + (fixedWeights[index] ?? 0) * (own - fixed) ** 2, 0);
  const squares = fixedWeights.reduce((total, weight) => total + weight * weight, 0);
  const between = Math.max(0, (q - (slopes.length - 1)) / (sum - squares / sum));
  const weights = slopes.map(({ sxx }) => 1 / (between + error / sxx));
  const total = weights.reduce((all, weight) => all + weight, 0);
  const slope = slopes.reduce((all, { own }, index) => all + (weights[index] ?? 0) * own, 0) / total;
  // Hartung and Knapp: the spread of the slopes themselves sets the error, which few tasters need.
  const spread = slopes.reduce((all, { own }, index) => all + (weights[index] ?? 0) * (own - slope) ** 2, 0);
  const df = slopes.length - 1;
  const standardError = Math.sqrt(Math.max(spread / df, 1) / total);
  const reach = tCritical(alpha, df) * standardError;
  return {
    slope,
    low: slope - reach,
    high: slope + reach,
    p: tBothTails(slope / standardError, df),
    betweenTasters: Math.sqrt(between),
    tasters: slopes.map(({ taster, own, sxx }) => {
      const kept = between / (between + error / sxx);
      return { taster, own, slope: slope + kept * (own - slope) };
    }),
  };
}
