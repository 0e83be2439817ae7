import { describe, expect, it } from 'vitest';
import { factorChartData } from '#renderer/charts/factor-chart-data.ts';
import { factorChartFigures } from '#renderer/charts/factor-chart-figures.ts';
import { findings } from '../small-kitchen.ts';

const levels = ['2 days', '4 days'];

describe('factorChartData(findings, attribute, levels)', () => {
  it('keeps every score, each taster in a lane of their own beside the level', () => {
    const { rows, scores } = factorChartData(findings, 'tang', levels);
    const drawn = rows.filter(({ score }) => score !== null);
    expect(scores).toBe(4);
    expect(drawn.map(({ score }) => score).sort()).toEqual([3, 5, 6, 8]);
    const [ana, ben] = [3, 5].map((value) => drawn.find(({ score }) => score === value)?.x ?? Number.NaN);
    expect(ana).toBeLessThan(2);
    expect(ben).toBeGreaterThan(2);
    expect((ana ?? 0) + (ben ?? 0)).toBeCloseTo(4, 12);
  });

  it('puts ordered levels at their numbers and carries curve and band', () => {
    const data = factorChartData(findings, 'tang', levels);
    expect(data.isOrdered).toBe(true);
    expect(data.means.map(({ x, mean }) => [x, mean])).toEqual([
      [2, 4],
      [4, 7],
    ]);
    const curve = data.rows.filter(({ fit }) => fit !== null);
    expect(curve.map(({ band }) => band)).toEqual([[3.2, 4.8], null, [6.2, 7.8]]);
  });

  it('gives a mean’s interval as distances down and up', () => {
    const { rows } = factorChartData(findings, 'tang', levels);
    expect(rows.filter(({ mean }) => mean !== null).map(({ interval }) => interval)).toEqual([
      [1, 1],
      [1, 1],
    ]);
  });

  it('sets levels without numbers one step apart, in the trial’s order, without a curve', () => {
    const data = factorChartData({ ...findings, levels: null }, 'tang', ['4 days', '2 days']);
    expect(data.ticks).toEqual([
      { x: 0, label: '4 days' },
      { x: 1, label: '2 days' },
    ]);
    expect(data.hasCurve).toBe(false);
    expect(data.rows.every(({ fit }) => fit === null)).toBe(true);
  });

  it('takes the scale from the attribute, and from the scores where none is known', () => {
    expect(factorChartData(findings, 'tang', levels).yDomain).toEqual([0, 10]);
    expect(factorChartData({ ...findings, scales: {} }, 'tang', levels).yDomain).toEqual([3, 8]);
  });

  it('draws scores although nothing could be computed', () => {
    const data = factorChartData({ ...findings, analysis: null }, 'tang', levels);
    expect(data.means).toEqual([]);
    expect(data.rows).toHaveLength(4);
  });

  it('sorts the rows from left to right, as the curve needs', () => {
    const xs = factorChartData(findings, 'tang', levels).rows.map(({ x }) => x);
    expect(xs).toEqual([...xs].sort((a, b) => a - b));
  });
});

describe('factorChartFigures(data)', () => {
  it('gives a row for each level, and an empty cell for what is unknown', () => {
    const data = factorChartData(findings, 'tang', levels);
    const unsure = { ...data, means: data.means.map((mean) => ({ ...mean, low: null })) };
    expect(factorChartFigures(unsure).split('\n')).toEqual([
      'tang\tscores\tmean\tlow 95 %\thigh 95 %',
      '2 days\t2\t4\t\t5',
      '4 days\t2\t7\t\t8',
    ]);
  });
});
