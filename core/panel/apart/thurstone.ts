import { findRoot } from '#core/numeric/find-root.ts';
import { gaussLegendre, integrate } from '#core/numeric/gauss-legendre.ts';
import { normalBelow, normalDensity } from '#core/numeric/normal-distribution.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';

export type DiscriminationMethod = 'triangle' | 'duo-trio' | 'paired' | 'paired-two-sided';

const rule = gaussLegendre(80);

/** Chance of a correct answer by guessing. */
export function guessing(method: DiscriminationMethod): number {
  return method === 'triangle' ? 1 / 3 : 1 / 2;
}

/** More than this is a difference nobody could miss: the chance of a correct answer is 1 to fifteen digits. */
export const largestDPrime = 30;

/**
 * Chance of a correct answer at a sensory difference d′.
 *
 * Method: triangle by quadrature of 2∫₀^∞[Φ(−x√3 + d√⅔) + Φ(−x√3 − d√⅔)]φ(x)dx; duo-trio 1 − Φ(d/√2) − Φ(d/√6) + 2Φ(d/√2)Φ(d/√6);
 * paired Φ(d/√2).
 *
 * @param method the test
 * @param dPrime distance of the two samples in standard deviations of one perception, at least 0
 * @throws OutOfDomain when dPrime is negative
 * Accuracy: 1e-12. Source: D. M. Ennis, Journal of Sensory Studies 8 (1993) 353.
 * @example chanceCorrect('paired', 1) // 0.760250
 */
export function chanceCorrect(method: DiscriminationMethod, dPrime: number): number {
  if (!(dPrime >= 0)) throw new OutOfDomain('dPrime', dPrime, 'at least 0');
  const half = normalBelow(dPrime / Math.SQRT2);
  if (method === 'duo-trio') {
    const sixth = normalBelow(dPrime / Math.sqrt(6));
    return 1 - half - sixth + 2 * half * sixth;
  }
  if (method !== 'triangle') return half;
  const shift = dPrime * Math.sqrt(2 / 3);
  const root = Math.sqrt(3);
  const part = (x: number) => (normalBelow(-x * root + shift) + normalBelow(-x * root - shift)) * normalDensity(x);
  // The integrand bends where the first normal turns; each side is smooth.
  const turn = Math.min(shift / root, 9);
  return 2 * (integrate(part, 0, turn, rule) + integrate(part, turn, turn + 9, rule));
}

/**
 * The difference d′ at which answers are correct with a given chance.
 *
 * @param method the test
 * @param correct chance, guessing to below 1; below guessing gives 0
 * @throws OutOfDomain when the chance is 1 or more
 * Accuracy: 1e-9. Source: as chanceCorrect.
 * @example dPrimeAt('triangle', 0.5) // 1.4663
 */
export function dPrimeAt(method: DiscriminationMethod, correct: number): number {
  if (!(correct < 1)) throw new OutOfDomain('correct', correct, 'below 1');
  if (correct <= guessing(method)) return 0;
  // Within rounding of 1 no difference gives quite that chance: the largest that is looked at stands for it.
  if (chanceCorrect(method, largestDPrime) <= correct) return largestDPrime;
  return findRoot((d) => chanceCorrect(method, d) - correct, 0, largestDPrime, 1e-12);
}
