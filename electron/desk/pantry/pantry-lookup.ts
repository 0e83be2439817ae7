import type { FoodComposition } from '#core/ferment/food-composition.ts';
import { jarVolume_mL } from '#core/ferment/jar-volume.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import type { JarVolume, JarVolumeOf } from '#core/trial/feasibility.ts';
import { type Addition, ingredientName } from '#core/trial/formula.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { compositionOf, ownOf, ownPantry } from './whole-pantry.ts';

/** What an ingredient is made of; null when neither the owner nor the built-in pantry knows. */
export type CompositionOf = (ingredient: Addition['ingredient']) => FoodComposition | null;

/** Looks ingredients up in the owner's pantry first, then in the one that comes with the program. */
export function compositionIn(kitchen: Kitchen): CompositionOf {
  const own = ownPantry(kitchen);
  return (ingredient) => {
    if (typeof ingredient !== 'string') return ingredient;
    const mine = ownOf(own, ingredient);
    if (mine !== undefined) return compositionOf(mine);
    return findIngredient(ingredient)?.composition ?? null;
  };
}

/** A jar's volume with its additions in; an ingredient of unknown make-up counts 1 mL a gram and is named as uncertain. */
export function jarVolumeIn(compositionOf: CompositionOf): JarVolumeOf {
  return (base_mL, additions): JarVolume => {
    const uncertain: string[] = [];
    const known = additions.flatMap((addition) => {
      const composition = compositionOf(addition.ingredient);
      if (composition !== null) return [{ mass_g: addition.mass_g, composition }];
      uncertain.push(ingredientName(addition.ingredient));
      return [];
    });
    const guessed_mL = additions
      .filter(({ ingredient }) => uncertain.includes(ingredientName(ingredient)))
      .reduce((sum, { mass_g }) => sum + mass_g, 0);
    return { volume_mL: jarVolume_mL(base_mL, known) + guessed_mL, uncertain };
  };
}
