import { describe, expect, it } from 'vitest';
import { knownSugars } from '#core/ferment/known-sugars.ts';

describe('knownSugars', () => {
  it('counts sugar of unknown kind as sucrose', () => {
    expect(knownSugars({ water_g: 20, sugars_g: 60 })).toEqual({ hexose_g: 0, sucrose_g: 60 });
    // USDA SR28, molasses: 11.92 + 12.79 + 29.40 of 74.72.
    const molasses = knownSugars({
      water_g: 21.87,
      sugars_g: 74.72,
      glucose_g: 11.92,
      fructose_g: 12.79,
      sucrose_g: 29.4,
    });
    expect(molasses?.hexose_g).toBeCloseTo(24.71, 9);
    expect(molasses?.sucrose_g).toBeCloseTo(50.01, 9);
  });
  it('keeps to the printed total when the kinds overshoot it by rounding', () => {
    // USDA SR28, pomegranate juice: 6.28 + 6.37 = 12.65.
    const over = knownSugars({ water_g: 85, sugars_g: 12.6, glucose_g: 6.28, fructose_g: 6.37, sucrose_g: 0 });
    expect((over?.hexose_g ?? 0) + (over?.sucrose_g ?? 0)).toBeCloseTo(12.6, 12);
    expect(over?.sucrose_g).toBeCloseTo(0, 12);
  });
  it('adds the kinds up where the total is missing but all three are known', () => {
    // USDA SR28, wild blueberries, frozen: glucose 3.33, fructose 3.71, sucrose 0, no total.
    const wild = knownSugars({ water_g: 85.8, sugars_g: null, glucose_g: 3.33, fructose_g: 3.71, sucrose_g: 0 });
    expect(wild?.hexose_g).toBeCloseTo(7.04, 9);
  });
  it('is null when nobody measured them', () => {
    expect(knownSugars({ water_g: 82, sugars_g: null, glucose_g: 3 })).toBeNull();
  });
});
