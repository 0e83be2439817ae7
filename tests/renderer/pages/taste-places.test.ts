import { describe, expect, it } from 'vitest';
import {
  freePlaces,
  hasDoublePlace,
  orderSoFar,
  placeFaults,
  placeToStore,
} from '#renderer/pages/tasting/place-faults.ts';
import { countOrders, timesWords } from '#renderer/parts/order-balance/count-orders.ts';

const scale = { name: 'place', kind: 'place' as const, low: 1, high: 4 };
const cups = (...texts: string[]) => texts.map((text, at) => ({ name: ['274', '613', '859', '341'][at] ?? '', text }));

describe('placeFaults', () => {
  it('names a place given twice at both cups, and one that does not exist', () => {
    expect(placeFaults(cups('2', '1', '2', '7'), scale, false)).toEqual([
      'Place 2 stands at 859 too. Give each cup a place of its own.',
      undefined,
      'Place 2 stands at 274 too. Give each cup a place of its own.',
      'Places go from 1, the best, to 4.',
    ]);
  });

  it('lets cups share a place only where that is meant', () => {
    const tied = cups('1', '1', '3', '');
    expect(placeFaults(tied, scale, true)).toEqual([undefined, undefined, undefined, undefined]);
    expect(hasDoublePlace(tied, scale)).toBe(true);
    expect(hasDoublePlace(cups('1', '2', '', ''), scale)).toBe(false);
  });
});

describe('an unfinished ranking', () => {
  it('knows the places still free and the order so far', () => {
    expect(freePlaces(cups('2', '', '4', ''), scale)).toEqual([1, 3]);
    expect(orderSoFar(cups('2', '1', '2', ''), scale)).toEqual([
      { place: 1, names: ['613'] },
      { place: 2, names: ['274', '859'] },
    ]);
  });
});

describe('placeToStore', () => {
  const cup = (text: string) => ({ name: '274', text });

  it('stores a place that stands alone, and takes one back that is given twice, but not from the cup that had it before', () => {
    expect(placeToStore(cup('2'), scale, undefined, 1)).toBe(2);
    expect(placeToStore(cup('2'), scale, 'double', 1)).toBeNull();
    expect(placeToStore(cup('2'), scale, 'double', 2)).toBeUndefined();
    expect(placeToStore(cup(''), scale, undefined, 2)).toBeNull();
    expect(placeToStore(cup('9'), scale, 'no such place', 2)).toBeUndefined();
  });
});

describe('countOrders', () => {
  // The four orders of a Williams square for four samples: Williams, Aust. J. Sci. Res. A 2 (1949) 149: each sample once in each place,
  // and once after each other one.
  const square = ['ABDC', 'BCAD', 'CDBA', 'DACB'].map((order) => [...order]);

  it('counts each sample in each place and after each other one', () => {
    const { samples, places, inPlace, after } = countOrders(square);
    expect(samples).toEqual(['A', 'B', 'C', 'D']);
    for (const sample of samples) {
      for (let place = 0; place < places; place += 1) expect(inPlace(sample, place)).toBe(1);
      for (const other of samples) expect(after(sample, other)).toBe(sample === other ? 0 : 1);
    }
  });

  it('does not count what comes after a break', () => {
    expect(countOrders([['A', 'B'], ['C']]).after('B', 'C')).toBe(0);
  });

  it('says the least and the most', () => {
    const counts = [
      [1, 1],
      [2, 2],
      [1, 2],
      [0, 1],
      [0, 2],
    ];
    expect(counts.map(timesWords)).toEqual(['once', '2 times', '1 to 2 times', 'at most once', 'at most 2 times']);
  });
});
