import { describe, expect, it } from 'vitest';
import { seededRandom } from '#core/numeric/seeded-random.ts';
import { cellTable, type ScoreColumns } from '#core/panel/model/cell-table.ts';
import { countPatterns } from '#core/panel/model/count-patterns.ts';
import { fitPanel } from '#core/panel/model/fit-panel.ts';
import { estimableTerms, fitMixedModel } from '#core/panel/model/mixed-model.ts';
import { restrictedLikelihood } from '#core/panel/model/restricted-likelihood.ts';
import { freeMeans } from '#core/panel/model/sample-design.ts';

const random = seededRandom(31);

/** A complete panel with true differences between tasters and, where repeated, between cells. */
function completePanel(tasters: number, samples: number, repeats: number): ScoreColumns {
  const scores = tasters * samples * repeats;
  const own = Array.from({ length: tasters }, () => 5 * random.uniform());
  const cell = Array.from({ length: tasters * samples }, () => 3 * random.uniform());
  const taster = Int32Array.from({ length: scores }, (_, index) => Math.floor(index / (samples * repeats)));
  const sample = Int32Array.from({ length: scores }, (_, index) => Math.floor(index / repeats) % samples);
  const score = Float64Array.from({ length: scores }, (_, index) => {
    const [t = 0, s = 0] = [taster[index], sample[index]];
    return (own[t] ?? 0) + s / 2 + (repeats > 1 ? (cell[t * samples + s] ?? 0) : 0) + random.uniform();
  });
  return { tasters, samples, taster, sample, score };
}

/** The classical F by hand: samples against taster × sample. */
function blockF({ tasters, samples, taster, sample, score }: ScoreColumns): number {
  const repeats = score.length / (tasters * samples);
  const cell = new Array<number>(tasters * samples).fill(0);
  score.forEach((value, index) => {
    const place = (taster[index] ?? 0) * samples + (sample[index] ?? 0);
    cell[place] = (cell[place] ?? 0) + value / repeats;
  });
  const mean = (chosen: (place: number) => boolean): number => {
    const values = cell.filter((_, place) => chosen(place));
    return values.reduce((sum, value) => sum + value, 0) / values.length;
  };
  const grand = mean(() => true);
  const byTaster = Array.from({ length: tasters }, (_, t) => mean((place) => Math.floor(place / samples) === t));
  const bySample = Array.from({ length: samples }, (_, s) => mean((place) => place % samples === s));
  const between = bySample.reduce((sum, value) => sum + (value - grand) ** 2, 0) * tasters;
  let rest = 0;
  cell.forEach((value, place) => {
    rest += (value - (byTaster[Math.floor(place / samples)] ?? 0) - (bySample[place % samples] ?? 0) + grand) ** 2;
  });
  return between / (rest / (tasters - 1));
}

describe('fitPanel', () => {
  it.each([
    [5, 3, 1],
    [12, 8, 1],
    [6, 4, 2],
    [30, 5, 3],
    [200, 10, 2],
  ])('%i tasters, %i samples, %i repeats, complete: the block F to 1e-9', (tasters, samples, repeats) => {
    const panel = completePanel(tasters, samples, repeats);
    const fit = fitPanel(panel);
    expect(fit?.model.ratios.taster).toBeGreaterThan(0);
    expect(Math.abs((fit?.test?.f ?? 0) / blockF(panel) - 1)).toBeLessThan(1e-9);
    expect(Math.abs((fit?.test?.dfError ?? 0) / ((tasters - 1) * (samples - 1)) - 1)).toBeLessThan(1e-7);
  });

  it('finds the highest likelihood: no point of a fine grid lies above it, on sixty odd panels and three large ones', () => {
    const grid = [0, 1e-4, 1e-3, ...Array.from({ length: 16 }, (_, step) => 0.004 * 1.8 ** step)];
    for (let round = 0; round < 63; round += 1) {
      const [tasters, samples] = round < 60 ? [3 + random.below(8), 2 + random.below(4)] : [300, 8];
      const scores = tasters * samples + random.below(2 * tasters * samples);
      const height = 4 * random.uniform() * random.below(2);
      const own = Array.from({ length: tasters }, () => height * random.uniform());
      const taster = Int32Array.from({ length: scores }, () => random.below(tasters));
      const sample = Int32Array.from({ length: scores }, (_, index) =>
        index < samples ? index : random.below(samples),
      );
      const score = Float64Array.from(
        taster,
        (t, index) => (own[t] ?? 0) + 2 * random.uniform() + ((t * 7 + (sample[index] ?? 0) * 5) % 3) * 0.3,
      );
      const cells = cellTable({ tasters, samples, taster, sample, score });
      const model = fitMixedModel(cells, freeMeans(samples));
      if (model === null) throw new Error('the panel must be fitted');
      const innerSquares = cells.inner.reduce((sum, inner) => sum + inner, 0);
      const data = {
        cells,
        patterns: countPatterns(cells),
        design: freeMeans(samples),
        innerSquares,
        residualDf: scores - samples,
      };
      const deviance = (a: number, b: number) => restrictedLikelihood(data, a, b, 'none').deviance;
      const found = deviance(model.ratios.taster, model.ratios.interaction);
      const terms = estimableTerms(cells);
      const step = round < 60 ? 1 : 3;
      for (let i = 0; i < grid.length; i += step) {
        for (let j = 0; j < grid.length; j += step) {
          const a = terms.taster ? (grid[i] ?? 0) : 0;
          const b = terms.interaction ? (grid[j] ?? 0) : 0;
          expect(deviance(a, b)).toBeGreaterThan(found - 1e-8);
        }
      }
    }
  });

  it('does not mind tasters who scored one sample only, nor groups of samples that share no taster', () => {
    const apart = fitPanel({
      tasters: 6,
      samples: 4,
      taster: Int32Array.of(0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5),
      sample: Int32Array.of(0, 1, 0, 1, 0, 1, 2, 3, 2, 3, 3),
      score: Float64Array.of(3, 5, 4, 7, 2, 5, 8, 6, 9, 5, 6),
    });
    expect(apart?.test?.dfSample).toBe(3);
    expect(Number.isFinite(apart?.test?.f)).toBe(true);
  });
});
