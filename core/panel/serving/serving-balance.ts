/** How often each sample stood in each place, and each was served straight after each. */
export interface ServingBalance {
  /** `place[sample][position]`: times the sample stood at that position of a sitting. */
  readonly place: number[][];
  /** `follows[earlier][later]`: times `later` was served straight after `earlier`, within one sitting. */
  readonly follows: number[][];
}

/** Empty counts for so many samples and places. */
export function emptyBalance(samples: number, places: number): ServingBalance {
  const zeros = (length: number) => new Array<number>(length).fill(0);
  return {
    place: Array.from({ length: samples }, () => zeros(places)),
    follows: Array.from({ length: samples }, () => zeros(samples)),
  };
}

function bump(row: number[] | undefined, index: number, by: number): number {
  if (row === undefined) return 0;
  const before = row[index] ?? 0;
  row[index] = before + by;
  // (count + by)² − count²: how much the sum of squares grew.
  return 2 * before * by + by * by;
}

/** An uneven place misleads more than an uneven neighbour: the first cup is always judged differently. */
const placeWeight = 4;

/**
 * Adds one serving order to the counts, or takes it away again.
 *
 * @param balance changed in place
 * @param order samples in serving order
 * @param by 1 to add, −1 to take away
 * @returns how much the weighted sum of the squared counts grew: the smaller, the better balanced
 */
export function countOrder(balance: ServingBalance, order: readonly number[], by: 1 | -1): number {
  let growth = 0;
  order.forEach((sample, position) => {
    growth += placeWeight * bump(balance.place[sample], position, by);
    const earlier = order[position - 1];
    if (earlier !== undefined) growth += bump(balance.follows[earlier], sample, by);
  });
  return growth;
}
