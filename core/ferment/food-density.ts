import { within } from '#core/out-of-domain.ts';
import { type FoodComposition, foodFractions } from './food-composition.ts';

/**
 * Density of a food from what it is made of.
 *
 * Method: Choi–Okos component model, 1/ρ = Σ xᵢ/ρᵢ(T). Leaves out air in the fruit (a whole apple floats), pits and gas; it is the
 * room the food takes once the drink has filled its pores.
 *
 * @param food grams per 100 g; carbohydrate by difference
 * @param temperature_C −40 to 150, above the food's freezing point; default 20
 * @returns kg/m³ (the same number as g/L)
 * @throws OutOfDomain when the composition or the temperature is outside its range
 * Accuracy: about 1 % for unfrozen fruit and juice.
 * Source: Choi and Okos (1986), Food Engineering and Process Applications 1, 93–101; ASHRAE Handbook Refrigeration (2006) ch. 9, table 1.
 * @example foodDensity_kg_per_m3({ water_g: 100, sugars_g: 0 }) // 995.74
 */
export function foodDensity_kg_per_m3(food: FoodComposition, temperature_C = 20): number {
  const T = within('temperature_C', temperature_C, -40, 150);
  const x = foodFractions(food);
  return (
    1 /
    (x.water / (997.18 + 3.1439e-3 * T - 3.7574e-3 * T * T) +
      x.protein / (1329.9 - 0.5184 * T) +
      x.fat / (925.59 - 0.41757 * T) +
      x.carbohydrate / (1599.1 - 0.31046 * T) +
      x.fibre / (1311.5 - 0.36589 * T) +
      x.ash / (2423.8 - 0.28063 * T))
  );
}
