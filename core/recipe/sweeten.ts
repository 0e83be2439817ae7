import type { FoodComposition } from '#core/ferment/food-composition.ts';
import { foodDensity_kg_per_m3 } from '#core/ferment/food-density.ts';
import { knownSugars } from '#core/ferment/known-sugars.ts';
import { within } from '#core/out-of-domain.ts';
import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { outOfReach, type Worked, type WrittenStrength } from './worked.ts';

/** A drink by its volume and its sugar. */
export interface SweetDrink {
  readonly volume_mL: number;
  readonly sugar_g_per_L: number;
}

/**
 * How much of a sweetener brings a drink to a wanted sugar.
 *
 * Method: the sugar balance, the sweetener's own volume counted (Choi–Okos at 20 °C): m = V (target − now) / (sugar share · 1000 − target/ρ).
 *
 * @param drink volume above 0 mL, sugar at least 0 g/L
 * @param target_g_per_L sugar wanted, at least what is there
 * @param sweetener what 100 g of it are made of
 * @param written how sentences write a strength; grams per litre unless said
 * @returns grams of sweetener and the volume after, or why not: its sugar is unknown, or the target is below the drink or above the sweetener
 * @throws OutOfDomain when an amount is negative or not finite
 * Accuracy: 1 % (dissolving shrinks the volume a little).
 * @example sweeten({ volume_mL: 1000, sugar_g_per_L: 10 }, 30, sugar) // 20.4 g
 */
export function sweeten(
  drink: SweetDrink,
  target_g_per_L: number,
  sweetener: FoodComposition,
  written: WrittenStrength = (strength) => `${shownNumber(Number(strength.toFixed(1)))} g/L`,
): Worked<{ mass_g: number; volume_mL: number }> {
  const volume = within('volume_mL', drink.volume_mL, Number.MIN_VALUE, Number.MAX_VALUE);
  const now = within('sugar_g_per_L', drink.sugar_g_per_L, 0, 1000);
  const target = within('target_g_per_L', target_g_per_L, 0, 1000);
  const sugars = knownSugars(sweetener);
  if (sugars === null)
    return { ok: false, code: 'sugar-unknown', message: phrase`Nobody knows the sugar of this sweetener.` };
  if (target < now)
    return outOfReach(phrase`It already holds ${written(now)}; to go down to ${written(target)}, dilute it.`);
  const density = foodDensity_kg_per_m3(sweetener);
  const share = (sugars.sucrose_g + sugars.hexose_g) / 100;
  const strongest = share * density;
  if (target >= strongest)
    return outOfReach(phrase`The sweetener itself holds ${written(Math.floor(strongest))}; the target must lie below.`);
  const mass_g = (volume * (target - now)) / 1000 / (share - target / density);
  return { ok: true, value: { mass_g, volume_mL: volume + (1000 * mass_g) / density } };
}
