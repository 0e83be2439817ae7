import { describe, expect, it } from 'vitest';
import { cardinalTemperatureModel, yeast } from '#core/ferment/cardinal-temperature-model.ts';
import { equivalentHours, yeastRate } from '#core/ferment/equivalent-hours.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';

describe('cardinal temperature model', () => {
  // A published numeric example of CTMI (Rosso et al. 1993): minimum 5, optimum 20, maximum 30 °C; read on a secondary page.
  it.each([
    [5, 0],
    [6, 0.02],
    [7, 0.07215686],
    [10, 0.33333333],
    [15, 0.8],
    [18, 0.96571429],
    [20, 1],
    [22, 0.96333333],
    [25, 0.76190476],
    [28, 0.37122807],
    [29, 0.19692308],
    [30, 0],
  ])('at %f °C is %f', (t, value) => {
    const found = cardinalTemperatureModel(t, { minimum_C: 5, optimum_C: 20, maximum_C: 30 });
    // The value at 6 °C is printed with two decimals only.
    expect(Math.abs(found - value)).toBeLessThan(t === 6 ? 0.005 : 1e-7);
  });
  // S. cerevisiae (2.8, 32.3, 45.4), computed apart from this code from Salvadó et al. (2011).
  it.each([
    [4, 0.0042],
    [15, 0.3458],
    [20, 0.5965],
    [25, 0.8302],
    [30, 0.9802],
    [40, 0.7016],
  ])('puts yeast at %f °C at %f of its best', (t, value) => {
    expect(Math.abs(cardinalTemperatureModel(t, yeast) - value)).toBeLessThan(0.0001);
  });
  it('has a Q10 from 15 to 25 °C of 2.23 to 2.63 over the genus’s minima', () => {
    const q10 = (minimum: number) => yeastRate(25, minimum) / yeastRate(15, minimum);
    expect(q10(1.3)).toBeCloseTo(2.23, 2);
    expect(q10(4.3)).toBeCloseTo(2.63, 2);
  });
  it('throws when the cardinal temperatures are out of order', () => {
    expect(() => cardinalTemperatureModel(20, { minimum_C: 5, optimum_C: 40, maximum_C: 30 })).toThrow(OutOfDomain);
  });
});

describe('equivalent hours', () => {
  it('makes 48 h at 20 °C worth 34.5 h at 25 °C', () => {
    // 48·0.5965/0.8302, from the same figures.
    expect(equivalentHours([{ hours: 48, temperature_C: 20 }], 25).middle).toBeCloseTo(34.49, 1);
  });
  it('is the hours themselves at the reference, whatever the minimum', () => {
    const log = [0, 10, 48].map((hours) => ({ hours, temperature_C: 22 }));
    const found = equivalentHours(log);
    for (const value of [found.low, found.middle, found.high]) expect(value).toBeCloseTo(48, 9);
  });
  it('adds up over a log that is cut in two', () => {
    const whole = equivalentHours([
      { hours: 0, temperature_C: 4 },
      { hours: 20, temperature_C: 24 },
    ]);
    const cut = equivalentHours([
      { hours: 0, temperature_C: 4 },
      { hours: 7, temperature_C: 11 },
      { hours: 20, temperature_C: 24 },
    ]);
    expect(cut.middle).toBeCloseTo(whole.middle, 2);
    expect(whole.low).toBeLessThan(whole.middle);
    expect(whole.middle).toBeLessThan(whole.high);
  });
  it('throws on an empty log, one that runs backwards, and a reference where nothing grows', () => {
    expect(() => equivalentHours([])).toThrow(OutOfDomain);
    expect(() =>
      equivalentHours([
        { hours: 5, temperature_C: 20 },
        { hours: 5, temperature_C: 21 },
      ]),
    ).toThrow(OutOfDomain);
    expect(() => equivalentHours([{ hours: 5, temperature_C: 20 }], 2)).toThrow(OutOfDomain);
  });
});
