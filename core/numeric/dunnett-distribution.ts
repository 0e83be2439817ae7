import { within } from '#core/out-of-domain.ts';
import { interpolatedTail } from './interpolated-tail.ts';
import { normalBelow, normalDensity } from './normal-distribution.ts';
import { studentisedCritical, studentisedTail } from './studentised-tail.ts';

/** The largest absolute t of several comparisons with one control. */
export interface DunnettDistribution {
  /** Chance that the largest absolute t exceeds it. */
  upperTail(t: number, df: number): number;
  /** The value exceeded with the chance alpha. */
  critical(alpha: number, df: number): number;
}

/** Equal loadings are one factor raised to a power. */
function grouped(loadings: readonly number[]): { loading: number; times: number }[] {
  const groups: { loading: number; times: number }[] = [];
  for (const loading of loadings) {
    const found = groups.find((group) => Math.abs(group.loading - loading) < 1e-12);
    if (found === undefined) groups.push({ loading, times: 1 });
    else found.times += 1;
  }
  return groups;
}

/**
 * Dunnett's two-sided distribution for correlations of product form, ρᵢⱼ = λᵢ·λⱼ.
 *
 * Method: given the control's part, the comparisons are independent; one integral over that part by the trapezoidal rule,
 * interpolated, then averaged over the estimated error. Leaves out correlations that are no products.
 *
 * @param loadings λ of each comparison, −0.9999 to 0.9999; √½ each when all means are equally exact
 * @throws OutOfDomain when a loading is outside that
 * Accuracy: 1e-9 absolute.
 * Source: C. W. Dunnett, J. Am. Stat. Assoc. 50 (1955) 1096; Biometrics 20 (1964) 482.
 * @example dunnettDistribution([Math.SQRT1_2, Math.SQRT1_2]).critical(0.05, 10) // 2.57
 */
export function dunnettDistribution(loadings: readonly number[]): DunnettDistribution {
  for (const loading of loadings) within('loading', loading, -0.9999, 0.9999);
  const groups = grouped(loadings).map(({ loading, times }) => ({ loading, times, rest: Math.sqrt(1 - loading ** 2) }));
  const step = 0.25 * Math.min(1, ...groups.map(({ rest }) => 1.4 * rest));
  const maximumTail = (t: number): number => {
    if (t <= 0) return 1;
    let sum = 0;
    const reach = Math.max(10, Math.min(40, t + 8));
    for (let z = -reach; z <= reach; z += step) {
      let log = 0;
      for (const { loading, times, rest } of groups) {
        const outside = normalBelow((loading * z - t) / rest) + normalBelow((-loading * z - t) / rest);
        log += times * Math.log1p(-Math.min(outside, 1));
      }
      sum += normalDensity(z) * -Math.expm1(log);
    }
    return Math.min(1, sum * step);
  };
  const tail = interpolatedTail(maximumTail);
  return {
    upperTail: (t, df) => studentisedTail(tail, t, df),
    critical: (alpha, df) => studentisedCritical(tail, alpha, df),
  };
}
