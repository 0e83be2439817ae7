import type { JarVessel } from '#core/ferment/jar-input.ts';

// What one jar holds and how it is kept. The same words serve a trial's jar and a house recipe.

/** Food composition per 100 g, when an ingredient is not in the pantry. `undefined` means unknown, never zero. */
export interface OwnIngredient {
  readonly name: string;
  readonly water_g: number;
  readonly sugars_g: number;
  readonly sucrose_g?: number | undefined;
  readonly glucose_g?: number | undefined;
  readonly fructose_g?: number | undefined;
  readonly fibre_g?: number | undefined;
  readonly protein_g?: number | undefined;
  readonly fat_g?: number | undefined;
  readonly ash_g?: number | undefined;
}

export const additionStates = ['fresh', 'frozen', 'liquid'] as const;
export type AdditionState = (typeof additionStates)[number];

export const covers = ['cloth', 'airlock', 'lid'] as const;
export type Cover = (typeof covers)[number];

/** Fruit, juice, herb or sweetener put into the base. */
export interface Addition {
  readonly ingredient: string | OwnIngredient;
  readonly mass_g: number;
  readonly state: AdditionState;
  readonly temperature_C?: number | undefined;
  /** The measure as the maker says it: "a handful", "peel of one". */
  readonly asWritten?: string | undefined;
  /** False when it is strained out before the end. */
  readonly leftIn?: boolean | undefined;
}

/** Everything that is held or moved for one jar. `null` where nobody said. */
export interface Formula {
  readonly additions: readonly Addition[];
  readonly days: number;
  readonly cover: Cover | null;
  readonly temperature_C: number | null;
}

export { type VesselKind, vesselKinds } from '#core/ferment/jar-input.ts';
export type Vessel = JarVessel;

/** The name a person knows an addition by. */
export function ingredientName(ingredient: Addition['ingredient']): string {
  return typeof ingredient === 'string' ? ingredient : ingredient.name;
}

export function totalMass_g(additions: readonly Addition[]): number {
  return additions.reduce((sum, addition) => sum + addition.mass_g, 0);
}
