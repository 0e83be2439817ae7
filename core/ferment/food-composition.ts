import { OutOfDomain } from '#core/out-of-domain.ts';

/** What a food is made of, grams per 100 g. `null` or absent: nobody has measured it, which is not zero. */
export interface FoodComposition {
  readonly water_g: number;
  readonly sugars_g: number | null;
  readonly sucrose_g?: number | null | undefined;
  readonly glucose_g?: number | null | undefined;
  readonly fructose_g?: number | null | undefined;
  readonly fibre_g?: number | null | undefined;
  readonly protein_g?: number | null | undefined;
  readonly fat_g?: number | null | undefined;
  readonly ash_g?: number | null | undefined;
}

/** A food as six fractions by mass that sum to one. */
export interface FoodFractions {
  readonly water: number;
  readonly protein: number;
  readonly fat: number;
  readonly carbohydrate: number;
  readonly fibre: number;
  readonly ash: number;
}

/** How far the printed rows of a food table may overshoot 100 g through rounding. */
const rounding_g = 1;

/**
 * A food's fractions by mass, carbohydrate by difference.
 *
 * Method: carbohydrate (sugars, starch, acids) is what is left of 100 g after water, protein, fat, fibre and ash; fibre is counted once.
 * An unmeasured protein, fat, fibre or ash stays inside that rest. A row that overshoots 100 g by rounding is scaled back to it.
 *
 * @param food grams per 100 g, each 0–100, sum at most 101
 * @throws OutOfDomain when a value is outside its range or the row sums to more than 101 g
 * Accuracy: that of the table; a missing fibre value moves the density by less than 1 %.
 * Source: "carbohydrate by difference", USDA SR28 documentation.
 * @example foodFractions({ water_g: 100, sugars_g: 0 }).water // 1
 */
export function foodFractions(food: FoodComposition): FoodFractions {
  const water = part('water_g', food.water_g);
  const protein = part('protein_g', food.protein_g);
  const fat = part('fat_g', food.fat_g);
  const fibre = part('fibre_g', food.fibre_g);
  const ash = part('ash_g', food.ash_g);
  const sugars = part('sugars_g', food.sugars_g);
  const known = water + protein + fat + fibre + ash;
  if (!(known + sugars <= 100 + rounding_g)) {
    throw new OutOfDomain('composition', known + sugars, `at most ${100 + rounding_g} g per 100 g`);
  }
  const whole = Math.max(100, known);
  return {
    water: water / whole,
    protein: protein / whole,
    fat: fat / whole,
    fibre: fibre / whole,
    ash: ash / whole,
    carbohydrate: Math.max(0, 100 - known) / whole,
  };
}

function part(name: string, value: number | null | undefined): number {
  if (value === null || value === undefined) return 0;
  if (!(value >= 0 && value <= 100)) throw new OutOfDomain(name, value, '0 to 100 g per 100 g');
  return value;
}
