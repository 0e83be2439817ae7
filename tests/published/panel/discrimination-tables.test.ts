import { describe, expect, it } from 'vitest';
import { discriminate } from '#core/panel/apart/discriminate.ts';
import { discriminationP, minimumCorrect } from '#core/panel/apart/minimum-correct.ts';
import type { DiscriminationMethod } from '#core/panel/apart/thurstone.ts';

type Row = readonly [trials: number, five: number | null, one: number | null, tenth: number | null];

// Fewest correct answers at 5 %, 1 % and 0.1 %.
// Triangle: FAO document v7180e, Appendix A (read), every printed row recomputed with exact rational binomials; equal to ISO 4120
// table A.1 (from memory).
const triangle: Row[] = [
  [5, 4, 5, null],
  [6, 5, 6, null],
  [7, 5, 6, 7],
  [8, 6, 7, 8],
  [9, 6, 7, 8],
  [10, 7, 8, 9],
  [11, 7, 8, 10],
  [12, 8, 9, 10],
  [13, 8, 9, 11],
  [14, 9, 10, 11],
  [15, 9, 10, 12],
  [16, 9, 11, 12],
  [17, 10, 11, 13],
  [18, 10, 12, 13],
  [19, 11, 12, 14],
  [20, 11, 13, 14],
  [21, 12, 13, 15],
  [22, 12, 14, 15],
  [23, 12, 14, 16],
  [24, 13, 15, 16],
  [25, 13, 15, 17],
  [26, 14, 15, 17],
  [27, 14, 16, 18],
  [28, 15, 16, 18],
  [29, 15, 17, 19],
  [30, 15, 17, 19],
  [31, 16, 18, 20],
  [32, 16, 18, 20],
  [33, 17, 18, 21],
  [34, 17, 19, 21],
  [35, 17, 19, 22],
  [36, 18, 20, 22],
  [37, 18, 20, 22],
  [38, 19, 21, 23],
  [39, 19, 21, 23],
  [40, 19, 21, 24],
  [41, 20, 22, 24],
  [42, 20, 22, 25],
  [43, 20, 23, 25],
  [44, 21, 23, 26],
  [45, 21, 24, 26],
  [46, 22, 24, 27],
  [47, 22, 24, 27],
  [48, 22, 25, 27],
  [49, 23, 25, 28],
  [50, 23, 26, 28],
  [51, 24, 26, 29],
  [52, 24, 26, 29],
  [53, 24, 27, 30],
  [54, 25, 27, 30],
  [55, 25, 28, 30],
  [56, 26, 28, 31],
  [57, 26, 28, 31],
  [58, 26, 29, 32],
  [59, 27, 29, 32],
  [60, 27, 30, 33],
];
// Duo-trio and directional paired: exact binomial; ISO 10399 and ISO 5495 tables (from memory).
const oneSided: Row[] = [
  [5, 5, null, null],
  [6, 6, null, null],
  [7, 7, 7, null],
  [8, 7, 8, null],
  [9, 8, 9, null],
  [10, 9, 10, 10],
  [11, 9, 10, 11],
  [12, 10, 11, 12],
  [13, 10, 12, 13],
  [14, 11, 12, 13],
  [15, 12, 13, 14],
  [16, 12, 14, 15],
  [17, 13, 14, 16],
  [18, 13, 15, 16],
  [19, 14, 15, 17],
  [20, 15, 16, 18],
  [21, 15, 17, 18],
  [22, 16, 17, 19],
  [23, 16, 18, 20],
  [24, 17, 19, 20],
  [25, 18, 19, 21],
  [26, 18, 20, 22],
  [27, 19, 20, 22],
  [28, 19, 21, 23],
  [29, 20, 22, 24],
  [30, 20, 22, 24],
  [31, 21, 23, 25],
  [32, 22, 24, 26],
  [33, 22, 24, 26],
  [34, 23, 25, 27],
  [35, 23, 25, 27],
  [36, 24, 26, 28],
  [37, 24, 27, 29],
  [38, 25, 27, 29],
  [39, 26, 28, 30],
  [40, 26, 28, 31],
  [41, 27, 29, 31],
  [42, 27, 29, 32],
  [43, 28, 30, 32],
  [44, 28, 31, 33],
  [45, 29, 31, 34],
  [46, 30, 32, 34],
  [47, 30, 32, 35],
  [48, 31, 33, 36],
  [49, 31, 34, 36],
  [50, 32, 34, 37],
  [51, 32, 35, 37],
  [52, 33, 35, 38],
  [53, 33, 36, 39],
  [54, 34, 36, 39],
  [55, 35, 37, 40],
  [56, 35, 38, 40],
  [57, 36, 38, 41],
  [58, 36, 39, 42],
  [59, 37, 39, 42],
  [60, 37, 40, 43],
];
// Paired preference, two-sided: exact binomial; ISO 5495 (from memory).
const twoSided: Row[] = [
  [6, 6, null, null],
  [7, 7, null, null],
  [8, 8, 8, null],
  [9, 8, 9, null],
  [10, 9, 10, null],
  [11, 10, 11, 11],
  [12, 10, 11, 12],
  [13, 11, 12, 13],
  [14, 12, 13, 14],
  [15, 12, 13, 14],
  [16, 13, 14, 15],
  [17, 13, 15, 16],
  [18, 14, 15, 17],
  [19, 15, 16, 17],
  [20, 15, 17, 18],
  [21, 16, 17, 19],
  [22, 17, 18, 19],
  [23, 17, 19, 20],
  [24, 18, 19, 21],
  [25, 18, 20, 21],
  [26, 19, 20, 22],
  [27, 20, 21, 23],
  [28, 20, 22, 23],
  [29, 21, 22, 24],
  [30, 21, 23, 25],
  [31, 22, 24, 25],
  [32, 23, 24, 26],
  [33, 23, 25, 27],
  [34, 24, 25, 27],
  [35, 24, 26, 28],
  [36, 25, 27, 29],
  [37, 25, 27, 29],
  [38, 26, 28, 30],
  [39, 27, 28, 31],
  [40, 27, 29, 31],
  [41, 28, 30, 32],
  [42, 28, 30, 32],
  [43, 29, 31, 33],
  [44, 29, 31, 34],
  [45, 30, 32, 34],
  [46, 31, 33, 35],
  [47, 31, 33, 36],
  [48, 32, 34, 36],
  [49, 32, 34, 37],
  [50, 33, 35, 37],
  [51, 33, 36, 38],
  [52, 34, 36, 39],
  [53, 35, 37, 39],
  [54, 35, 37, 40],
  [55, 36, 38, 41],
  [56, 36, 39, 41],
  [57, 37, 39, 42],
  [58, 37, 40, 42],
  [59, 38, 40, 43],
  [60, 39, 41, 44],
];

