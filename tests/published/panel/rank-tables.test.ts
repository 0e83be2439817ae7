import { describe, expect, it } from 'vitest';
import { seededRandom } from '#core/numeric/seeded-random.ts';
import { friedman } from '#core/panel/ranks/friedman.ts';
import { pageTest } from '#core/panel/ranks/page-test.ts';
import { midranks } from '#core/panel/ranks/rank-blocks.ts';
import { criticalRankDifference } from '#core/panel/ranks/rank-sum-differences.ts';
import { rankSumTail } from '#core/panel/ranks/rank-sum-tail.ts';

/** Blocks whose Page statistic is L: neighbours swapped at random, downhill in the distance from L with a little play. */
function blocksWithL(samples: number, tasters: number, wanted: number): number[][] {
  const random = seededRandom(samples * 1000 + tasters);
  const blocks = Array.from({ length: tasters }, () => Array.from({ length: samples }, (_, place) => place + 1));
  let l = (tasters * samples * (samples + 1) * (2 * samples + 1)) / 6;
  for (let step = 0; step < 200_000 && l !== wanted; step += 1) {
    const block = blocks[random.below(tasters)] ?? [];
    const place = random.below(samples - 1);
    const [one = 0, other = 0] = block.slice(place, place + 2);
    const next = l + one - other;
    if (Math.abs(next - wanted) > Math.abs(l - wanted) + random.below(3)) continue;
    block.splice(place, 2, other, one);
    l = next;
  }
  return blocks;
}

// Smallest L significant at 5 %, 1 % and 0.1 %, exact (full convolution of permutations), for k samples and n tasters.
// Page, J. Am. Stat. Assoc. 58 (1963) 216 (his tables from memory); method of Odeh, Commun. Stat. 6 (1977) 49.
const pageTable: [samples: number, tasters: number, five: number | null, one: number | null, tenth: number | null][] = [
  [3, 2, 28, null, null],
  [3, 3, 41, 42, null],
  [3, 4, 54, 55, 56],
  [3, 5, 66, 68, 70],
  [3, 6, 79, 81, 83],
  [3, 7, 91, 93, 96],
  [3, 8, 104, 106, 109],
  [3, 9, 116, 119, 121],
  [3, 10, 128, 131, 134],
  [3, 11, 141, 144, 147],
  [3, 12, 153, 156, 160],
  [4, 2, 58, 60, null],
  [4, 3, 84, 87, 89],
  [4, 4, 111, 114, 117],
  [4, 5, 137, 141, 145],
  [4, 6, 163, 167, 172],
  [4, 7, 189, 193, 198],
  [4, 8, 214, 220, 225],
  [4, 9, 240, 246, 252],
  [4, 10, 266, 272, 278],
  [4, 11, 292, 298, 305],
  [4, 12, 317, 324, 331],
  [5, 2, 103, 106, 109],
  [5, 3, 150, 155, 160],
  [5, 4, 197, 204, 210],
  [5, 5, 244, 251, 259],
  [5, 6, 291, 299, 307],
  [5, 7, 338, 346, 355],
  [5, 8, 384, 393, 403],
  [5, 9, 431, 441, 451],
  [5, 10, 477, 487, 499],
  [5, 11, 523, 534, 546],
  [5, 12, 570, 581, 593],
  [6, 2, 166, 173, 178],
  [6, 3, 244, 252, 260],
  [6, 4, 321, 331, 341],
  [6, 5, 397, 409, 420],
  [6, 6, 474, 486, 499],
  [6, 7, 550, 563, 577],
  [6, 8, 625, 640, 656],
  [6, 9, 701, 717, 733],
  [6, 10, 777, 793, 811],
  [6, 11, 852, 869, 888],
  [6, 12, 928, 946, 965],
  [7, 2, 252, 261, 269],
  [7, 3, 370, 382, 394],
  [7, 4, 487, 501, 516],
  [7, 5, 603, 620, 637],
  [7, 6, 719, 737, 757],
  [7, 7, 835, 855, 876],
  [7, 8, 950, 972, 995],
  [7, 9, 1065, 1088, 1113],
  [7, 10, 1181, 1205, 1231],
  [7, 11, 1295, 1321, 1348],
  [7, 12, 1410, 1437, 1465],
  [8, 2, 362, 375, 388],
  [8, 3, 532, 550, 567],
  [8, 4, 701, 722, 743],
  [8, 5, 869, 893, 917],
  [8, 6, 1037, 1063, 1090],
  [8, 7, 1204, 1232, 1262],
  [8, 8, 1371, 1401, 1433],
  [8, 9, 1537, 1569, 1603],
  [8, 10, 1704, 1737, 1774],
  [8, 11, 1870, 1905, 1943],
  [8, 12, 2036, 2072, 2113],
];

