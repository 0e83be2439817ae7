import { describe, expect, it } from 'vitest';
import { dunnettDistribution } from '#core/numeric/dunnett-distribution.ts';
import { analysePanel } from '#core/panel/analyse.ts';

// Bitterness of white wine, nine judges, eight bottles (J. H. Randall, Biometrical Journal 31 (1989) 781; the data set `wine` of the
// ordinal package). Two bottles for each of cold or warm, without or with contact; a judge's row runs through them in that order.
const bitterness = [
  [36, 48, 47, 67, 77, 60, 83, 90],
  [17, 22, 14, 50, 30, 51, 90, 70],
  [36, 50, 42, 23, 80, 81, 73, 62],
  [46, 27, 48, 32, 57, 37, 84, 58],
  [26, 45, 61, 41, 48, 41, 58, 55],
  [46, 30, 54, 37, 32, 60, 88, 73],
  [13, 19, 31, 29, 22, 43, 32, 49],
  [25, 32, 39, 40, 51, 45, 42, 67],
  [12, 29, 47, 28, 47, 38, 72, 65],
];
const cells = ['cold-no', 'cold-yes', 'warm-no', 'warm-yes'];

const asRepeats = bitterness.flatMap((row, judge) =>
  row.map((score, bottle) => ({
    taster: `judge ${judge + 1}`,
    sample: cells[Math.floor(bottle / 2)] ?? '',
    attribute: 'bitterness',
    score,
    jar: `bottle ${bottle + 1}`,
  })),
);
const averaged = bitterness.flatMap((row, judge) =>
  cells.map((sample, cell) => ({
    taster: `judge ${judge + 1}`,
    sample,
    attribute: 'bitterness',
    score: ((row[2 * cell] ?? 0) + (row[2 * cell + 1] ?? 0)) / 2,
  })),
);

describe('Randall’s wine: four cells, the average of the two bottles, judges as blocks', () => {
  // Block F computed with base R 4.2.2: 25.13808756 on 3 and 24 degrees of freedom, p = 1.39197e-7.
  it.each([
    ['as repeats', asRepeats],
    ['averaged', averaged],
  ])('%s', (_, scores) => {
    const found = analysePanel({ scores }).attributes[0];
    expect(found?.means.map(({ mean }) => Number(mean?.toFixed(4)))).toEqual([31.0556, 40.5556, 50, 67.2778]);
    expect(found?.test?.f).toBeCloseTo(25.13808756, 7);
    expect(found?.test?.dfSample).toBe(3);
    expect(found?.test?.dfError).toBeCloseTo(24, 7);
    expect((found?.test?.p ?? 0) / 1.39197185e-7).toBeCloseTo(1, 7);
  });

  it('as repeats and averaged agree on every difference and its interval', () => {
    const [one, other] = [asRepeats, averaged].map((scores) => analysePanel({ scores }).attributes[0]?.pairs ?? []);
    expect(one).toHaveLength(6);
    one?.forEach((pair, index) => {
      expect(pair.difference).toBeCloseTo(other?.[index]?.difference ?? Number.NaN, 9);
      expect(pair.p).toBeCloseTo(other?.[index]?.p ?? Number.NaN, 9);
      expect(pair.low).toBeCloseTo(other?.[index]?.low ?? Number.NaN, 7);
    });
  });

  it('three cells against the control: t on 24 degrees of freedom, correlations one half', () => {
    const found = analysePanel({ scores: averaged, control: 'cold-no' }).attributes[0];
    const distribution = dunnettDistribution([Math.SQRT1_2, Math.SQRT1_2, Math.SQRT1_2]);
    // The mean square of the judges by cells, by hand from the differences to the control.
    const cell = (judge: number, at: number): number => averaged[4 * judge + at]?.score ?? 0;
    const means = cells.map((_, at) => bitterness.reduce((sum, _row, judge) => sum + cell(judge, at), 0) / 9);
    const judgeMeans = bitterness.map((_, judge) => cells.reduce((sum, _cell, at) => sum + cell(judge, at), 0) / 4);
    const grand = means.reduce((sum, mean) => sum + mean, 0) / 4;
    let square = 0;
    bitterness.forEach((_, judge) => {
      cells.forEach((_cell, at) => {
        square += (cell(judge, at) - (means[at] ?? 0) - (judgeMeans[judge] ?? 0) + grand) ** 2 / 24;
      });
    });
    const error = Math.sqrt((2 * square) / 9);
    expect(found?.versusControl).toHaveLength(3);
    found?.versusControl?.forEach(({ difference, p, high }, index) => {
      expect(difference).toBeCloseTo((means[index + 1] ?? 0) - (means[0] ?? 0), 9);
      expect(Math.log(p / distribution.upperTail(difference / error, 24))).toBeCloseTo(0, 7);
      expect((high - difference) / error).toBeCloseTo(distribution.critical(0.05, 24), 7);
    });
  });

  it('bottles within cells: F of the means of the bottles, by hand', () => {
    const bottle = Array.from(
      { length: 8 },
      (_, index) => bitterness.reduce((sum, row) => sum + (row[index] ?? 0), 0) / 9,
    );
    const within = [0, 2, 4, 6].reduce((sum, at) => sum + ((bottle[at] ?? 0) - (bottle[at + 1] ?? 0)) ** 2 / 2, 0);
    const grand = bottle.reduce((sum, mean) => sum + mean, 0) / 8;
    const between = [0, 2, 4, 6].reduce(
      (sum, at) => sum + 2 * (((bottle[at] ?? 0) + (bottle[at + 1] ?? 0)) / 2 - grand) ** 2,
      0,
    );
    const jars = analysePanel({ scores: asRepeats }).attributes[0]?.jars;
    expect(jars).toMatchObject({ dfLevel: 3, dfJar: 4 });
    expect(jars?.f).toBeCloseTo(between / 3 / (within / 4), 9);
    // A score given twice changes no mean; a judge who left a bottle out is brought to the others' height first.
    const twice = [...asRepeats, ...asRepeats.slice(0, 5)];
    expect(analysePanel({ scores: twice }).attributes[0]?.jars?.f).toBeCloseTo(jars?.f ?? Number.NaN, 9);
    const raised = asRepeats
      .slice(1)
      .map((one) => (one.taster === 'judge 1' ? { ...one, score: one.score + 500 } : one));
    const holed = analysePanel({ scores: asRepeats.slice(1) }).attributes[0]?.jars?.f;
    expect(analysePanel({ scores: raised }).attributes[0]?.jars?.f).toBeCloseTo(holed ?? Number.NaN, 6);
  });
});
