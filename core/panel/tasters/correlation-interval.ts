import { normalQuantile } from '#core/numeric/normal-distribution.ts';
import { within } from '#core/out-of-domain.ts';

/**
 * The 95 % interval of a correlation.
 *
 * Method: Fisher's z = artanh(r) with standard error 1/√(n − 3), turned back by tanh. Rests on both lists being drawn from a bivariate
 * normal distribution; with few pairs it is wide.
 *
 * @param r −1 to 1
 * @param n pairs, a whole number of 2 or more
 * @returns null with three pairs or fewer, where it can't be told
 * @throws OutOfDomain outside these ranges
 * Source: R. A. Fisher, On the "probable error" of a coefficient of correlation deduced from a small sample, Metron 1 (1921) 3–32.
 * @example correlationInterval(0.5711816, 9) // [-0.1497, 0.8956]
 */
export function correlationInterval(r: number, n: number): readonly [number, number] | null {
  within('r', r, -1, 1);
  within('n', n, 2, Number.MAX_SAFE_INTEGER);
  if (n < 4) return null;
  if (Math.abs(r) === 1) return [r, r];
  const half = normalQuantile(0.975) / Math.sqrt(n - 3);
  const z = Math.atanh(r);
  return [Math.tanh(z - half), Math.tanh(z + half)];
}
