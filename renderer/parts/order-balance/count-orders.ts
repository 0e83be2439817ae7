import { phrase } from '#core/words/phrase.ts';

/** How often each sample stood in each place, and came straight after each other one. */
export interface OrderCounts {
  readonly samples: readonly string[];
  readonly places: number;
  readonly inPlace: (sample: string, place: number) => number;
  readonly after: (earlier: string, later: string) => number;
}

/**
 * Counts serving orders. A break between two sittings is not "straight after".
 *
 * @param orders one for each taster and sitting, first to last
 * @example countOrders([['274', '613'], ['613', '274']]).inPlace('274', 0) // 1
 */
export function countOrders(orders: readonly (readonly string[])[]): OrderCounts {
  const places = new Map<string, number>();
  const pairs = new Map<string, number>();
  const add = (counts: Map<string, number>, key: string) => counts.set(key, (counts.get(key) ?? 0) + 1);
  for (const order of orders) {
    order.forEach((sample, place) => {
      add(places, `${sample}\n${place}`);
      const before = order[place - 1];
      if (before !== undefined) add(pairs, `${before}\n${sample}`);
    });
  }
  return {
    samples: [...new Set(orders.flat())].toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true })),
    places: Math.max(0, ...orders.map((order) => order.length)),
    inPlace: (sample, place) => places.get(`${sample}\n${place}`) ?? 0,
    after: (earlier, later) => pairs.get(`${earlier}\n${later}`) ?? 0,
  };
}

/** The least and the most of some counts, in words; at least one of them. @example timesWords([1, 2, 2]) // '1 to 2 times' */
export function timesWords(counts: readonly number[]): string {
  const least = Math.min(...counts);
  const most = Math.max(...counts);
  if (least === 0 && most > 0) return most === 1 ? phrase`at most once` : phrase`at most ${most} times`;
  if (least !== most) return phrase`${least} to ${most} times`;
  return most === 1 ? phrase`once` : phrase`${most} times`;
}
