import { describe, expect, it } from 'vitest';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { pricePerKg } from '#core/recipe/price-per-kg.ts';
import { roundFormula } from '#core/recipe/round-formula.ts';
import { scaleToStock } from '#core/recipe/scale-to-stock.ts';
import { fc } from '#tests/properties.ts';

const made = {
  base_mL: 800,
  volume_mL: 880,
  additions: [
    { name: 'raspberries', mass_g: 75 },
    { name: 'ginger', mass_g: 10 },
  ],
};

describe('scaleToStock(needed, have)', () => {
  it('names what runs out first', () => {
    expect(scaleToStock(made, { base_mL: 4000, additions: { raspberries: 300, ginger: 100 } })).toEqual({
      volume_mL: 3520,
      limiting: { name: 'raspberries' },
      uncounted: [],
    });
    expect(scaleToStock(made, { base_mL: 400, additions: { raspberries: 300, ginger: 100 } })).toMatchObject({
      volume_mL: 440,
      limiting: { base: true },
    });
  });
  it('names what nobody counted, and gives null when nothing was', () => {
    expect(scaleToStock(made, { base_mL: null, additions: { raspberries: 150 } })).toEqual({
      volume_mL: 1760,
      limiting: { name: 'raspberries' },
      uncounted: ['ginger'],
    });
    expect(scaleToStock(made, { base_mL: null, additions: {} })).toBeNull();
  });
  it('needs an ingredient that stands in twice twice', () => {
    const twice = { ...made, additions: [...made.additions, { name: 'ginger', mass_g: 10 }] };
    expect(scaleToStock(twice, { base_mL: null, additions: { ginger: 20 } })?.volume_mL).toBe(880);
  });
  it('gives nothing where nothing is left, and throws for a negative amount', () => {
    expect(scaleToStock(made, { base_mL: null, additions: { ginger: 0 } })?.volume_mL).toBe(0);
    expect(() => scaleToStock(made, { base_mL: -1, additions: {} })).toThrow(OutOfDomain);
  });
  it('never takes more than there is of anything (property)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e4, noNaN: true }),
        fc.double({ min: 0, max: 1e4, noNaN: true }),
        (base_mL, ginger) => {
          const found = scaleToStock(made, { base_mL, additions: { ginger, raspberries: 1e9 } });
          const share = (found?.volume_mL ?? 0) / made.volume_mL;
          expect(share * 800).toBeLessThanOrEqual(base_mL * (1 + 1e-9));
          expect(share * 10).toBeLessThanOrEqual(ginger * (1 + 1e-9) + 1e-9);
        },
      ),
    );
  });
});

describe('pricePerKg(price, composition)', () => {
  it('turns a price per litre by the density, and never says 0 for unknown', () => {
    // Apple juice of 11.8 °Bx weighs about 1.047 kg/L (USDA SR28: 248 g a cup, 1.048).
    const juice = { water_g: 88.24, sugars_g: 9.62, fibre_g: 0.2, protein_g: 0.1, fat_g: 0.13, ash_g: 0.24 };
    expect(pricePerKg({ price_per_kg: null, price_per_L: 2.096 }, juice)).toBeCloseTo(2, 1);
    expect(pricePerKg({ price_per_kg: 3, price_per_L: null }, null)).toBe(3);
    expect(pricePerKg({ price_per_kg: null, price_per_L: 2 }, null)).toBeNull();
    expect(pricePerKg({ price_per_kg: null, price_per_L: null }, juice)).toBeNull();
  });
});

describe('roundFormula with the owner’s own ingredients', () => {
  const scaled = (sugars_g: number | null) => ({
    base_mL: 1000,
    contents_mL: null,
    additions: [
      {
        ingredient: 'quince purée',
        mass_g: 100,
        state: 'fresh' as const,
        composition: { water_g: 84, sugars_g },
        measures: [{ unit: 'cup' as const, form: null, mass_g: 240 }],
      },
    ],
  });
  it('uses their measures and their sugar', () => {
    const rounded = roundFormula(scaled(10), { spoons: true });
    expect(rounded.additions[0]).toMatchObject({ spoons: { count: 0.5, unit: 'cup' }, rounded_g: 120 });
    expect(rounded.sugarChange_g_per_L).toBeCloseTo(2, 9);
  });
  it('does not know the sugar that rounding moves where nobody measured it', () => {
    expect(roundFormula(scaled(null), { spoons: true }).sugarChange_g_per_L).toBeNull();
  });
});
