import { type SeededRandom, seededRandom } from '#core/numeric/seeded-random.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { countOrder, emptyBalance, type ServingBalance } from './serving-balance.ts';
import { williamsOrders } from './williams-orders.ts';

/** More than this in one sitting tires the palate; common practice, no source. */
export const mostSamplesInASitting = 7;

export interface ServingDesign {
  /** One entry a sitting; `orders[taster]` lists the samples 0 … n−1 served to that taster, in order. */
  readonly sittings: readonly { readonly orders: readonly (readonly number[])[] }[];
  readonly balance: ServingBalance;
}

/** Picks `wanted` rows that even out the counts so far: the best next row each time, then exchanges while they help. */
function evenRows(rows: number[][], wanted: number, balance: ServingBalance, random: SeededRandom): number[][] {
  const free = random.shuffled(rows);
  const chosen: number[][] = [];
  const growthOf = (row: number[]): number => {
    const growth = countOrder(balance, row, 1);
    countOrder(balance, row, -1);
    return growth;
  };
  const takeBest = (): number[] => {
    let best = 0;
    let least = Number.POSITIVE_INFINITY;
    free.forEach((row, index) => {
      const growth = growthOf(row);
      if (growth < least) {
        least = growth;
        best = index;
      }
    });
    const [row = []] = free.splice(best, 1);
    countOrder(balance, row, 1);
    return row;
  };
  while (chosen.length < wanted) chosen.push(takeBest());
  for (let round = 0; round < 20; round += 1) {
    let better = false;
    for (let index = 0; index < chosen.length; index += 1) {
      const old = chosen[index] ?? [];
      const loss = -countOrder(balance, old, -1);
      free.push(old);
      const fresh = takeBest();
      chosen[index] = fresh;
      countOrder(balance, fresh, -1);
      if (growthOf(fresh) < loss) better = true;
      countOrder(balance, fresh, 1);
    }
    if (!better) break;
  }
  return chosen;
}

/**
 * Serving orders for a panel, balanced for place and for what follows what.
 *
 * Method: each round of the panel gets whole Williams squares, each with the samples renamed at random; the tasters left over get
 * the rows of one further square that even out the counts of all rounds so far. Orders longer than seven samples are cut into
 * sittings of nearly equal length. Which taster gets which row is drawn by the seed.
 * Leaves out: balance of pairs served further apart than neighbours.
 *
 * @param samples how many, 2 to 100
 * @param tasters how many, 1 to 10000
 * @param replicates rounds, 1 to 100: each taster gets each sample so often
 * @param seed whole number, 0 to 4294967295
 * @throws OutOfDomain outside these
 * Accuracy: exactly balanced when the tasters fill whole squares; else counts of place differ by as little as the search finds.
 * @example servingDesign(4, 8, 1, 7).balance.place[0] // [2, 2, 2, 2]
 */
export function servingDesign(samples: number, tasters: number, replicates: number, seed: number): ServingDesign {
  if (!Number.isInteger(tasters) || tasters < 1 || tasters > 10_000) {
    throw new OutOfDomain('tasters', tasters, 'whole numbers from 1 to 10000');
  }
  if (!Number.isInteger(replicates) || replicates < 1 || replicates > 100) {
    throw new OutOfDomain('replicates', replicates, 'whole numbers from 1 to 100');
  }
  const random = seededRandom(seed);
  const square = williamsOrders(samples);
  const renamed = (): number[][] => {
    const names = random.shuffled(Array.from({ length: samples }, (_, index) => index));
    return square.map((row) => row.map((sample) => names[sample] ?? sample));
  };
  const leftOver = renamed();
  const running = emptyBalance(samples, samples);
  const parts = Math.ceil(samples / mostSamplesInASitting);
  const longest = Math.ceil(samples / parts);
  const sittings: { orders: number[][] }[] = [];
  for (let round = 0; round < replicates; round += 1) {
    const rows: number[][] = [];
    while (rows.length + square.length <= tasters) rows.push(...renamed());
    rows.push(...evenRows(leftOver, tasters - rows.length, running, random));
    const handed = random.shuffled(rows);
    const bounds = Array.from({ length: parts + 1 }, (_, part) => Math.round((part * samples) / parts));
    for (let part = 0; part < parts; part += 1) {
      sittings.push({ orders: handed.map((row) => row.slice(bounds[part], bounds[part + 1])) });
    }
  }
  const balance = emptyBalance(samples, longest);
  for (const sitting of sittings) for (const order of sitting.orders) countOrder(balance, order, 1);
  return { sittings, balance };
}
