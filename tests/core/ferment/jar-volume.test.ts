import { describe, expect, it } from 'vitest';
import { foodDensity_kg_per_m3 } from '#core/ferment/food-density.ts';
import { jarVolume_mL } from '#core/ferment/jar-volume.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { pantryTable } from '#core/pantry/pantry-table.ts';
import { fc } from '#tests/properties.ts';

describe('foodDensity_kg_per_m3', () => {
  // Choi and Okos (1986) at 20 °C, each component alone, computed from the printed coefficients.
  it.each([
    ['water', { water_g: 100, sugars_g: 0 }, 995.74],
    ['protein', { water_g: 0, sugars_g: 0, protein_g: 100 }, 1319.53],
    ['fat', { water_g: 0, sugars_g: 0, fat_g: 100 }, 917.24],
    ['carbohydrate', { water_g: 0, sugars_g: 100 }, 1592.89],
    ['fibre', { water_g: 0, sugars_g: 0, fibre_g: 100 }, 1304.18],
    ['ash', { water_g: 0, sugars_g: 0, ash_g: 100 }, 2418.19],
  ])('gives pure %s its own density', (_name, food, density) => {
    expect(foodDensity_kg_per_m3(food)).toBeCloseTo(density, 1);
  });
  it('puts every pantry ingredient between oil and ash', () => {
    for (const row of pantryTable) {
      const density = foodDensity_kg_per_m3(row.composition);
      expect(density, row.name).toBeGreaterThan(990);
      expect(density, row.name).toBeLessThan(1610);
    }
  });
  it('throws when a row sums to more than 100 g, or is not a number', () => {
    expect(() => foodDensity_kg_per_m3({ water_g: 80, sugars_g: 30 })).toThrow(OutOfDomain);
    expect(() => foodDensity_kg_per_m3({ water_g: Number.NaN, sugars_g: 30 })).toThrow(OutOfDomain);
  });
});

describe('jarVolume_mL', () => {
  it('is the base alone when nothing is added', () => {
    expect(jarVolume_mL(850, [])).toBe(850);
  });
  it('throws on a negative base or mass', () => {
    expect(() => jarVolume_mL(-1, [])).toThrow(OutOfDomain);
    expect(() => jarVolume_mL(1, [{ mass_g: -1, composition: { water_g: 100, sugars_g: 0 } }])).toThrow(OutOfDomain);
  });
  it('grows with each addition and does not care for their order', () => {
    const food = fc.record({
      mass_g: fc.double({ min: 0, max: 500, noNaN: true }),
      composition: fc.record({ water_g: fc.double({ min: 20, max: 90, noNaN: true }), sugars_g: fc.constant(10) }),
    });
    fc.assert(
      fc.property(fc.array(food, { maxLength: 6 }), (foods) => {
        const volume = jarVolume_mL(800, foods);
        expect(volume).toBeGreaterThanOrEqual(800);
        expect(jarVolume_mL(800, foods.toReversed())).toBeCloseTo(volume, 8);
      }),
    );
  });
});
