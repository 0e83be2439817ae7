import { OutOfDomain } from '#core/out-of-domain.ts';
import { incompleteBeta } from './incomplete-beta.ts';

/**
 * Chance of `least` successes or more in n trials.
 *
 * Method: as an incomplete beta function, which sums the binomial exactly.
 *
 * @param least whole number, any
 * @param trials whole number, at least 0
 * @param p chance of success in one trial, 0 to 1
 * @throws OutOfDomain outside these
 * Accuracy: 1e-12 relative. Source: NIST Digital Library of Mathematical Functions, 8.17.5.
 * @example binomialUpperTail(15, 30, 1 / 3) // 0.0434823
 */
export function binomialUpperTail(least: number, trials: number, p: number): number {
  if (!Number.isInteger(least)) throw new OutOfDomain('least', least, 'whole numbers');
  if (!Number.isInteger(trials) || trials < 0) throw new OutOfDomain('trials', trials, 'whole numbers from 0');
  if (!(p >= 0 && p <= 1)) throw new OutOfDomain('p', p, '0 to 1');
  if (least <= 0) return 1;
  if (least > trials) return 0;
  return incompleteBeta(p, 1 - p, least, trials - least + 1).lower;
}
