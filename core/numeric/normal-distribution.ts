import normalCdfOf from '@stdlib/stats-base-dists-normal-cdf';
import normalQuantileOf from '@stdlib/stats-base-dists-normal-quantile';

/**
 * Chance that a standard normal variable lies below z.
 *
 * @param z any number
 * Accuracy: 1e-14 relative, in the lower tail too.
 * @example normalBelow(0) // 0.5
 */
export function normalBelow(z: number): number {
  return normalCdfOf(z, 0, 1);
}

/**
 * The value below which a standard normal variable lies with the chance `below`.
 *
 * @param below above 0, below 1
 * @example normalQuantile(0.975) // 1.959964
 */
export function normalQuantile(below: number): number {
  return normalQuantileOf(below, 0, 1);
}

/** Height of the standard normal density at z. */
export function normalDensity(z: number): number {
  return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
}
