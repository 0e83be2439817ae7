import { OutOfDomain } from '#core/out-of-domain.ts';
import { incompleteBeta } from './incomplete-beta.ts';
import { poissonDensity } from './saddle-point.ts';

/**
 * Chance that a noncentral F variable exceeds f: the power of an F test whose critical value is f.
 *
 * Method: Poisson mixture of beta tails, summed outwards from its largest weight until the weights vanish.
 *
 * @param f at least 0
 * @param df1 numerator degrees of freedom, above 0
 * @param df2 denominator degrees of freedom, above 0
 * @param noncentrality sum of squared standardised means, at least 0
 * @returns 0 to 1
 * @throws OutOfDomain when f or the noncentrality is negative
 * Accuracy: 1e-11 relative.
 * Source: Johnson, Kotz & Balakrishnan, Continuous Univariate Distributions 2 (2nd ed.), chapter 30 (from memory).
 * @example noncentralFUpperTail(4.9646, 1, 10, 0) // 0.05
 */
export function noncentralFUpperTail(f: number, df1: number, df2: number, noncentrality: number): number {
  if (!(f >= 0)) throw new OutOfDomain('f', f, 'at least 0');
  if (!(noncentrality >= 0)) throw new OutOfDomain('noncentrality', noncentrality, 'at least 0');
  const sum = df2 + df1 * f;
  const x = (df1 * f) / sum;
  const complement = df2 / sum;
  const mean = noncentrality / 2;
  const middle = Math.floor(mean);
  const term = (count: number): number =>
    poissonDensity(count, mean) * incompleteBeta(x, complement, df1 / 2 + count, df2 / 2).upper;
  let total = 0;
  for (let count = middle; count >= 0; count -= 1) {
    total += term(count);
    if (poissonDensity(count, mean) < 1e-17) break;
  }
  for (let count = middle + 1; ; count += 1) {
    total += term(count);
    // No later term exceeds its weight, and the weights fall.
    if (poissonDensity(count, mean) < 1e-14 * total || poissonDensity(count, mean) < 1e-280) break;
  }
  return Math.min(1, total);
}
