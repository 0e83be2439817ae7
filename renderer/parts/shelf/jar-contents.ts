import type { FoodComposition } from '#core/ferment/food-composition.ts';
import { jarVolume_mL } from '#core/ferment/jar-volume.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
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

function room_mL(addition: Addition, compositionOf: CompositionOf): number | null {
  const composition = compositionOf(addition.ingredient);
  if (composition === null) return null;
  try {
    return jarVolume_mL(0, [{ mass_g: addition.mass_g, composition }]);
  } catch (error) {
    // A composition that can't be is as good as none for a drawing; the pantry is where it is refused.
    if (error instanceof OutOfDomain) return null;
    throw error;
  }
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
