import { describe, expect, it } from 'vitest';
import { compositionsOf, jarContents } from '#renderer/parts/shelf/jar-contents.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

type Ingredient = ValueOf<'pantry:list'>['ingredients'][number];

function row(name: string, water_g: number | null, sugars_g: number | null): Ingredient {
  const unknown = {
    sucrose_g: null,
    glucose_g: null,
    fructose_g: null,
    fibre_g: null,
    protein_g: null,
    fat_g: null,
    ash_g: null,
  };
  return {
    id: null,
    revision: null,
    isSample: false,
    isBuiltIn: true,
    name,
    kind: 'fruit',
    water_g,
    sugars_g,
    ...unknown,
    allergens: [],
    source: null,
    ownFigures: [],
    ownSource: null,
    aliases: [],
    fdcId: null,
    colour: null,
    measures: [],
    onHand_g: null,
    stock: null,
    short_g: null,
    price_per_kg: null,
    price_per_L: null,
    note: null,
  };
}

const compositionOf = compositionsOf([row('water', 100, 0), row('mystery', null, null), row('impossible', 90, 40)]);

describe('jarContents(base, additions, compositionOf)', () => {
  it('adds the room of what is weighed in', () => {
    // 100 g of water at 20 °C take 100.18 mL at 998.2 kg/m³ (CRC Handbook, density of water); the food model is within 1 %.
    const { volume_mL, pieces_mL } = jarContents(
      800,
      [{ ingredient: 'Water', mass_g: 100, state: 'fresh' }],
      compositionOf,
    );
    expect(Math.abs(volume_mL - 900.18)).toBeLessThan(1);
    expect(pieces_mL).toBeCloseTo(volume_mL - 800, 9);
  });

  it('counts liquids as drink, not as pieces', () => {
    expect(jarContents(800, [{ ingredient: 'water', mass_g: 50, state: 'liquid' }], compositionOf).pieces_mL).toBe(0);
  });

  it('takes 1 mL for each gram and says so, where nobody knows or the row can’t be', () => {
    const additions = ['mystery', 'never heard of', 'impossible'].map((ingredient) => ({
      ingredient,
      mass_g: 30,
      state: 'fresh' as const,
    }));
    const { volume_mL, uncertain } = jarContents(100, additions, compositionOf);
    expect(volume_mL).toBe(190);
    expect(uncertain).toEqual(['mystery', 'never heard of', 'impossible']);
  });
});
