import type { AttributeAnalysis } from '#core/panel/panel-analysis.ts';
import { detectableDifference } from '#core/panel/serving/panel-power.ts';
import { sureEnough } from './finding-frame.ts';

/**
 * The gap between two levels that this panel would most likely have shown, in scale points.
 *
 * Method: `detectableDifference` at 80 % power, with the spread that the scores themselves had: taster-by-sample variance, and the error
 * variance divided by how often a taster had a sample. Leaves out missing scores.
 *
 * @returns null with fewer than two tasters or samples, or scores without any spread
 * Source: as `detectableDifference`; 80 % power is common practice, no source.
 */
export function unseenGap(attribute: AttributeAnalysis): number | null {
  const { variances, samples, tasters, scores } = attribute;
  if (samples < 2 || tasters < 2 || variances.error === null) return null;
  const repeats = Math.max(1, scores / (samples * tasters));
  const variance = variances.error / repeats + (variances.tasterBySample ?? 0);
  if (!(variance > 1e-12)) return null;
  return detectableDifference(
    { samples, tasters, replicates: 1, errorSd: Math.sqrt(variance), alpha: sureEnough },
    0.8,
  );
}
