import { describe, expect, it } from 'vitest';
import { leastSquares } from '#core/numeric/least-squares.ts';
import { oneWayTest } from '#core/numeric/one-way-test.ts';
import { analysePanel } from '#core/panel/analyse.ts';

// NIST Statistical Reference Datasets (StRD), analysis of variance and linear regression, certified values (read).

const relative = (value: number, certified: number): number => Math.abs(value / certified - 1);

const siliconResistivity = [
  [196.3052, 196.124, 196.189, 196.2569, 196.3403],
  [196.3042, 196.3825, 196.1669, 196.3257, 196.0422],
  [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
  [196.2795, 196.1748, 196.1494, 196.1485, 195.9885],
  [196.2119, 196.1051, 196.185, 196.0052, 196.209],
];
const silverAtomicWeight = [
  [
    107.8681568, 107.8681465, 107.8681572, 107.8681785, 107.8681446, 107.8681903, 107.8681526, 107.8681494, 107.8681616,
    107.8681587, 107.8681519, 107.8681486, 107.8681419, 107.8681569, 107.8681508, 107.8681672, 107.8681385, 107.8681518,
    107.8681662, 107.8681424, 107.868136, 107.8681333, 107.868161, 107.8681477,
  ],
  [
    107.8681079, 107.8681344, 107.8681513, 107.8681197, 107.8681604, 107.8681385, 107.8681642, 107.8681365, 107.8681151,
    107.8681082, 107.8681517, 107.8681448, 107.8681198, 107.8681482, 107.8681334, 107.8681609, 107.8681101, 107.8681512,
    107.8681469, 107.868136, 107.8681254, 107.8681261, 107.868145, 107.8681368,
  ],
];
/** Simon & Lesage: nine groups, each its centre and then ten times a tenth below and above it. */
const simonLesage = (base: number) =>
  [4, 3, 5, 3, 5, 3, 5, 3, 5].map((tenths) =>
    Array.from({ length: 21 }, (_, index) => {
      const value = tenths + (index === 0 ? 0 : index % 2 === 1 ? -1 : 1);
      return Number(`${base}.${value}`);
    }),
  );

describe('oneWayTest reaches the certified F of NIST StRD', () => {
  const sets: [string, number[][], number, number, number, number][] = [
    ['SiRstv', siliconResistivity, 4, 20, 1.18046237440255, 1e-11],
    ['SmLs01', simonLesage(1), 8, 180, 21, 1e-11],
    ['AtmWtAg', silverAtomicWeight, 1, 46, 15.946733567793, 1e-8],
    ['SmLs04', simonLesage(1_000_000), 8, 180, 21, 1e-8],
  ];
  it.each(sets)('%s', (_, groups, dfBetween, dfWithin, f, tolerance) => {
    const test = oneWayTest(groups);
    expect([test?.dfBetween, test?.dfWithin]).toEqual([dfBetween, dfWithin]);
    expect(relative(test?.f ?? 0, f)).toBeLessThan(tolerance);
  });

  it.each(sets)('%s as a panel in which everyone scores once', (_, groups, dfBetween, dfWithin, f, tolerance) => {
    const scores = groups.flatMap((group, g) =>
      group.map((score, index) => ({ taster: `${g}-${index}`, sample: `${g}`, attribute: 'a', score })),
    );
    const test = analysePanel({ scores }).attributes[0]?.test;
    expect(test?.dfSample).toBe(dfBetween);
    expect(relative(test?.dfError ?? 0, dfWithin)).toBeLessThan(1e-9);
    expect(relative(test?.f ?? 0, f)).toBeLessThan(tolerance);
  });

  it('SiRstv: certified sums of squares', () => {
    const test = oneWayTest(siliconResistivity);
    expect(relative(test?.between ?? 0, 5.11462616e-2)).toBeLessThan(1e-10);
    expect(relative(test?.within ?? 0, 2.1663656e-1)).toBeLessThan(1e-10);
  });
});

const norris: [number, number][] = [
  [0.1, 0.2],
  [338.8, 337.4],
  [118.1, 118.2],
  [888.0, 884.6],
  [9.2, 10.1],
  [228.1, 226.5],
  [668.5, 666.3],
  [998.5, 996.3],
  [449.1, 448.6],
  [778.9, 777.0],
  [559.2, 558.2],
  [0.3, 0.4],
  [0.1, 0.6],
  [778.1, 775.5],
  [668.8, 666.9],
  [339.3, 338.0],
  [448.9, 447.5],
  [10.8, 11.6],
  [557.7, 556.0],
  [228.3, 228.1],
  [998.0, 995.8],
  [888.8, 887.6],
  [119.6, 120.2],
  [0.3, 0.3],
  [0.6, 0.3],
  [557.6, 556.8],
  [339.3, 339.1],
  [888.0, 887.2],
  [998.5, 999.0],
  [778.9, 779.0],
  [10.2, 11.1],
  [117.6, 118.3],
  [228.9, 229.2],
  [668.4, 669.1],
  [449.2, 448.9],
  [0.2, 0.5],
];
const longley: number[][] = [
  [60323, 83.0, 234289, 2356, 1590, 107608, 1947],
  [61122, 88.5, 259426, 2325, 1456, 108632, 1948],
  [60171, 88.2, 258054, 3682, 1616, 109773, 1949],
  [61187, 89.5, 284599, 3351, 1650, 110929, 1950],
  [63221, 96.2, 328975, 2099, 3099, 112075, 1951],
  [63639, 98.1, 346999, 1932, 3594, 113270, 1952],
  [64989, 99.0, 365385, 1870, 3547, 115094, 1953],
  [63761, 100.0, 363112, 3578, 3350, 116219, 1954],
  [66019, 101.2, 397469, 2904, 3048, 117388, 1955],
  [67857, 104.6, 419180, 2822, 2857, 118734, 1956],
  [68169, 108.4, 442769, 2936, 2798, 120445, 1957],
  [66513, 110.8, 444546, 4681, 2637, 121950, 1958],
  [68655, 112.6, 482704, 3813, 2552, 123366, 1959],
  [69564, 114.2, 502601, 3931, 2514, 125368, 1960],
  [69331, 115.7, 518173, 4806, 2572, 127852, 1961],
  [70551, 116.9, 554894, 4007, 2827, 130081, 1962],
];

describe('leastSquares reaches the certified coefficients of NIST StRD', () => {
  it('Norris', () => {
    const fit = leastSquares(
      norris.map(([, x]) => [1, x]),
      norris.map(([y]) => y),
    );
    [-0.262323073774029, 1.00211681802045].forEach((certified, k) => {
      expect(relative(fit.coefficients[k] ?? 0, certified)).toBeLessThan(1e-10);
    });
    [0.232818234301152, 0.429796848199937e-3].forEach((certified, k) => {
      expect(relative(fit.standardErrors[k] ?? 0, certified)).toBeLessThan(1e-10);
    });
    expect(relative(fit.residualSd, 0.884796396144373)).toBeLessThan(1e-10);
    expect(relative(fit.rSquared, 0.999993745883712)).toBeLessThan(1e-12);
  });

  it('Longley', () => {
    const fit = leastSquares(
      longley.map(([, ...x]) => [1, ...x]),
      longley.map(([y = 0]) => y),
    );
    const certified = [
      [-3482258.63459582, 890420.383607373],
      [15.0618722713733, 84.9149257747669],
      [-0.035819179292591, 0.0334910077722432],
      [-2.02022980381683, 0.488399681651699],
      [-1.03322686717359, 0.214274163161675],
      [-0.0511041056535807, 0.22607320006937],
      [1829.15146461355, 455.478499142212],
    ];
    certified.forEach(([coefficient = 0, error = 0], k) => {
      expect(relative(fit.coefficients[k] ?? 0, coefficient)).toBeLessThan(1e-9);
      expect(relative(fit.standardErrors[k] ?? 0, error)).toBeLessThan(1e-9);
    });
    expect(relative(fit.residualSd, 304.854073561965)).toBeLessThan(1e-9);
    expect(relative(fit.rSquared, 0.995479004577296)).toBeLessThan(1e-11);
  });
});
