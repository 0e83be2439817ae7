import { OutOfDomain } from '#core/out-of-domain.ts';

/**
 * A Williams square: serving orders in which each sample stands once in each place and follows each other sample equally often.
 *
 * Method: the first row zigzags 0, 1, n−1, 2, n−2 …, each further row adds one to it, modulo n. For an odd number of samples
 * the mirror image of each row is appended, because one square alone cannot balance what follows what.
 *
 * @param samples how many samples, 1 to 100
 * @returns n rows for even n, 2n rows for odd n; each row lists the samples 0 … n−1 in serving order
 * @throws OutOfDomain outside that range
 * Accuracy: exact: each ordered pair of neighbours occurs once (even n) or twice (odd n).
 * Source: E. J. Williams, Australian Journal of Scientific Research A 2 (1949) 149.
 * @example williamsOrders(4)[0] // [0, 1, 3, 2]
 */
export function williamsOrders(samples: number): number[][] {
  if (!Number.isInteger(samples) || samples < 1 || samples > 100) {
    throw new OutOfDomain('samples', samples, 'whole numbers from 1 to 100');
  }
  const zigzag = Array.from({ length: samples }, (_, place) =>
    place % 2 === 1 ? (place + 1) / 2 : (samples - place / 2) % samples,
  );
  const square = zigzag.map((_, row) => zigzag.map((sample) => (sample + row) % samples));
  return samples % 2 === 0 || samples === 1 ? square : [...square, ...square.map((row) => [...row].reverse())];
}
