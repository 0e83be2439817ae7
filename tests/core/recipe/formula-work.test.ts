import { describe, expect, it } from 'vitest';
import { jarVolume_mL } from '#core/ferment/jar-volume.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { dilute } from '#core/recipe/dilute.ts';
import type { Formula } from '#core/recipe/formula.ts';
import { pearsonSquare } from '#core/recipe/pearson-square.ts';
import { roundFormula } from '#core/recipe/round-formula.ts';
import { scaleFormula } from '#core/recipe/scale-formula.ts';
import { serving } from '#core/recipe/serving.ts';
import { sweeten } from '#core/recipe/sweeten.ts';
import { fc } from '#tests/properties.ts';

function composition(name: string) {
  const found = findIngredient(name);
  if (!found) throw new Error(name);
  return found.composition;
}
const formula: Formula = {
  base: { name: 'water kefir', sugar_g_per_L: 20 },
  additions: [
    { ingredient: 'raspberries', amount_g_per_L: 83, state: 'fresh' },
    { ingredient: 'sugar', amount_g_per_L: 9, state: 'fresh' },
  ],
  days: 2,
  temperature_C: 22,
  cover: 'lid',
};

describe('sweeten', () => {
  it('reaches the target it was asked for, the sweetener’s own volume counted', () => {
    const amount = fc.double({ min: 0, max: 60, noNaN: true });
    fc.assert(
      fc.property(amount, amount, fc.constantFrom('sugar', 'honey', 'maple syrup'), (a, b, name) => {
        const drink = { volume_mL: 1500, sugar_g_per_L: Math.min(a, b) };
        const found = sweeten(drink, Math.max(a, b), composition(name));
        if (!found.ok) throw new Error(found.message);
        const { mass_g, volume_mL } = found.value;
        expect(volume_mL).toBeCloseTo(jarVolume_mL(1500, [{ mass_g, composition: composition(name) }]), 8);
        const sugar_g = 1.5 * drink.sugar_g_per_L + (mass_g * (composition(name).sugars_g ?? 0)) / 100;
        expect((1000 * sugar_g) / volume_mL).toBeCloseTo(Math.max(a, b), 6);
      }),
    );
  });
  it('says why it cannot: too sweet already, beyond the sweetener, sugar unknown', () => {
    const drink = { volume_mL: 1000, sugar_g_per_L: 50 };
    expect(sweeten(drink, 40, composition('sugar'))).toMatchObject({ ok: false, code: 'target-out-of-reach' });
    expect(sweeten(drink, 150, composition('apple juice'))).toMatchObject({ ok: false, code: 'target-out-of-reach' });
    expect(sweeten(drink, 60, composition('elderberries'))).toMatchObject({ ok: false, code: 'sugar-unknown' });
    expect(() => sweeten({ volume_mL: -1, sugar_g_per_L: 5 }, 10, composition('sugar'))).toThrow(OutOfDomain);
  });
});

describe('dilute', () => {
  it('takes 250 mL of water to bring a litre from 50 to 40', () => {
    expect(dilute({ volume_mL: 1000, strength: 50 }, 40)).toEqual({
      ok: true,
      value: { water_mL: 250, volume_mL: 1250 },
    });
  });
  it('says why it cannot strengthen, nor reach nothing', () => {
    expect(dilute({ volume_mL: 1000, strength: 50 }, 60).ok).toBe(false);
    expect(dilute({ volume_mL: 1000, strength: 50 }, 0).ok).toBe(false);
    expect(dilute({ volume_mL: 1000, strength: 0 }, 0)).toMatchObject({ ok: true, value: { water_mL: 0 } });
  });
});

describe('pearsonSquare', () => {
  it('blends to the target from either side', () => {
    const any = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(any, any, fc.double({ min: 0, max: 1, noNaN: true }), (a, b, share) => {
        const target = Math.min(Math.max(a, b), Math.max(Math.min(a, b), share * a + (1 - share) * b));
        const found = pearsonSquare(a, b, target);
        if (!found.ok) throw new Error(found.message);
        const { firstShare } = found.value;
        expect(firstShare * a + (1 - firstShare) * b).toBeCloseTo(target, 9);
      }),
    );
  });
  it('refuses a target outside the two, and throws on no number', () => {
    expect(pearsonSquare(80, 20, 90).ok).toBe(false);
    expect(() => pearsonSquare(80, Number.NaN, 50)).toThrow(OutOfDomain);
  });
});

