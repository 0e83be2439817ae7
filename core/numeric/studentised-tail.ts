import { OutOfDomain } from '#core/out-of-domain.ts';
import { findRoot } from './find-root.ts';

/** More degrees of freedom than this are as good as endless: the tail moves by less than 1e-9. */
const endless = 1e9;

/**
 * The tail of a statistic whose error is estimated on `df` degrees of freedom, from its tail when the error is known.
 *
 * Method: the mean of tail(q·s) over s = √(χ²/df). In ln s the integrand is smooth and dies out on both sides, so that the
 * trapezoidal rule converges faster than any power of its step.
 *
 * @param tail chance of exceeding x with the error known; x at least 0
 * @param q at least 0
 * @param df above 0; Infinity allowed
 * @returns chance of exceeding q
 * @throws OutOfDomain when q or df is outside these
 * Accuracy: 1e-11 relative for df of 1 and more.
 * Source: Trefethen & Weideman, SIAM Review 56 (2014) 385, on the trapezoidal rule.
 */
export function studentisedTail(tail: (x: number) => number, q: number, df: number): number {
  if (!(q >= 0)) throw new OutOfDomain('q', q, 'at least 0');
  if (!(df > 0)) throw new OutOfDomain('df', df, 'above 0');
  if (q === 0) return 1;
  if (df > endless) return tail(q);
  const step = Math.min(0.125, 0.5 / Math.sqrt(2 * df));
  let weights = 0;
  let sum = 0;
  const add = (index: number): boolean => {
    const x = index * step;
    const exponent = df * (x - Math.expm1(2 * x) / 2);
    if (exponent < -60) return false;
    const weight = Math.exp(exponent);
    weights += weight;
    sum += weight * tail(q * Math.exp(x));
    return true;
  };
  for (let index = 0; add(index); index += 1);
  for (let index = -1; add(index); index -= 1);
  return Math.min(1, sum / weights);
}

/**
 * The value that such a statistic exceeds with the chance alpha.
 *
 * @param tail as studentisedTail
 * @param alpha above 0, below 1
 * @param df above 0
 * Accuracy: 1e-10 relative.
 */
export function studentisedCritical(tail: (x: number) => number, alpha: number, df: number): number {
  if (!(alpha > 0 && alpha < 1)) throw new OutOfDomain('alpha', alpha, 'above 0, below 1');
  let high = 4;
  while (studentisedTail(tail, high, df) > alpha) {
    high *= 2;
    if (high > 1e250) throw new OutOfDomain('df', df, 'large enough for a finite critical value');
  }
  return findRoot((q) => Math.log(studentisedTail(tail, q, df) / alpha), high === 4 ? 0 : high / 2, high, 1e-11 * high);
}
