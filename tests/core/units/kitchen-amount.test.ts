import { describe, expect, it } from 'vitest';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { pantryTable } from '#core/pantry/pantry-table.ts';
import { kitchenAmount } from '#core/units/kitchen-amount.ts';

function mass_g(text: string, name: string): number | string {
  const read = kitchenAmount(text, name);
  return read.ok ? read.value.mass_g : read.problem.code;
}

describe('kitchenAmount', () => {
  // USDA SR28, household measures.
  it.each([
    ['1 cup sliced', 'strawberries', 166],
    ['1 cup whole', 'strawberries', 144],
    ['1/2 cup mashed', 'strawberries', 116],
    ['1 cup, thawed', 'strawberries, frozen', 221],
    ['1 cup, unthawed', 'strawberries, frozen', 149],
    ['1 cup', 'sugar', 200],
    ['1 tsp', 'sugar', 4.2],
    ['1 tbsp', 'honey', 21],
    ['1 cup', 'raspberries, frozen', 140],
    ['2 cups of raspberries', 'raspberries', 246],
    ['75 g', 'anything at all', 75],
  ])('weighs %s of %s as %f g', (text, name, grams) => {
    expect(mass_g(text, name)).toBeCloseTo(grams, 6);
  });
  it('scales a measure the table lacks by volume', () => {
    expect(mass_g('1 tbsp', 'raspberries')).toBeCloseTo(123 / 16, 6);
  });
  it('asks which form when the table has several and none was said', () => {
    expect(mass_g('1 cup', 'strawberries')).toBe('form-missing');
    expect(mass_g('1 cup pickled', 'strawberries')).toBe('form-unknown');
  });
  it('refuses a cup of an ingredient it does not know', () => {
    const read = kitchenAmount('1 cup', 'moon cheese');
    expect(read).toMatchObject({
      ok: false,
      problem: { code: 'ingredient-unknown', message: expect.stringContaining('grams') },
    });
  });
  it('refuses a cup where no weight is known', () => {
    expect(mass_g('1 cup', 'figs')).toBe('measure-unknown');
    expect(mass_g('3 °C', 'figs')).toBe('wrong-kind');
  });
});

describe('findIngredient', () => {
  it('answers to the short name, the description in USDA SR and a singular', () => {
    expect(findIngredient('Strawberries, frozen, unsweetened')?.name).toBe('strawberries, frozen');
    expect(findIngredient('  STRAWBERRIES,frozen ')?.name).toBe('strawberries, frozen');
    expect(findIngredient('raspberry')?.name).toBe('raspberries');
    expect(findIngredient('gooseberries')).toBeUndefined();
  });
  it('finds every row of the table under each of its names', () => {
    for (const row of pantryTable) {
      for (const name of [row.name, ...row.aliases]) expect(findIngredient(name), name).toBe(row);
    }
  });
});

describe('pantryTable', () => {
  it('has at least 65 ingredients, each with its own name and number', () => {
    expect(pantryTable.length).toBeGreaterThanOrEqual(65);
    expect(new Set(pantryTable.map((row) => row.name)).size).toBe(pantryTable.length);
    expect(new Set(pantryTable.map((row) => row.ndb)).size).toBe(pantryTable.length);
  });
  it('adds up to no more than 100 g in any row', () => {
    for (const { name, composition: food } of pantryTable) {
      const known = [food.water_g, food.protein_g, food.fat_g, food.ash_g, food.sugars_g].map((value) => value ?? 0);
      const sum = known.reduce((a, b) => a + b, 0);
      expect(sum, name).toBeLessThanOrEqual(101);
      expect(sum, name).toBeGreaterThan(15);
    }
  });
  it('leaves what nobody measured unknown: blackcurrants have no sugar value', () => {
    expect(findIngredient('Currants, european black, raw')?.composition.sugars_g).toBeNull();
    expect(findIngredient('elderberries')?.composition.sugars_g).toBeNull();
  });
  it('draws each in a colour of its own kind', () => {
    for (const row of pantryTable) expect(row.colour, row.name).toMatch(/^#[0-9a-f]{6}$/);
  });
});
