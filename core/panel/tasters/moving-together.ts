import { correlation } from '#core/numeric/correlation.ts';

/** Two attributes whose sample means rise and fall together. */
export interface MovingPair {
  readonly one: string;
  readonly other: string;
  readonly correlation: number;
}

/** From here on, whatever one attribute seems to do to liking, the other may have done. Common practice, no source. */
export const togetherFrom = 0.8;

/**
 * Which attributes moved together over the samples, so that their parts in liking can't be told apart.
 *
 * Method: Pearson's correlation of the sample means. Leaves out: pairs with fewer than three samples in common.
 *
 * @param means each attribute's mean by sample
 * @returns the pairs with a correlation of 0.8 or more either way, the closest first
 * @example movingTogether(new Map([['tang', tangMeans], ['fizz', fizzMeans]]))
 */
export function movingTogether(means: ReadonlyMap<string, ReadonlyMap<string, number>>): MovingPair[] {
  const names = [...means.keys()];
  const found: MovingPair[] = [];
  names.forEach((one, place) => {
    for (const other of names.slice(place + 1)) {
      const x: number[] = [];
      const y: number[] = [];
      for (const [sample, value] of means.get(one) ?? []) {
        const beside = means.get(other)?.get(sample);
        if (beside === undefined) continue;
        x.push(value);
        y.push(beside);
      }
      const r = x.length < 3 ? null : correlation(x, y);
      if (r !== null && Math.abs(r) >= togetherFrom) found.push({ one, other, correlation: r });
    }
  });
  return found.sort((a, b) => Math.abs(b.correlation) - Math.abs(a.correlation));
}
