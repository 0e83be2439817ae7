import { OutOfDomain } from '#core/out-of-domain.ts';

/** 97.5 % points of Student's t for 1–10 degrees of freedom. Source: any printed table, such as Biometrika Tables for Statisticians, table 12 (from memory). */
const few = [12.7062, 4.30265, 3.18245, 2.77645, 2.57058, 2.44691, 2.36462, 2.306, 2.26216, 2.22814];
/** The 97.5 % point of the normal distribution. */
const normal = 1.959963984540054;

/**
 * The 97.5 % point of Student's t: what a 95 % interval is made of.
 *
 * Method: printed values to 10 degrees of freedom, the Cornish–Fisher expansion of four terms beyond. Here so that the page can show intervals
 * without a statistics library; the panel's arithmetic has its own.
 *
 * @param freedom whole number, at least 1
 * @throws OutOfDomain otherwise
 * Accuracy: 1e-4.
 * Source: Abramowitz and Stegun (1964), 26.7.5.
 * @example studentQuantile975(2) // 4.303
 */
export function studentQuantile975(freedom: number): number {
  if (!Number.isInteger(freedom) || freedom < 1) throw new OutOfDomain('freedom', freedom, 'whole numbers from 1');
  const printed = few[freedom - 1];
  if (printed !== undefined) return printed;
  const z = normal;
  const v = freedom;
  return (
    z +
    (z ** 3 + z) / (4 * v) +
    (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * v ** 2) +
    (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / (384 * v ** 3) +
    (79 * z ** 9 + 776 * z ** 7 + 1482 * z ** 5 - 1920 * z ** 3 - 945 * z) / (92160 * v ** 4)
  );
}
