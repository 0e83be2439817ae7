import type { FoodComposition } from '#core/ferment/food-composition.ts';
import { jarVolume_mL } from '#core/ferment/jar-volume.ts';
import { type Addition, ingredientName } from '#core/trial/formula.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

/** What a jar holds, by volume. */
export interface JarContents {
  readonly volume_mL: number;
  /** The room that pieces take: what is added fresh or frozen. */
  readonly pieces_mL: number;
  /** Ingredients whose room was taken as 1 mL for each gram, because nobody knows what they are made of. */
  readonly uncertain: readonly string[];
}

export type CompositionOf = (ingredient: Addition['ingredient']) => FoodComposition | null;

type PantryRow = ValueOf<'pantry:list'>['ingredients'][number];

/** Finds compositions among the pantry's rows, by name; an ingredient that brings its own is taken at its word. */
export function compositionsOf(pantry: readonly PantryRow[]): CompositionOf {
  const byName = new Map(pantry.map((row) => [row.name.toLowerCase(), row]));
  return (ingredient) => {
    if (typeof ingredient !== 'string') return ingredient;
    const row = byName.get(ingredient.trim().toLowerCase());
    return row === undefined || row.water_g === null ? null : { ...row, water_g: row.water_g };
  };
}

/** A row that sums to more than its own weight can't be; for a drawing it is as good as none. The pantry refuses it at its field. */
function isPossible({ water_g, sugars_g, fibre_g, protein_g, fat_g, ash_g }: FoodComposition): boolean {
  const parts = [water_g, sugars_g, fibre_g, protein_g, fat_g, ash_g].map((part) => part ?? 0);
  return parts.every((part) => part >= 0) && parts.reduce((sum, part) => sum + part, 0) <= 101;
}

function room_mL({ ingredient, mass_g }: Addition, compositionOf: CompositionOf): number | null {
  const composition = compositionOf(ingredient);
  return composition === null || !isPossible(composition) ? null : jarVolume_mL(0, [{ mass_g, composition }]);
}

/**
 * What a jar holds once its additions are in.
 *
 * @param base_mL what is poured on
 * @param compositionOf what an ingredient is made of; null when unknown
 */
export function jarContents(
  base_mL: number,
  additions: readonly Addition[],
  compositionOf: CompositionOf,
): JarContents {
  let volume_mL = base_mL;
  let pieces_mL = 0;
  const uncertain: string[] = [];
  for (const addition of additions) {
    const known = room_mL(addition, compositionOf);
    if (known === null) uncertain.push(ingredientName(addition.ingredient));
    const room = known ?? addition.mass_g;
    volume_mL += room;
    if (addition.state !== 'liquid') pieces_mL += room;
  }
  return { volume_mL, pieces_mL, uncertain };
}
