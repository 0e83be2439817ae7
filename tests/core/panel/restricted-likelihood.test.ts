import { describe, expect, it } from 'vitest';
import { seededRandom } from '#core/numeric/seeded-random.ts';
import { cellTable } from '#core/panel/model/cell-table.ts';
import { countPatterns } from '#core/panel/model/count-patterns.ts';
import { type LikelihoodData, restrictedLikelihood } from '#core/panel/model/restricted-likelihood.ts';
import { freeMeans, polynomialMeans } from '#core/panel/model/sample-design.ts';

const random = seededRandom(12);
const scores = Array.from({ length: 70 }, () => ({ t: random.below(7), s: random.below(4), y: 10 * random.uniform() }));
const cells = cellTable({
  tasters: 7,
  samples: 4,
  taster: Int32Array.from(scores, ({ t }) => t),
  sample: Int32Array.from(scores, ({ s }) => s),
  score: Float64Array.from(scores, ({ y }) => y),
});

describe.each([
  ['a mean for each sample', freeMeans(4)],
  ['a parabola', polynomialMeans(Float64Array.of(-2, -1, 1, 3), 2)],
])('restrictedLikelihood, %s', (_, design) => {
  const data: LikelihoodData = {
    cells,
    patterns: countPatterns(cells),
    design,
    innerSquares: cells.inner.reduce((sum, inner) => sum + inner, 0),
    residualDf: 70 - design.columns,
  };
  const at = (a: number, b: number) => restrictedLikelihood(data, a, b, 'both');

  it('first and second derivatives agree with differences', () => {
    const h = 1e-5;
    const [a, b] = [0.4, 0.25];
    const middle = at(a, b).derivatives;
    const steps: [number, number][] = [
      [h, 0],
      [0, h],
    ];
    steps.forEach(([da, db], k) => {
      const up = at(a + da, b + db);
      const down = at(a - da, b - db);
      expect((up.logDeterminants - down.logDeterminants) / (2 * h)).toBeCloseTo(
        middle?.logGradient[k] ?? Number.NaN,
        5,
      );
      expect((up.squares - down.squares) / (2 * h)).toBeCloseTo(middle?.squaresGradient[k] ?? Number.NaN, 4);
      for (const l of [0, 1]) {
        const log = ((up.derivatives?.logGradient[l] ?? 0) - (down.derivatives?.logGradient[l] ?? 0)) / (2 * h);
        const squares =
          ((up.derivatives?.squaresGradient[l] ?? 0) - (down.derivatives?.squaresGradient[l] ?? 0)) / (2 * h);
        expect(log).toBeCloseTo(middle?.logHessian[k + l] ?? Number.NaN, 4);
        expect(squares).toBeCloseTo(middle?.squaresHessian[k + l] ?? Number.NaN, 3);
      }
    });
  });

  it('without variances between tasters is ordinary least squares', () => {
    const fit = at(0, 0);
    const mean = (s: number): number => {
      let fitted = 0;
      for (let k = 0; k < design.columns; k += 1) {
        fitted += (design.rows[s * design.columns + k] ?? 0) * (fit.coefficients[k] ?? 0);
      }
      return fitted;
    };
    expect(fit.squares).toBeCloseTo(
      scores.reduce((sum, { s, y }) => sum + (y - mean(s)) ** 2, 0),
      8,
    );
  });
});
