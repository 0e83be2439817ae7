import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { studentizedRange } from '#core/numeric/studentized-range.ts';
import { productLoadings } from '#core/panel/compare/control-comparisons.ts';
import { pairComparisons } from '#core/panel/compare/pair-comparisons.ts';
import { cellTable } from '#core/panel/model/cell-table.ts';
import { fitCells } from '#core/panel/model/fit-panel.ts';
import { fitMixedModel } from '#core/panel/model/mixed-model.ts';
import { polynomialMeans } from '#core/panel/model/sample-design.ts';
import { coefficientCovariance, satterthwaite } from '#core/panel/model/satterthwaite.ts';

type Line = [estimate: number, error: number, df: number, p: number];
interface Panel {
  taster: number[];
  sample: number[];
  score: number[];
  f: number;
  df1: number;
  df2: number;
  p: number;
  varTaster: number;
  varInteraction: number | null;
  varError: number;
  remlCriterion: number;
  means: [estimate: number, error: number, df: number][];
  pairs: [a: number, b: number, estimate: number, error: number, df: number, p: number][];
  linear: Line;
  quadratic: Line;
}
// Twenty invented panels with holes and repeats, fitted by lmerTest 3.1-3 with default settings: fixtures/mixed-panels.R.
const panels: Panel[] = JSON.parse(readFileSync(new URL('./fixtures/mixed-panels.json', import.meta.url), 'utf8'));

const relative = (value: number | undefined, expected: number): number =>
  Math.abs((value ?? Number.NaN) / expected - 1);

function cellsOf(panel: Panel) {
  return cellTable({
    tasters: Math.max(...panel.taster),
    samples: Math.max(...panel.sample),
    taster: Int32Array.from(panel.taster, (taster) => taster - 1),
    sample: Int32Array.from(panel.sample, (sample) => sample - 1),
    score: Float64Array.from(panel.score),
  });
}

describe.each(panels.map((panel, index) => [index + 1, panel] as const))('invented panel %i', (_, panel) => {
  const cells = cellsOf(panel);
  const fit = fitCells(cells);
  if (fit === null) throw new Error('the panel must be fitted');
  const { model, spread, test } = fit;

  it('F within 2e-4, degrees of freedom within 1e-3, and a restricted likelihood never below', () => {
    expect(test?.dfSample).toBe(panel.df1);
    expect(relative(test?.f, panel.f)).toBeLessThan(2e-4);
    expect(relative(test?.dfError, panel.df2)).toBeLessThan(1e-3);
    expect(Math.abs(Math.log((test?.p ?? 0) / panel.p))).toBeLessThan(2e-3);
    expect(model.criterion).toBeLessThanOrEqual(panel.remlCriterion + 1e-9);
  });

  it('variances', () => {
    const close = (value: number, expected: number) =>
      expect(Math.abs(value - expected)).toBeLessThan(2e-3 * panel.varError);
    close(model.errorVariance, panel.varError);
    close(model.ratios.taster * model.errorVariance, panel.varTaster);
    expect(model.tasterBySample === null).toBe(panel.varInteraction === null);
    close(model.tasterBySample ?? 0, panel.varInteraction ?? 0);
  });

  it('means and pairs, each with its own error and degrees of freedom', () => {
    panel.means.forEach(([estimate, error, df], sample) => {
      const l = new Float64Array(cells.samples);
      l[sample] = 1;
      const contrast = satterthwaite(model, spread, l);
      expect(relative(contrast.estimate, estimate)).toBeLessThan(1e-4);
      expect(relative(Math.sqrt(contrast.variance), error)).toBeLessThan(2e-4);
      expect(relative(contrast.df, df)).toBeLessThan(1e-3);
    });
    const pairs = pairComparisons(model, spread, studentizedRange(cells.samples), 0.05);
    panel.pairs.forEach(([a, b, estimate, , , p], index) => {
      const pair = pairs[index];
      expect([pair?.a, pair?.b]).toEqual([a - 1, b - 1]);
      expect(Math.abs((pair?.difference ?? Number.NaN) - estimate)).toBeLessThan(1e-4);
      expect(Math.abs((pair?.p ?? Number.NaN) - p)).toBeLessThan(1e-4);
      expect((pair?.low ?? 0) * (pair?.high ?? 0) > 0).toBe((pair?.p ?? 1) < 0.05);
    });
  });

  it('Dunnett’s product correlations are close to the true ones', () => {
    const size = cells.samples - 1;
    const covariance = (i: number, j: number): number => spread.covariance[i * cells.samples + j] ?? 0;
    const between = (i: number, j: number): number =>
      covariance(i, j) - covariance(i, 0) - covariance(0, j) + covariance(0, 0);
    const correlation = Float64Array.from({ length: size * size }, (_unused, place) => {
      const [i, j] = [Math.floor(place / size) + 1, (place % size) + 1];
      return between(i, j) / Math.sqrt(between(i, i) * between(j, j));
    });
    const loadings = productLoadings(correlation, size);
    correlation.forEach((value, place) => {
      const [i, j] = [Math.floor(place / size), place % size];
      if (i !== j) expect(Math.abs(value - (loadings[i] ?? 0) * (loadings[j] ?? 0))).toBeLessThan(0.014);
    });
  });

  it('line and parabola through the levels', () => {
    const levels = Float64Array.from({ length: cells.samples }, (_unused, sample) => 1.5 * (sample + 1));
    for (const [degree, expected] of [
      [1, panel.linear],
      [2, panel.quadratic],
    ] as const) {
      const curve = fitMixedModel(cells, polynomialMeans(levels, degree));
      const around = curve === null ? null : coefficientCovariance(curve);
      if (curve === null || around === null) throw new Error('the curve must be fitted');
      const l = new Float64Array(degree + 1);
      l[degree] = 1;
      const contrast = satterthwaite(curve, around, l);
      expect(Math.abs(contrast.estimate - expected[0])).toBeLessThan(1e-5);
      expect(relative(Math.sqrt(contrast.variance), expected[1])).toBeLessThan(2e-4);
      expect(relative(contrast.df, expected[2])).toBeLessThan(1e-3);
    }
  });
});