describe('minimumCorrect agrees with the published tables', () => {
  const tables: [DiscriminationMethod, Row[]][] = [
    ['triangle', triangle],
    ['duo-trio', oneSided],
    ['paired', oneSided],
    ['paired-two-sided', twoSided],
  ];
  it.each(tables)('%s, 5 or 6 to 60 trials, at 5, 1 and 0.1 %%', (method, rows) => {
    expect(rows.length).toBeGreaterThan(50);
    for (const [trials, ...fewest] of rows) {
      expect([trials, ...[0.05, 0.01, 0.001].map((alpha) => minimumCorrect(method, trials, alpha))]).toEqual([
        trials,
        ...fewest,
      ]);
    }
  });

  it('triangle with 100 trials needs 42, 46 and 49; duo-trio 59, 63 and 66', () => {
    const fewest = (method: DiscriminationMethod) =>
      [0.05, 0.01, 0.001].map((alpha) => minimumCorrect(method, 100, alpha));
    expect(fewest('triangle')).toEqual([42, 46, 49]);
    expect(fewest('duo-trio')).toEqual([59, 63, 66]);
  });
});

describe('discriminationP is the exact binomial', () => {
  // Exact rational binomials, computed for these checks.
  it('15 of 30 triangles right by guessing: 0.0434823; 14: 0.0897709', () => {
    expect(discriminationP('triangle', 15, 30)).toBeCloseTo(0.0434823, 7);
    expect(discriminationP('triangle', 14, 30)).toBeCloseTo(0.0897709, 7);
  });

  it('all of 10 duo-trios right by guessing: 1/1024 to the last digit', () => {
    expect(discriminationP('duo-trio', 10, 10)).toBeCloseTo(1 / 1024, 16);
  });

  it('two-sided doubles the tail and stops at 1', () => {
    expect(discriminationP('paired-two-sided', 9, 10)).toBeCloseTo(22 / 1024, 15);
    expect(discriminationP('paired-two-sided', 5, 10)).toBe(1);
  });
});

describe('discriminate', () => {
  it('is significant exactly from the fewest correct answers on', () => {
    for (const [trials, fewest] of triangle) {
      if (fewest === null) continue;
      expect(discriminate({ method: 'triangle', correct: fewest, trials }).significant).toBe(true);
      expect(discriminate({ method: 'triangle', correct: fewest - 1, trials }).significant).toBe(false);
    }
  });
});
