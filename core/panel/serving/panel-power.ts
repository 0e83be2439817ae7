import { fCritical } from '#core/numeric/f-distribution.ts';
import { findRoot } from '#core/numeric/find-root.ts';
import { noncentralFUpperTail } from '#core/numeric/noncentral-f.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';

/** A tasting as its power depends on it. `errorSd` is that of one score about its taster and sample. */
export interface PanelPlan {
  readonly samples: number;
  readonly tasters: number;
  readonly replicates: number;
  readonly errorSd: number;
  readonly alpha: number;
}

/**
 * Chance that the F test of a complete panel finds two samples that lie `difference` apart, the rest half way between.
 *
 * Method: noncentral F on (s − 1, (s − 1)(tasters − 1)) degrees of freedom, noncentrality tasters·replicates·difference²/(2·errorSd²).
 * Leaves out: tasters who differ in what they find different (a taster-by-sample variance), missing scores.
 *
 * @param plan samples and tasters at least 2, errorSd above 0, alpha between 0 and 1
 * @param difference in scale points, at least 0
 * @returns 0 to 1
 * @throws OutOfDomain with fewer than two samples or tasters
 * Accuracy: 1e-9 absolute.
 * Source: J. Cohen, Statistical Power Analysis (2nd ed. 1988), section 8.2, pattern of minimum variability (from memory).
 * @example panelPower({ samples: 2, tasters: 12, replicates: 1, errorSd: 1, alpha: 0.05 }, 0) // 0.05
 */
export function panelPower(plan: PanelPlan, difference: number): number {
  if (!(plan.samples >= 2)) throw new OutOfDomain('samples', plan.samples, 'at least 2');
  if (!(plan.tasters >= 2)) throw new OutOfDomain('tasters', plan.tasters, 'at least 2');
  const df1 = plan.samples - 1;
  const df2 = df1 * (plan.tasters - 1);
  const noncentrality = (plan.tasters * plan.replicates * (difference / plan.errorSd) ** 2) / 2;
  // Beyond this the power is 1 to every digit, and the series would only be long.
  if (noncentrality > 2e5) return 1;
  return noncentralFUpperTail(fCritical(plan.alpha, df1, df2), df1, df2, noncentrality);
}

/**
 * The smallest difference that the panel finds with the wanted power.
 *
 * @param plan as panelPower
 * @param power above alpha, below 1
 * @returns scale points
 * @throws OutOfDomain when the power is not above alpha
 * Accuracy: 1e-9 of errorSd.
 * @example detectableDifference({ samples: 2, tasters: 12, replicates: 1, errorSd: 1, alpha: 0.05 }, 0.8) // about 1.28
 */
export function detectableDifference(plan: PanelPlan, power: number): number {
  if (!(power > plan.alpha && power < 1)) throw new OutOfDomain('power', power, 'above alpha, below 1');
  const short = (difference: number) => panelPower(plan, difference * plan.errorSd) - power;
  let high = 1;
  while (short(high) < 0) high *= 2;
  return plan.errorSd * findRoot(short, 0, high, 1e-10);
}

/**
 * The fewest tasters who give the wanted power at this difference.
 *
 * @param plan as panelPower; its `tasters` is not looked at
 * @param difference in scale points, above 0
 * @param power above 0, below 1
 * @param most the largest panel worth answering
 * @returns 2 or more, or null when more than `most` would be needed
 * @example tastersNeeded({ samples: 2, replicates: 1, errorSd: 1, alpha: 0.05 }, 1.3, 0.8, 1000)
 */
export function tastersNeeded(
  plan: Omit<PanelPlan, 'tasters'>,
  difference: number,
  power: number,
  most: number,
): number | null {
  const enough = (tasters: number) => panelPower({ ...plan, tasters }, difference) >= power;
  let high = 2;
  while (!enough(high)) {
    if (high >= most) return null;
    high = Math.min(most, high * 2);
  }
  let low = Math.max(1, Math.floor(high / 2));
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return high;
}