describe('roundFormula', () => {
  const scaled = scaleFormula(formula, { base_mL: 1500 });
  it('rounds to the scale’s step and says what that changed', () => {
    const found = roundFormula(scaled, { scaleStep_g: 5 });
    expect(found.additions.map((one) => [one.exact_g, one.rounded_g])).toEqual([
      [124.5, 125],
      [13.5, 15],
    ]);
    expect(found.additions[1]?.change_pct).toBeCloseTo(100 / 9, 9);
    expect(found.sugarChange_g_per_L).toBeCloseTo((0.5 * 0.0442 + 1.5 * 0.998) / 1.5, 9);
  });
  it('rounds to spoons by the food table', () => {
    // USDA SR28: a teaspoon of sugar weighs 4.2 g, a cup of raspberries 123 g.
    const found = roundFormula(scaled, { spoons: true });
    expect(found.additions[0]).toMatchObject({ spoons: { count: 1, unit: 'cup' }, rounded_g: 123 });
    expect(found.additions[1]).toMatchObject({ spoons: { count: 3.25, unit: 'tsp' } });
    expect(found.additions[1]?.rounded_g).toBeCloseTo(13.65, 9);
  });
  it('never drops an ingredient by rounding it to nothing', () => {
    const pinch: Formula = { ...formula, additions: [{ ingredient: 'ginger', amount_g_per_L: 0.1, state: 'fresh' }] };
    const found = roundFormula(scaleFormula(pinch, { base_mL: 1000 }), { scaleStep_g: 1 });
    expect(found.additions[0]?.rounded_g).toBe(1);
  });
  it('weighs what the table has no spoon for, and leaves an unknown sugar unknown', () => {
    const odd: Formula = { ...formula, additions: [{ ingredient: 'moon dust', amount_g_per_L: 3.4, state: 'fresh' }] };
    const found = roundFormula(scaleFormula(odd, { base_mL: 1000 }), { spoons: true });
    expect(found.additions[0]).toMatchObject({ spoons: null, rounded_g: 3 });
    expect(found.sugarChange_g_per_L).toBeNull();
  });
  it('throws on a scale without a step', () => {
    expect(() => roundFormula(scaled, { scaleStep_g: 0 })).toThrow(OutOfDomain);
  });
});

describe('serving', () => {
  it('shares cost and sugar over what a litre of base gives', () => {
    const found = serving(formula, 250, { base_per_L: 0.8, per_kg: { raspberries: 12, sugar: 1.2 } });
    const volume = jarVolume_mL(1000, [
      { mass_g: 83, composition: composition('raspberries') },
      { mass_g: 9, composition: composition('sugar') },
    ]);
    expect(found.cost).toBeCloseTo(((0.8 + 0.083 * 12 + 0.009 * 1.2) * 250) / volume, 9);
    expect(found.sugar_g).toBeCloseTo(((20 + 83 * 0.0442 + 9 * 0.998) * 250) / volume, 9);
  });
  it('names what is missing instead of counting it as nothing', () => {
    const odd: Formula = {
      ...formula,
      additions: [{ ingredient: 'blackcurrants', amount_g_per_L: 50, state: 'fresh' }],
    };
    const found = serving(odd, 250, { per_kg: {} });
    expect(found).toMatchObject({
      cost: null,
      sugar_g: null,
      missing: { prices: ['water kefir', 'blackcurrants'], sugars: ['blackcurrants'] },
    });
  });
  it('throws on a serving of nothing or a negative price', () => {
    expect(() => serving(formula, 0, { per_kg: {} })).toThrow(OutOfDomain);
    expect(() => serving(formula, 250, { base_per_L: -1, per_kg: {} })).toThrow(OutOfDomain);
  });
});
