import fQuantileOf from '@stdlib/stats-base-dists-f-quantile';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { incompleteBeta } from './incomplete-beta.ts';

/**
 * Chance that an F variable exceeds f.
 *
 * @param f at least 0
 * @param df1 numerator degrees of freedom, above 0
 * @param df2 denominator degrees of freedom, above 0
 * @returns the upper tail, 0 to 1; keeps its digits however small
 * @throws OutOfDomain when f is negative or not a number
 * Accuracy: 1e-12 relative up to 10,000 degrees of freedom, 1e-10 at a million, 1e-7 at a thousand million.
 * Source: NIST Digital Library of Mathematical Functions, 8.17; the tail as an incomplete beta function.
 * @example fUpperTail(4.964602743730711, 1, 10) // 0.05
 */
export function fUpperTail(f: number, df1: number, df2: number): number {
  if (!(f >= 0)) throw new OutOfDomain('f', f, 'at least 0');
  if (f === Number.POSITIVE_INFINITY) return 0;
  const sum = df2 + df1 * f;
  return incompleteBeta((df1 * f) / sum, df2 / sum, df1 / 2, df2 / 2).upper;
}

/**
 * The value that an F variable exceeds with the chance `upper`.
 *
 * @param upper above 0, below 1
 * @param df1 numerator degrees of freedom, above 0
 * @param df2 denominator degrees of freedom, above 0
 * @throws OutOfDomain when no finite value comes out
 * Accuracy: 1e-10 relative for upper of 1e-6 and more.
 * @example fCritical(0.05, 1, 10) // 4.9646027
 */
export function fCritical(upper: number, df1: number, df2: number): number {
  const value = fQuantileOf(1 - upper, df1, df2);
  if (!Number.isFinite(value))
    throw new OutOfDomain('upper', upper, 'above 0, below 1, on positive degrees of freedom');
  return value;
}
