import type { FoodComposition } from '#core/ferment/food-composition.ts';

export type PantryCategory =
  | 'fruit'
  | 'vegetable'
  | 'juice'
  | 'herb'
  | 'root'
  | 'spice'
  | 'sweetener'
  | 'tea'
  | 'grain';

/** What one household measure of an ingredient weighs. `form` is how it was cut or thawed; `null` when the table names none. */
export interface PantryMeasure {
  readonly unit: 'cup' | 'fl oz' | 'tbsp' | 'tsp' | 'each';
  readonly form: string | null;
  readonly mass_g: number;
}

/** One ingredient of the pantry: its names, what it is made of, what a cup of it weighs. */
export interface PantryIngredient {
  /** Our own short name. */
  readonly name: string;
  /** Other names it answers to; the first is the description in USDA SR. */
  readonly aliases: readonly string[];
  /** The nutrient database number of USDA SR. */
  readonly ndb: string;
  /** The FoodData Central id, where known. */
  readonly fdcId: number | null;
  readonly category: PantryCategory;
  /** A colour to draw it with, #rrggbb. */
  readonly colour: string;
  readonly composition: FoodComposition;
  readonly measures: readonly PantryMeasure[];
  /** The allergens of Regulation (EU) No 1169/2011, Annex II, that it brings. */
  readonly allergens: readonly string[];
  /** Where its water begins to freeze, where a handbook says so. */
  readonly freezingPoint_C: number | null;
  readonly source: string;
}
