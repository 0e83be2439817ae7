import { describe, expect, it } from 'vitest';
import { servingDesign } from '#core/panel/serving/serving-design.ts';
import { williamsOrders } from '#core/panel/serving/williams-orders.ts';

// E. J. Williams, Australian Journal of Scientific Research A 2 (1949) 149 (abstract read): n orders for even n, 2n for odd n.
describe.each([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])('williamsOrders(%i)', (samples) => {
  const orders = williamsOrders(samples);
  const times = samples % 2 === 0 ? 1 : 2;

  it('puts every sample in every place equally often', () => {
    expect(orders).toHaveLength(times * samples);
    for (let sample = 0; sample < samples; sample += 1) {
      for (let place = 0; place < samples; place += 1) {
        expect(orders.filter((order) => order[place] === sample)).toHaveLength(times);
      }
    }
  });

  it('lets every sample follow every other equally often', () => {
    const pairs = new Map<string, number>();
    for (const order of orders) {
      order.forEach((later, place) => {
        if (place > 0) pairs.set(`${order[place - 1]}>${later}`, (pairs.get(`${order[place - 1]}>${later}`) ?? 0) + 1);
      });
    }
    expect(pairs.size).toBe(samples * (samples - 1));
    expect(new Set(pairs.values())).toEqual(new Set([times]));
  });
});

it('williamsOrders(6) is the printed square', () => {
  expect(williamsOrders(6).map((order) => order.map((sample) => sample + 1).join(' '))).toEqual([
    '1 2 6 3 5 4',
    '2 3 1 4 6 5',
    '3 4 2 5 1 6',
    '4 5 3 6 2 1',
    '5 6 4 1 3 2',
    '6 1 5 2 4 3',
  ]);
});

describe('servingDesign', () => {
  it.each([
    [4, 8, 1],
    [4, 6, 2],
    [3, 6, 1],
    [5, 20, 1],
    [6, 3, 2],
    [7, 7, 2],
  ])('%i samples, %i tasters, %i rounds fill whole squares: perfectly balanced', (samples, tasters, rounds) => {
    const { place, follows } = servingDesign(samples, tasters, rounds, 11).balance;
    expect(new Set(place.flat())).toEqual(new Set([(tasters * rounds) / samples]));
    const neighbours = follows.flatMap((row, sample) => row.filter((_, other) => other !== sample));
    expect(new Set(neighbours)).toEqual(new Set([(tasters * rounds) / samples]));
  });

  it('any other number of tasters keeps the counts of each place within one of each other', () => {
    for (let samples = 2; samples <= 7; samples += 1) {
      for (let tasters = 1; tasters <= 16; tasters += 1) {
        const counts = servingDesign(samples, tasters, 1, 5).balance.place.flat();
        expect(Math.max(...counts) - Math.min(...counts), `${samples} × ${tasters}`).toBeLessThanOrEqual(1);
      }
    }
  });

  it('eight samples and more are spread over sittings of at most seven, nobody missing any', () => {
    for (const samples of [8, 12, 15, 24]) {
      const { sittings } = servingDesign(samples, 5, 2, 3);
      expect(Math.max(...sittings.flatMap(({ orders }) => orders.map((order) => order.length)))).toBeLessThanOrEqual(7);
      for (let taster = 0; taster < 5; taster += 1) {
        const served = sittings.flatMap(({ orders }) => orders[taster] ?? []).toSorted((one, other) => one - other);
        expect(served).toEqual(Array.from({ length: 2 * samples }, (_, index) => Math.floor(index / 2)));
      }
    }
  });

  it('is the same for the same seed and another for another', () => {
    expect(servingDesign(5, 9, 1, 1)).toEqual(servingDesign(5, 9, 1, 1));
    expect(servingDesign(5, 9, 1, 1)).not.toEqual(servingDesign(5, 9, 1, 2));
  });
});