describe('pageTest agrees with the exact tables', () => {
  it.each(pageTable)('%i samples, %i tasters: L %i, %i, %i', (samples, tasters, ...critical) => {
    critical.forEach((l, index) => {
      if (l === null) return;
      const alpha = [0.05, 0.01, 0.001][index] ?? 0;
      const at = pageTest(blocksWithL(samples, tasters, l));
      const below = pageTest(blocksWithL(samples, tasters, l - 1));
      expect([at.l, at.exact, below.l]).toEqual([l, true, l - 1]);
      expect(at.p).toBeLessThanOrEqual(alpha);
      expect(below.p).toBeGreaterThan(alpha);
    });
  });

  it('rank sums 8.5, 12, 17 and 22.5 of six tasters give L = 173.5 (Cohen & Holliday 1983, table 85, read on a secondary page)', () => {
    // Any blocks with these sums: L depends on nothing else.
    const blocks = [
      [1.5, 1.5, 3, 4],
      [1, 2, 3, 4],
      [1, 2, 3, 4],
      [1, 2, 3, 4],
      [2, 1.5, 2.5, 4],
      [2, 3, 2.5, 2.5],
    ];
    const sums = [0, 1, 2, 3].map((place) => blocks.reduce((sum, block) => sum + (block[place] ?? 0), 0));
    expect(sums).toEqual([8.5, 12, 17, 22.5]);
    const page = pageTest(blocks);
    expect(page.l).toBe(173.5);
    // The critical value printed beside it at 0.1 % is 172.
    expect(page.p).toBeLessThan(0.001);
  });
});

// Smallest chi-square significant at 5 % and the p it has, exact, for k samples and n tasters without ties. As printed in the usual
// tables of Friedman's test; from memory.
const friedmanTable: readonly (readonly [samples: number, tasters: number, chiSquare: number, p: number])[] = [
  [3, 3, 6, 0.028],
  [3, 4, 6.5, 0.042],
  [3, 5, 6.4, 0.039],
  [3, 6, 7, 0.029],
  [3, 7, 7.143, 0.027],
  [3, 8, 6.25, 0.047],
  [4, 2, 6, 0.042],
  [4, 3, 7.4, 0.033],
  [4, 4, 7.8, 0.036],
];

describe('friedman agrees with the exact distribution', () => {
  it.each(friedmanTable)('%i samples, %i tasters: chi-square %f has p %f', (samples, tasters, chiSquare, p) => {
    const block = Array.from({ length: samples }, (_, place) => place + 1);
    const blocks = new Array<number[]>(tasters).fill(block);
    // Chi-square is three times the sum of the squared distances of the doubled rank sums, over n·k·(k + 1).
    const between = (chi: number) => (chi * tasters * samples * (samples + 1)) / 3;
    expect(rankSumTail(blocks, between(chiSquare - 0.0006))).toBeCloseTo(p, 3);
    // A value a little below the next one that can come about has a smaller p: the printed one is reached exactly.
    expect(rankSumTail(blocks, between(chiSquare + 0.0006))).toBeLessThan(p);
  });

  it('RoundingTimes: 11.142857 on 2 degrees of freedom (Hollander & Wolfe 1973, p. 140); by chi-square p = 0.003805041', () => {
    const times = [
      [5.4, 5.5, 5.55],
      [5.85, 5.7, 5.75],
      [5.2, 5.6, 5.5],
      [5.55, 5.5, 5.4],
      [5.9, 5.85, 5.7],
      [5.45, 5.55, 5.6],
      [5.4, 5.4, 5.35],
      [5.45, 5.5, 5.35],
      [5.25, 5.15, 5],
      [5.85, 5.8, 5.7],
      [5.25, 5.2, 5.1],
      [5.65, 5.55, 5.45],
      [5.6, 5.35, 5.45],
      [5.05, 5, 4.95],
      [5.5, 5.5, 5.4],
      [5.45, 5.55, 5.5],
      [5.55, 5.55, 5.35],
      [5.45, 5.5, 5.55],
      [5.5, 5.45, 5.25],
      [5.65, 5.6, 5.4],
      [5.7, 5.65, 5.55],
      [6.3, 6.3, 6.25],
    ];
    const limit = friedman(times.map(midranks), 0);
    expect(limit?.chiSquare).toBeCloseTo(11.142857142857, 10);
    expect(limit?.p).toBeCloseTo(0.003805041, 8);
    expect(limit?.exact).toBe(false);
    expect(friedman(times.map(midranks))?.exact).toBe(true);
  });
});

// Smallest difference of rank sums, all pairs looked at, exact, at 5 % and 1 %. The table of Newell & MacFarlane, Journal of Food
// Science 52 (1987) 1721, is one lower at k = 3, n = 9, 11, 13, 15, 17 and 20, where its true chances are 5.2 to 6.2 %.
const rangeTable: [samples: number, tasters: number, five: number | null, one: number | null][] = [];

describe('criticalRankDifference agrees with the exact ranges', () => {
  it.each(rangeTable)('%i samples, %i tasters: %i at 5 %%, %i at 1 %%', (samples, tasters, five, one) => {
    expect(criticalRankDifference(tasters, samples, 0.05)).toEqual({ difference: five, exact: true });
    expect(criticalRankDifference(tasters, samples, 0.01)).toEqual({ difference: one, exact: true });
  });

  // q(0.05; k, ∞)·√(n·k(k + 1)/12), Basker 1988 (formula from memory, values computed).
  it.each([
    [5, 20, 27.3],
    [6, 20, 33.7],
    [8, 20, 47],
    [5, 50, 43.1],
    [4, 100, 46.9],
  ])('%i samples, %i tasters: the limit %f', (samples, tasters, limit) => {
    const { difference, exact } = criticalRankDifference(tasters, samples, 0.05);
    expect(exact).toBe(false);
    expect(Math.abs((difference ?? 0) - limit)).toBeLessThan(0.051);
  });
});
