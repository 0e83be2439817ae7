import { OutOfDomain } from '#core/out-of-domain.ts';
import { type Celsius, celsius, type Grams, grams } from '#core/units/branded.ts';
import { type FoodHeat, foodEnthalpy_kJ_per_kg, iceShare } from './food-heat.ts';
import { risingRoot } from './rising-root.ts';

/** One thing poured into the jar, with its temperature. */
export interface MixPart {
  readonly mass_g: Grams;
  readonly temperature_C: Celsius;
  readonly food: FoodHeat;
}

/** Heat content of all parts at one temperature, kJ. */
export function mixEnthalpy_kJ(parts: readonly MixPart[], temperature_C: number): number {
  let sum = 0;
  for (const { mass_g, food } of parts) sum += (mass_g / 1000) * foodEnthalpy_kJ_per_kg(food, temperature_C);
  return sum;
}

/**
 * The temperature that base and additions settle at, and the ice that is left then.
 *
 * Method: no heat comes or goes while they even out; the temperature at which all together hold the heat they held apart, to 1e-7 °C. Leaves out the jar itself and the time it takes. While ice is left this is where both can stand together, a little below 0 °C.
 *
 * @param parts at least one, masses above 0 g, temperatures −40 to 110 °C
 * @throws OutOfDomain when there is nothing in the jar
 * Accuracy: 0.3 °C without ice; 3 % of the heat of melting.
 * Source: the balance itself; heats as in `foodEnthalpy_kJ_per_kg`.
 */
export function mixing(parts: readonly MixPart[]): { mix_C: Celsius; ice_g: Grams } {
  if (parts.length === 0) throw new OutOfDomain('parts', 0, 'at least one');
  let held = 0;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const part of parts) {
    held += (part.mass_g / 1000) * foodEnthalpy_kJ_per_kg(part.food, part.temperature_C);
    low = Math.min(low, part.temperature_C);
    high = Math.max(high, part.temperature_C);
  }
  const mix_C = risingRoot((temperature_C) => mixEnthalpy_kJ(parts, temperature_C), held, low, high, 1e-7);
  let ice_g = 0;
  for (const { mass_g, food } of parts) ice_g += mass_g * iceShare(food, mix_C);
  return { mix_C: celsius(mix_C), ice_g: grams(ice_g) };
}
