import { describe, expect, it } from 'vitest';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { measuresOf } from '#renderer/format/use-measures.ts';
import { blendAdvice, diluteAdvice, sugarOfRow, sweetenAdvice } from '#renderer/pages/house-recipe/adjust-words.ts';
import type { PantryRow } from '#renderer/pages/house-recipe/known-additions.ts';
import { measuredFormula, spoonCount } from '#renderer/pages/house-recipe/measured-formula.ts';
import { lastReading, servingFigures } from '#renderer/pages/house-recipe/serving-figures.ts';
import { additionsOf, rowOf } from './small-pantry.ts';

const metric = measuresOf('metric');
const us = measuresOf('us');
const pantry: PantryRow[] = [
  rowOf('raspberries', { price_per_kg: 12 }),
  rowOf('apple juice', { price_per_L: 2 }),
  rowOf('blackcurrants'),
  rowOf('sugar'),
];
const row = (name: string) => pantry.find((one) => one.name === name) ?? rowOf(name);
const version = (...names: string[]) => ({
  base_mL: 1000,
  formula: { additions: additionsOf(names), days: 2, cover: null, temperature_C: null },
});
const base = { name: 'B', sugar_g_per_L: 40, price_per_L: 1 };

describe('a serving', () => {
  it('costs and holds what was put in; what is unknown is named and never 0', () => {
    const known = servingFigures(version('raspberries', 'apple juice'), 250, base, pantry);
    expect(known.missing).toEqual({ prices: [], sugars: [] });
    // 1 L of base at 1, 100 g raspberries at 12 a kg, 100 g juice at 2 a litre: 2.39 for about 1.19 L, a quarter litre of it about 0.50.
    expect(known.cost).toBeGreaterThan(0.48);
    expect(known.cost).toBeLessThan(0.52);
    const odd = servingFigures(version('blackcurrants'), 250, { ...base, price_per_L: null }, pantry);
    expect(odd).toMatchObject({
      cost: null,
      sugar_g: null,
      missing: { prices: ['B', 'blackcurrants'], sugars: ['blackcurrants'] },
    });
    const unknownBase = servingFigures(version('raspberries'), 250, { ...base, sugar_g_per_L: null }, pantry);
    expect(unknownBase.sugar_g).toBeNull();
  });
  it('knows a sugar that the owner filled in', () => {
    const filled = [rowOf('blackcurrants', { sugars_g: 6.6 })];
    expect(servingFigures(version('blackcurrants'), 250, base, filled).sugar_g).toBeGreaterThan(9);
  });
  it('takes the latest reading of sugar, and says when it is lighter than sugar can be', () => {
    const page = (label: string, readings: object[]) => ({ jar: { label }, readings }) as never;
    const read = (takenAt: string, brix: number | null, sg: number | null) => ({ takenAt, brix, sg });
    const latest = lastReading([
      page('A', [read('2026-05-02T08:00:00Z', 6, null), read('2026-05-05T08:00:00Z', null, null)]),
      page('B', [read('2026-05-03T08:00:00Z', 4, null)]),
    ]);
    // 4 °Bx at 20 °C hold 40.55 g/L (ICUMSA SPS-4: 1013.8 kg/m³).
    expect(latest).toMatchObject({ jar: 'B', sugar_g_per_L: expect.closeTo(40.55, 1) });
    expect(lastReading([page('A', [read('2026-05-02T08:00:00Z', null, 0.998)])])?.sugar_g_per_L).toBeNull();
    expect(lastReading([])).toBeNull();
  });
});

describe('adjusting a drink', () => {
  const drink = { volume_mL: 1000, now_g_per_L: 10, target_g_per_L: 30 };
  it('sweetens, dilutes and blends, each in the kitchen’s measures', () => {
    expect(sweetenAdvice(drink, row('sugar'), metric).words).toBe('Stir in 20 g of sugar; it then makes 1.01 L.');
    expect(diluteAdvice({ volume_mL: 1000, now_g_per_L: 50, target_g_per_L: 40 }, metric).words).toBe(
      'Add 250 mL of water; it then makes 1.25 L.',
    );
    expect(
      blendAdvice({ name: 'a', sugar_g_per_L: 80 }, { name: 'b', sugar_g_per_L: 20 }, 35, 1000, metric).words,
    ).toBe('Take 250 mL of a and 750 mL of b.');
  });
  it('refuses in a sentence of the kitchen’s own measures', () => {
    const strong = { volume_mL: 1000, now_g_per_L: 50, target_g_per_L: 60 };
    expect(diluteAdvice(strong, us)).toMatchObject({ isWorked: false, words: expect.stringContaining('oz/gal') });
    expect(sweetenAdvice(drink, row('blackcurrants'), metric)).toEqual({
      isWorked: false,
      words: expect.stringContaining('Nobody knows the sugar of blackcurrants'),
    });
    expect(sugarOfRow(row('blackcurrants'))).toBeNull();
  });
});

describe('what rounding changes', () => {
  it('says that it is unknown where the sugar is', () => {
    const rounded = measuredFormula(1000, additionsOf(['blackcurrants'], 10.4), 'five', metric, pantry);
    expect(rounded.sugarRemark).toContain('unknown: nobody knows the sugar of blackcurrants');
    expect(measuredFormula(1000, additionsOf(['blackcurrants'], 10), 'five', metric, pantry).sugarRemark).toBeNull();
  });
  it('writes spoons in quarters, as cooks do', () => {
    expect([0.25, 1, 1.5, 2.75].map(spoonCount)).toEqual(['1/4', '1', '1 1/2', '2 3/4']);
  });
});

it('the test’s own pantry is the built-in one', () => {
  expect(findIngredient('blackcurrants')?.composition.sugars_g).toBeNull();
});
