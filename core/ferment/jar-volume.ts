import { within } from '#core/out-of-domain.ts';
import { type Millilitres, millilitres } from '#core/units/branded.ts';
import type { FoodComposition } from './food-composition.ts';
import { foodDensity_kg_per_m3 } from './food-density.ts';

/** An amount of one food that goes into a jar. */
export interface WeighedFood {
  readonly mass_g: number;
  readonly composition: FoodComposition;
}

/**
 * What base and additions take up together in the jar.
 *
 * Method: base plus the mass of each addition over its Choi–Okos density at 20 °C. Leaves out the small shrinkage on dissolving sugar,
 * trapped air, and the swelling of frozen fruit until it has thawed.
 *
 * @param base_mL what is poured on, at least 0 mL
 * @param additions grams and composition of each addition
 * @returns millilitres
 * @throws OutOfDomain when an amount is negative or not finite, or a composition is outside its range
 * Accuracy: about 1 % for fruit and juice; dissolved dry sugar within 2 % of its own volume.
 * Source: Choi and Okos (1986), as in `foodDensity_kg_per_m3`.
 * @example jarVolume_mL(850, [{ mass_g: 75, composition: { water_g: 100, sugars_g: 0 } }]) // 925.3
 */
export function jarVolume_mL(base_mL: number, additions: readonly WeighedFood[]): Millilitres {
  let volume = within('base_mL', base_mL, 0, Number.MAX_VALUE);
  for (const { mass_g, composition } of additions) {
    volume += (1000 * within('mass_g', mass_g, 0, Number.MAX_VALUE)) / foodDensity_kg_per_m3(composition);
  }
  return millilitres(volume);
}
