import type { FoodComposition } from './food-composition.ts';
import type { OwnJarIngredient } from './jar-input.ts';

/** A row of somebody's pantry: what is in it, and more that is no gram. */
export interface OwnRow extends Omit<FoodComposition, 'water_g'> {
  readonly name: string;
  readonly kind: string;
  readonly allergens: readonly string[];
  readonly water_g: number | null;
}

/**
 * A pantry row as an ingredient of a jar, or `null` when nobody has said how much water it holds: then its volume can't be known.
 *
 * Takes the composition alone: a row's other numbers, such as its edition, are no grams.
 *
 * @example ownJarIngredient({ ...row, water_g: null }) // null
 */
export function ownJarIngredient(row: OwnRow): OwnJarIngredient | null {
  const { name, kind, allergens, water_g, sugars_g, sucrose_g, glucose_g, fructose_g } = row;
  const { fibre_g, protein_g, fat_g, ash_g } = row;
  if (water_g === null) return null;
  const sugars = { sugars_g, sucrose_g, glucose_g, fructose_g };
  return { name, kind, allergens, water_g, ...sugars, fibre_g, protein_g, fat_g, ash_g };
}
