import { describe, expect, it } from 'vitest';
import { bestLevel } from '#core/panel/compare/best-level.ts';
import { productLoadings } from '#core/panel/compare/control-comparisons.ts';

describe('bestLevel', () => {
  const hill = { b1: 2, b2: -0.25, v11: 0.04, v12: -0.002, v22: 0.0004 };
  const t = 2.1;
  /** How far the slope at u is from zero, against its reach: 0 at the ends of Fieller's interval. */
  const excess = (parabola: typeof hill, u: number): number => {
    const { b1, b2, v11, v12, v22 } = parabola;
    return (b1 + 2 * b2 * u) ** 2 - t * t * (v11 + 4 * u * v12 + 4 * u * u * v22);
  };

  it('ends where a slope of zero can just be ruled out', () => {
    const best = bestLevel(hill, 0, 10, t);
    if ('code' in best) throw new Error(best.code);
    expect(best.level).toBe(4);
    expect(best.low).toBeLessThan(4);
    expect(best.high).toBeGreaterThan(4);
    expect(excess(hill, best.low ?? Number.NaN)).toBeCloseTo(0, 10);
    expect(excess(hill, best.high ?? Number.NaN)).toBeCloseTo(0, 10);
  });

  it('opens upwards where the bend is unclear but the rise at the start is not', () => {
    const unclear = { ...hill, v22: 0.02, v12: -0.02 };
    const best = bestLevel(unclear, 0, 10, t);
    if ('code' in best) throw new Error(best.code);
    expect(best.high).toBeNull();
    expect(excess(unclear, best.low ?? Number.NaN)).toBeCloseTo(0, 10);
    expect(best.low).toBeLessThan(4);
  });

  it('opens both ways where nothing is clear', () => {
    expect(bestLevel({ ...hill, v11: 4, v22: 0.5, v12: 0 }, 0, 10, t)).toEqual({ level: 4, low: null, high: null });
  });

  it.each([
    ['no-turning-point', { ...hill, b2: 0.1 }, 0, 10],
    ['no-turning-point', { ...hill, b2: 0 }, 0, 10],
    ['rising-at-end', hill, 0, 4],
    ['falling-from-start', hill, 4, 9],
  ] as const)('%s', (code, parabola, first, last) => {
    expect(bestLevel(parabola, first, last, t)).toEqual({ code });
  });
});

describe('productLoadings', () => {
  it('finds the loadings whose products the correlations are', () => {
    const loadings = [0.8, 0.5, 0.3, 0.6];
    const correlation = Float64Array.from({ length: 16 }, (_, place) => {
      const [i, j] = [Math.floor(place / 4), place % 4];
      return i === j ? 1 : (loadings[i] ?? 0) * (loadings[j] ?? 0);
    });
    productLoadings(correlation, 4).forEach((loading, index) => {
      expect(loading).toBeCloseTo(loadings[index] ?? Number.NaN, 10);
    });
    expect(productLoadings(Float64Array.of(1, 0.36, 0.36, 1), 2).map((value) => Number(value.toFixed(12)))).toEqual([
      0.6, 0.6,
    ]);
    expect(productLoadings(Float64Array.of(1), 1)).toEqual([0]);
  });
});
