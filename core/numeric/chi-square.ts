import { OutOfDomain } from '#core/out-of-domain.ts';
import { poissonDensity } from './saddle-point.ts';

/**
 * Chance that a chi-square variable exceeds x.
 *
 * Method: incomplete gamma function, by its series below the mean and its continued fraction above.
 *
 * @param x at least 0
 * @param df degrees of freedom, above 0
 * @returns 0 to 1; keeps its digits however small
 * @throws OutOfDomain outside these
 * Accuracy: 1e-12 relative.
 * Source: NIST Digital Library of Mathematical Functions, 8.7.1 and 8.9.2.
 * @example chiSquareUpperTail(5.991464547107979, 2) // 0.05
 */
export function chiSquareUpperTail(x: number, df: number): number {
  if (!(x >= 0)) throw new OutOfDomain('x', x, 'at least 0');
  if (!(df > 0)) throw new OutOfDomain('df', df, 'above 0');
  if (x === 0) return 1;
  if (x === Number.POSITIVE_INFINITY) return 0;
  const a = df / 2;
  const z = x / 2;
  // zᵃ e⁻ᶻ / Γ(a + 1)
  const front = poissonDensity(a, z);
  if (z < a + 1) {
    let term = 1;
    let sum = 1;
    for (let step = 1; term > 1e-17 * sum; step += 1) {
      term *= z / (a + step);
      sum += term;
    }
    return Math.max(0, 1 - front * sum);
  }
  const tiny = 1e-300;
  let b = z + 1 - a;
  let c = 1 / tiny;
  let d = 1 / b;
  let value = d;
  for (let step = 1; step < 100_000; step += 1) {
    const an = -step * (step - a);
    b += 2;
    d = an * d + b;
    d = 1 / (Math.abs(d) < tiny ? tiny : d);
    c = b + an / c;
    if (Math.abs(c) < tiny) c = tiny;
    value *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return front * a * value;
}
