import { describe, expect, it } from 'vitest';
import { choleskyFactor, choleskyInverse, choleskyLogDeterminant, choleskySolve } from '#core/numeric/cholesky.ts';
import { dunnettDistribution } from '#core/numeric/dunnett-distribution.ts';
import { fUpperTail } from '#core/numeric/f-distribution.ts';
import { findRoot } from '#core/numeric/find-root.ts';
import { gaussLegendre, integrate } from '#core/numeric/gauss-legendre.ts';
import { incompleteBeta } from '#core/numeric/incomplete-beta.ts';
import { interpolatedTail } from '#core/numeric/interpolated-tail.ts';
import { leastSquares } from '#core/numeric/least-squares.ts';
import { normalBelow } from '#core/numeric/normal-distribution.ts';
import { studentizedRange } from '#core/numeric/studentized-range.ts';
import { symmetricEigen } from '#core/numeric/symmetric-eigen.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';

describe('Cholesky and eigenvalues', () => {
  const matrix = Float64Array.of(4, 2, 0.6, 2, 5, 1, 0.6, 1, 3);
  const factor = choleskyFactor(matrix, 3);
  if (factor === null) throw new Error('the matrix is positive definite');

  it('solve, invert and know the determinant', () => {
    const x = choleskySolve(factor, 3, Float64Array.of(1, 2, 3));
    const back = [0, 1, 2].map((i) => [0, 1, 2].reduce((sum, j) => sum + (matrix[3 * i + j] ?? 0) * (x[j] ?? 0), 0));
    [1, 2, 3].forEach((value, i) => {
      expect(back[i]).toBeCloseTo(value, 14);
    });
    expect(Math.exp(choleskyLogDeterminant(factor, 3))).toBeCloseTo(4 * 14 - 2 * (6 - 0.6) + 0.6 * (2 - 3), 12);
    const inverse = choleskyInverse(factor, 3);
    const unit = [0, 1, 2].reduce((sum, j) => sum + (matrix[3 + j] ?? 0) * (inverse[3 * j + 1] ?? 0), 0);
    expect(unit).toBeCloseTo(1, 14);
  });

  it('a matrix that is not positive definite has no factor', () => {
    expect(choleskyFactor(Float64Array.of(1, 2, 2, 1), 2)).toBeNull();
  });

  it('eigenvectors are turned into themselves, eigenvalues fall', () => {
    const { values, vectors } = symmetricEigen(matrix, 3);
    vectors.forEach((vector, k) => {
      for (let i = 0; i < 3; i += 1) {
        const turned = [0, 1, 2].reduce((sum, j) => sum + (matrix[3 * i + j] ?? 0) * (vector[j] ?? 0), 0);
        expect(turned).toBeCloseTo((values[k] ?? 0) * (vector[i] ?? 0), 13);
      }
    });
    expect([...values].toSorted((one, other) => other - one)).toEqual([...values]);
  });
});

describe('roots and integrals', () => {
  it('findRoot finds √2, and refuses ends of one sign', () => {
    expect(findRoot((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 12);
    expect(findRoot((x) => Math.exp(x) - 1e-8, -50, 50)).toBeCloseTo(Math.log(1e-8), 9);
    expect(() => findRoot((x) => x * x + 1, -1, 1)).toThrow(OutOfDomain);
  });

  it('gaussLegendre(n) integrates a polynomial of degree 2n − 1 exactly', () => {
    for (const count of [1, 2, 3, 8, 80]) {
      const rule = gaussLegendre(count);
      const degree = 2 * count - 1;
      expect(integrate((x) => (degree + 1) * x ** degree, 0, 1, rule)).toBeCloseTo(1, 12);
    }
    expect(() => gaussLegendre(0)).toThrow(OutOfDomain);
  });

  it('interpolatedTail is the tail itself to 1e-11 of it', () => {
    const direct = (x: number): number => 2 * normalBelow(-x);
    const quick = interpolatedTail(direct);
    for (let x = 0; x < 30; x += 0.37) expect(Math.abs(quick(x) / direct(x) - 1)).toBeLessThan(1e-11);
  });
});

describe('outside their domain, leaves throw', () => {
  it.each([
    ['incompleteBeta', () => incompleteBeta(1.5, -0.5, 1, 1)],
    ['incompleteBeta', () => incompleteBeta(0.5, 0.5, 0, 1)],
    ['fUpperTail', () => fUpperTail(-1, 1, 1)],
    ['fUpperTail', () => fUpperTail(Number.NaN, 1, 1)],
    ['studentizedRange', () => studentizedRange(1)],
    ['studentizedRange', () => studentizedRange(3).upperTail(-1, 5)],
    ['studentizedRange', () => studentizedRange(3).critical(0, 5)],
    ['dunnettDistribution', () => dunnettDistribution([1])],
    [
      'leastSquares',
      () =>
        leastSquares(
          [
            [1, 2],
            [2, 4],
            [3, 6],
          ],
          [1, 2, 3],
        ),
    ],
    ['leastSquares', () => leastSquares([[1]], [1])],
  ])('%s', (_, call) => {
    expect(call).toThrow(OutOfDomain);
  });
});
