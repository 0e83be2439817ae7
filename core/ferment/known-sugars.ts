import type { FoodComposition } from './food-composition.ts';

/** The sugars of a food by what yeast makes of them, grams per 100 g. */
export interface KnownSugars {
  /** Sucrose, and all sugar of unknown kind. */
  readonly sucrose_g: number;
  /** Glucose and fructose. */
  readonly hexose_g: number;
}

/**
 * A food's sugars split into hexoses and sucrose, or `null` when nobody measured them.
 *
 * Method: sugars whose kind is unknown count as sucrose (it gives most alcohol and gas). Where the kinds overshoot the printed total by
 * rounding, they are scaled to it; where the total is missing but all three kinds are known, their sum is the total.
 *
 * @example knownSugars({ water_g: 86, sugars_g: 9.85, glucose_g: 1.73, fructose_g: 2.12, sucrose_g: 5.99 }) // hexose 3.85, sucrose 6.00
 */
export function knownSugars(food: FoodComposition): KnownSugars | null {
  const { glucose_g, fructose_g, sucrose_g } = food;
  const hexose = (glucose_g ?? 0) + (fructose_g ?? 0);
  const kinds = hexose + (sucrose_g ?? 0);
  const allKinds = isNumber(glucose_g) && isNumber(fructose_g) && isNumber(sucrose_g);
  const total = food.sugars_g ?? (allKinds ? kinds : null);
  if (total === null) return null;
  const hexose_g = kinds > total ? (hexose * total) / kinds : hexose;
  return { hexose_g, sucrose_g: total - hexose_g };
}

function isNumber(value: number | null | undefined): value is number {
  return typeof value === 'number';
}
