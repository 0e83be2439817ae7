import type { FoodComposition } from '#core/ferment/food-composition.ts';
import { foodDensity_kg_per_m3 } from '#core/ferment/food-density.ts';

/** A price as the pantry keeps it: by mass or by volume; `null` where nobody said. */
export interface KeptPrice {
  readonly price_per_kg: number | null;
  readonly price_per_L: number | null;
}

/**
 * A price per kilogram from whichever price is known.
 *
 * Method: a price per litre over the food's density (Choi–Okos at 20 °C).
 *
 * @param price at most one of the two
 * @param composition what 100 g are made of; `null` when unknown, and then a price per litre can't be turned
 * @returns `null` when there is no price or no way to turn it: never 0 for unknown
 * Accuracy: that of the density, about 1 %.
 * @example pricePerKg({ price_per_kg: null, price_per_L: 2 }, { water_g: 88.24, sugars_g: 9.62 }) // 1.92
 */
export function pricePerKg(
  { price_per_kg, price_per_L }: KeptPrice,
  composition: FoodComposition | null,
): number | null {
  if (price_per_kg !== null) return price_per_kg;
  if (price_per_L === null || composition === null) return null;
  return (1000 * price_per_L) / foodDensity_kg_per_m3(composition);
}
