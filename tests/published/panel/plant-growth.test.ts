import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analysePanel } from '#core/panel/analyse.ts';

// Dried weight of plants, a control and two treatments (A. J. Dobson, An Introduction to Statistical Modelling, 1983; R's PlantGrowth).
// A one-way layout is a panel in which every taster scores once.
const weights: Record<string, number[]> = {
  ctrl: [4.17, 5.58, 5.18, 6.11, 4.5, 4.61, 5.17, 4.53, 5.33, 5.14],
  trt1: [4.81, 4.17, 4.41, 3.59, 5.87, 3.83, 6.03, 4.89, 4.32, 4.69],
  trt2: [6.31, 5.12, 5.54, 5.5, 5.37, 5.29, 4.92, 6.15, 5.8, 5.26],
};
const all = Object.entries(weights).flatMap(([sample, list]) =>
  list.map((score, index) => ({ taster: `${sample} ${index}`, sample, attribute: 'weight', score })),
);
const fixture: Record<'plants' | 'unequalPlants', { estimate: number[]; p: number[] }> = JSON.parse(
  readFileSync(new URL('./fixtures/dunnett.json', import.meta.url), 'utf8'),
);

describe('PlantGrowth', () => {
  const found = analysePanel({ scores: all, control: 'ctrl' }).attributes[0];

  it('F = 4.846088 on 2 and 27, p = 0.01590996 (R 4.2.2, aov)', () => {
    expect(found?.test?.f).toBeCloseTo(4.846088, 6);
    expect(found?.test?.dfError).toBeCloseTo(27, 8);
    expect(found?.test?.p).toBeCloseTo(0.01590996, 8);
  });

  it('Tukey: trt2 − trt1 = 0.865, 0.1737839 to 1.5562161, p 0.0120064 (R 4.2.2, TukeyHSD)', () => {
    const pair = found?.pairs?.find(({ a, b }) => a === 'trt1' && b === 'trt2');
    expect(pair?.difference).toBeCloseTo(-0.865, 12);
    expect(pair?.low).toBeCloseTo(-1.5562161, 6);
    expect(pair?.high).toBeCloseTo(-0.1737839, 6);
    expect(pair?.p).toBeCloseTo(0.0120064, 7);
    expect(found?.means.map(({ letters }) => letters)).toEqual(['ab', 'b', 'a']);
  });

  it('Dunnett: p as multcomp 1.4-22 integrates it (fixtures/dunnett.R)', () => {
    found?.versusControl?.forEach(({ difference, p }, index) => {
      expect(difference).toBeCloseTo(fixture.plants.estimate[index] ?? Number.NaN, 10);
      expect(Math.abs(p - (fixture.plants.p[index] ?? Number.NaN))).toBeLessThan(2e-6);
    });
    expect(found?.versusControl).toHaveLength(2);
  });

  it('Dunnett with unequal groups: the correlations are products, and so the p values hold', () => {
    // Rows 1, 2 and 25 taken out.
    const unequal = all.filter((_, index) => ![0, 1, 24].includes(index));
    const versus = analysePanel({ scores: unequal, control: 'ctrl' }).attributes[0]?.versusControl;
    versus?.forEach(({ difference, p }, index) => {
      expect(difference).toBeCloseTo(fixture.unequalPlants.estimate[index] ?? Number.NaN, 10);
      expect(Math.abs(p - (fixture.unequalPlants.p[index] ?? Number.NaN))).toBeLessThan(2e-6);
    });
    expect(versus).toHaveLength(2);
  });
});
