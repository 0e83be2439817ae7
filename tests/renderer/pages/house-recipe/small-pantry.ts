import { findIngredient } from '#core/pantry/find-ingredient.ts';
import type { Addition } from '#core/trial/formula.ts';
import type { PantryRow } from '#renderer/pages/house-recipe/known-additions.ts';

/** A row of the pantry as the desk gives it, from the built-in table. */
export function rowOf(name: string, change: Partial<PantryRow> = {}): PantryRow {
  const found = findIngredient(name);
  if (found === undefined) throw new Error(`The pantry has no ${name}.`);
  const { composition: c } = found;
  return {
    id: null,
    revision: null,
    isSample: false,
    isBuiltIn: true,
    name,
    kind: found.category,
    water_g: c.water_g,
    sugars_g: c.sugars_g,
    sucrose_g: c.sucrose_g ?? null,
    glucose_g: c.glucose_g ?? null,
    fructose_g: c.fructose_g ?? null,
    fibre_g: c.fibre_g ?? null,
    protein_g: c.protein_g ?? null,
    fat_g: c.fat_g ?? null,
    ash_g: c.ash_g ?? null,
    allergens: [],
    source: found.source,
    ownFigures: [],
    ownSource: null,
    note: null,
    aliases: [...found.aliases],
    fdcId: found.fdcId,
    colour: found.colour,
    measures: found.measures.map((one) => ({ ...one })),
    onHand_g: null,
    stock: null,
    short_g: null,
    price_per_kg: null,
    price_per_L: null,
    ...change,
  };
}

export function additionsOf(names: readonly string[], mass_g = 100): Addition[] {
  return names.map((ingredient) => ({ ingredient, mass_g, state: 'fresh' }));
}
