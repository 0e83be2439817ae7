import { findIngredient } from '#core/pantry/find-ingredient.ts';
import type { FoodComposition } from './food-composition.ts';
import { freezer_C, type JarAddition } from './jar-input.ts';

/** An addition with all that the pantry knows of it. */
export interface ResolvedAddition {
  readonly name: string;
  readonly mass_g: number;
  readonly state: JarAddition['state'];
  readonly temperature_C: number;
  readonly composition: FoodComposition;
  readonly freezingPoint_C: number | null;
  readonly allergens: readonly string[];
  readonly category: string | null;
}

/** The addition with its composition, or `null` when the pantry has no such name. */
export function resolveAddition(addition: JarAddition, ambient_C: number): ResolvedAddition | null {
  const { mass_g, state } = addition;
  const shared = {
    mass_g,
    state,
    temperature_C: addition.temperature_C ?? (state === 'frozen' ? freezer_C : ambient_C),
  };
  if (typeof addition.ingredient !== 'string') {
    const { name, allergens = [], kind = null, ...composition } = addition.ingredient;
    return { ...shared, name, composition, freezingPoint_C: null, allergens, category: kind };
  }
  const known = findIngredient(addition.ingredient);
  if (!known) return null;
  const { name, composition, freezingPoint_C, allergens, category } = known;
  return { ...shared, name, composition, freezingPoint_C, allergens, category };
}
