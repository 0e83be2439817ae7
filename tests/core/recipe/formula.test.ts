import { describe, expect, it } from 'vitest';
import { jarVolume_mL } from '#core/ferment/jar-volume.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { differenceOfVersions } from '#core/recipe/difference-of-versions.ts';
import type { Formula } from '#core/recipe/formula.ts';
import { scaleFormula } from '#core/recipe/scale-formula.ts';

const first: Formula = {
  base: { name: 'water kefir', sugar_g_per_L: 40 },
  additions: [
    { ingredient: 'raspberries', amount_g_per_L: 80, state: 'fresh' },
    { ingredient: 'ginger', amount_g_per_L: 5, state: 'fresh', form: 'sliced' },
  ],
  days: 2,
  temperature_C: 22,
  cover: 'cloth',
};

describe('scaleFormula', () => {
  it('multiplies grams per litre by the litres of base', () => {
    const scaled = scaleFormula(first, { base_mL: 3000 });
    expect(scaled.additions.map((one) => one.mass_g)).toEqual([240, 15]);
  });
  it('leaves room for the fruit when the contents are wanted', () => {
    const scaled = scaleFormula(first, { contents_mL: 5000 });
    const foods = scaled.additions.map((one) => ({
      mass_g: one.mass_g,
      composition: findIngredient(one.ingredient)?.composition ?? { water_g: 0, sugars_g: null },
    }));
    expect(jarVolume_mL(scaled.base_mL, foods)).toBeCloseTo(5000, 6);
    expect(scaled.contents_mL).toBeCloseTo(5000, 6);
  });
  it('leaves the contents unknown when an ingredient is, and refuses to fill by them', () => {
    const odd: Formula = { ...first, additions: [{ ingredient: 'moon dust', amount_g_per_L: 1, state: 'fresh' }] };
    expect(scaleFormula(odd, { base_mL: 1000 }).contents_mL).toBeNull();
    expect(() => scaleFormula(odd, { contents_mL: 1000 })).toThrow(OutOfDomain);
  });
  it('throws on nothing, less than nothing or no number', () => {
    for (const base_mL of [0, -5, Number.NaN, 1e9]) expect(() => scaleFormula(first, { base_mL })).toThrow(OutOfDomain);
  });
});

describe('differenceOfVersions', () => {
  it('is empty for two equal versions', () => {
    expect(differenceOfVersions(first, structuredClone(first))).toEqual([]);
  });
  it('names each change with before, after and a sentence', () => {
    const second: Formula = {
      ...first,
      days: 3,
      additions: [
        { ingredient: 'raspberries', amount_g_per_L: 100, state: 'frozen' },
        { ingredient: 'mint', amount_g_per_L: 2, state: 'fresh' },
      ],
    };
    const found = differenceOfVersions(first, second);
    expect(found.map((one) => [one.kind, one.field, one.before, one.after])).toEqual([
      ['changed', 'addition.amount', 80, 100],
      ['changed', 'addition.state', 'fresh', 'frozen'],
      ['added', 'addition', null, 2],
      ['removed', 'addition', 5, null],
      ['changed', 'days', 2, 3],
    ]);
    expect(found[0]?.sentence).toBe('raspberries: 80 g/L became 100 g/L (+25 %).');
  });
  it('keeps the same fruit in two states apart', () => {
    const two: Formula = {
      ...first,
      additions: [
        { ingredient: 'mango', amount_g_per_L: 50, state: 'fresh' },
        { ingredient: 'mango', amount_g_per_L: 30, state: 'frozen' },
      ],
    };
    const swapped: Formula = { ...two, additions: two.additions.toReversed() };
    expect(differenceOfVersions(two, swapped)).toEqual([]);
  });
});
