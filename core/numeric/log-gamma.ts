import { OutOfDomain } from '#core/out-of-domain.ts';

const lanczos = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/**
 * Natural logarithm of the gamma function.
 *
 * Method: Lanczos' series with g = 7 and nine terms. Leaves out negative arguments.
 *
 * @param x above zero
 * @throws OutOfDomain when x is not above zero
 * Accuracy: 1e-14 relative (1e-14 absolute near 1 and 2).
 * Source: C. Lanczos, SIAM J. Numer. Anal. B 1 (1964) 86; coefficients of P. Godfrey (from memory, checked against factorials).
 * @example logGamma(5) // ln 24 = 3.1780538303479458
 */
export function logGamma(x: number): number {
  if (!(x > 0)) throw new OutOfDomain('x', x, 'above 0');
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const shifted = x - 1;
  let sum = 0.99999999999980993;
  for (let term = 1; term < lanczos.length; term += 1) sum += (lanczos[term] ?? 0) / (shifted + term);
  const base = shifted + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(base) - base + Math.log(sum);
}
