import type { FoodComposition } from '#core/ferment/food-composition.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import type { PantryMeasure } from '#core/pantry/pantry-ingredient.ts';
import { type Addition, ingredientName } from '#core/trial/formula.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

export type PantryRow = ValueOf<'pantry:list'>['ingredients'][number];

/** The pantry's row of an ingredient, whichever of its names was written. */
export function pantryRow(pantry: readonly PantryRow[], written: string): PantryRow | undefined {
  const plain = written.trim().toLowerCase();
  const known = findIngredient(written)?.name.toLowerCase();
  return pantry.find(({ name }) => name.toLowerCase() === plain) ?? pantry.find(({ name }) => name === known);
}

/** What 100 g of a row are made of; null where not even its water is known. */
export function compositionOfRow(row: PantryRow): FoodComposition | null {
  return row.water_g === null ? null : { ...row, water_g: row.water_g };
}

/** What this kitchen knows of an addition: the recipe's own figures, else the pantry's. */
export interface KnownAddition {
  readonly name: string;
  readonly row: PantryRow | undefined;
  readonly composition: FoodComposition | null;
  readonly measures: readonly PantryMeasure[] | undefined;
}

export function knownAddition({ ingredient }: Addition, pantry: readonly PantryRow[]): KnownAddition {
  const written = ingredientName(ingredient);
  const row = pantryRow(pantry, written);
  const composition = typeof ingredient === 'string' ? (row === undefined ? null : compositionOfRow(row)) : ingredient;
  return { name: row?.name ?? written, row, composition, measures: row?.measures };
}
