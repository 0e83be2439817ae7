import { describe, expect, it } from 'vitest';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { units, usMeasure_mL } from '#core/units/unit-table.ts';

describe('US measures against NIST', () => {
  // NIST Special Publication 811 (2008), appendix B, seven digits, in mL.
  it.each([
    ['cup', 236.5882],
    ['tablespoon', 14.78676],
    ['teaspoon', 4.928922],
    ['fluidOunce', 29.57353],
    ['quart', 946.3529],
  ] as const)('a %s is %f mL', (name, printed) => {
    expect(Math.abs(usMeasure_mL[name] / printed - 1)).toBeLessThan(5e-7); // half a unit of the last printed digit
  });
  // NIST SP 430, Metric household measures, whole numbers as printed.
  it('rounds to the household figures 237, 473 and 946', () => {
    expect([usMeasure_mL.cup, usMeasure_mL.pint, usMeasure_mL.quart].map(Math.round)).toEqual([237, 473, 946]);
  });
  // NIST SP 811, appendix B: 1 lb = 453.59237 g (exact), 1 psi = 6.894757 kPa.
  it('has the pound and the psi of SP 811', () => {
    expect(units.lb.factor).toBe(453.59237);
    expect(Math.abs(units.psi.factor / 0.06894757 - 1)).toBeLessThan(1e-6);
  });
  // A cup of water weighs 237 g in USDA SR28 (brewed tea, 8 fl oz): the food table's cup is NIST's.
  it('agrees with the cup of the food table', () => {
    const cup = findIngredient('black tea')?.measures.find((one) => one.unit === 'cup');
    expect(Math.abs((cup?.mass_g ?? 0) - usMeasure_mL.cup)).toBeLessThan(0.5);
  });
});
