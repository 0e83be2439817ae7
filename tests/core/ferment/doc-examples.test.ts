import { describe, expect, it } from 'vitest';
import { acidity } from '#core/ferment/acidity.ts';
import { alcoholByVolume_pct, originalExtract_plato, sugarToHalfPercent_g_per_L } from '#core/ferment/alcohol.ts';
import { ethanolWaterDensity_kg_per_m3, massFractionOfEthanol } from '#core/ferment/alcoholometry.ts';
import {
  carbonDioxideSolubility_mol_per_L_atm,
  closedPressure,
  gaugeOfVolumes_bar,
} from '#core/ferment/carbon-dioxide.ts';
import { cardinalTemperatureModel } from '#core/ferment/cardinal-temperature-model.ts';
import { equivalentHours } from '#core/ferment/equivalent-hours.ts';
import { foodFractions } from '#core/ferment/food-composition.ts';
import { foodDensity_kg_per_m3 } from '#core/ferment/food-density.ts';
import { foodEnthalpy_kJ_per_kg, foodHeat, specificHeat_kJ_per_kgK } from '#core/ferment/food-heat.ts';
import { freezingPoint_C } from '#core/ferment/freezing-point.ts';
import { hydrometer } from '#core/ferment/hydrometer.ts';
import { jarVolume_mL } from '#core/ferment/jar-volume.ts';
import { ownWarming } from '#core/ferment/own-warming.ts';
import { sucroseDensity_kg_per_m3 } from '#core/ferment/sucrose-density.ts';
import { sgFromSgInAir, sucroseSaturation_brix, sugarSolution } from '#core/ferment/sugar-solution.ts';
import { calibratedTimeConstant_h } from '#core/ferment/warming.ts';
import { waterDensity_kg_per_m3 } from '#core/ferment/water-density.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { sweeten } from '#core/recipe/sweeten.ts';
import { celsius, grams, gramsPerLitre, millilitres, percentVolume } from '#core/units/branded.ts';

const water = { water_g: 100, sugars_g: 0 };

// What each doc comment promises in its example, to the digits it prints.
describe('the examples of the doc comments', () => {
  it.each([
    ['foodFractions', () => foodFractions(water).water, 1, 9],
    ['foodDensity_kg_per_m3', () => foodDensity_kg_per_m3(water), 995.74, 2],
    ['jarVolume_mL', () => jarVolume_mL(850, [{ mass_g: 75, composition: water }]), 925.3, 1],
    ['waterDensity_kg_per_m3', () => waterDensity_kg_per_m3(20), 998.203, 3],
    ['sucroseDensity_kg_per_m3', () => sucroseDensity_kg_per_m3(10), 1038.115, 3],
    ['sugarSolution, sg', () => sugarSolution({ brix: 10 }).sg, 1.03998, 5],
    ['sugarSolution, sgInAir', () => sugarSolution({ brix: 10 }).sgInAir, 1.04003, 5],
    ['sugarSolution, sugar_g_per_L', () => sugarSolution({ brix: 10 }).sugar_g_per_L, 103.81, 2],
    ['sgFromSgInAir', () => sgFromSgInAir(1.04003), 1.03998, 5],
    ['sucroseSaturation_brix', () => sucroseSaturation_brix(20), 66.6, 1],
    ['hydrometer', () => hydrometer(1.038, 30).brix, 10.2, 1],
    ['alcoholByVolume_pct', () => alcoholByVolume_pct(grams(7.892), millilitres(1000)), 1, 3],
    ['sugarToHalfPercent_g_per_L', () => sugarToHalfPercent_g_per_L(percentVolume(0)), 7.33, 2],
    ['originalExtract_plato', () => originalExtract_plato(4, 4), 11.7641, 4],
    ['ethanolWaterDensity_kg_per_m3', () => ethanolWaterDensity_kg_per_m3(0.5), 913.7706, 4],
    ['massFractionOfEthanol', () => massFractionOfEthanol(5), 0.039818, 6],
    ['carbonDioxideSolubility_mol_per_L_atm', () => carbonDioxideSolubility_mol_per_L_atm(20), 0.0391, 4],
    ['gaugeOfVolumes_bar', () => gaugeOfVolumes_bar(2.5, 20), 1.9, 2],
    [
      'closedPressure',
      () =>
        closedPressure(
          {
            contents_mL: millilitres(925),
            headspace_mL: millilitres(75),
            sugar_g_per_L: gramsPerLitre(8),
            closing_C: celsius(22),
          },
          celsius(22),
        ).gauge_bar,
      2.35,
      2,
    ],
    ['acidity', () => acidity({ titrant_mL: 12, normality: 0.1, sample_mL: 15, acid: 'tartaric' }).g_per_L, 6, 1],
    [
      'cardinalTemperatureModel',
      () => cardinalTemperatureModel(15, { minimum_C: 5, optimum_C: 20, maximum_C: 30 }),
      0.8,
      9,
    ],
    ['equivalentHours', () => equivalentHours([{ hours: 48, temperature_C: 20 }], 25).middle, 34.5, 1],
    ['foodEnthalpy_kJ_per_kg', () => foodEnthalpy_kJ_per_kg(foodHeat(water), 20), 83.95, 1],
    ['specificHeat_kJ_per_kgK', () => specificHeat_kJ_per_kgK(water), 4.184, 3],
    ['freezingPoint_C', () => freezingPoint_C({ water_g: 90, sugars_g: 10, sucrose_g: 10 }), -0.62, 2],
    [
      'ownWarming',
      () =>
        ownWarming(
          [
            { hours: 0, temperature_C: 10 },
            { hours: 2, temperature_C: 16 },
          ],
          22,
        )?.timeConstant_h.middle ?? 0,
      2.885,
      3,
    ],
    [
      'calibratedTimeConstant_h',
      () => calibratedTimeConstant_h({ hours: 0, temperature_C: 10 }, { hours: 2, temperature_C: 16 }, 22),
      2.885,
      3,
    ],
    [
      'sweeten',
      () => {
        const sugar = findIngredient('sugar')?.composition ?? water;
        const found = sweeten({ volume_mL: 1000, sugar_g_per_L: 10 }, 30, sugar);
        return found.ok ? found.value.mass_g : Number.NaN;
      },
      20.4,
      1,
    ],
  ] as const)('%s', (_name, example, value, digits) => {
    expect(example()).toBeCloseTo(value, digits);
  });
});
