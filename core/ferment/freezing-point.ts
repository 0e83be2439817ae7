import type { FoodComposition } from './food-composition.ts';
import { knownSugars } from './known-sugars.ts';
import { molarMass_g_per_mol as molar } from './molar-mass.ts';

/** Cryoscopic constant of water, K·kg/mol. Source: CRC Handbook of Chemistry and Physics. */
const cryoscopic = 1.86;
/** Waters that a sugar molecule keeps to itself; makes the dilute law follow the handbook to 20 %. */
const boundWaters = { sucrose: 5, hexose: 2 };
/** A guess for fruit whose sugars nobody measured: the middle of the handbook's fruits, −0.6 to −1.8 °C. */
const usualFruit_C = -1;
/** Pure water, moved a hair below zero so that melting has a temperature to happen at. */
const pureWater_C = -0.002;

/**
 * Where a sugary food or drink begins to freeze.
 *
 * Method: 1.86 K per mole of sugar in a kilogram of free water (five waters bound to a sucrose, two to a hexose). Sugars of unknown kind
 * count as sucrose. Leaves out acids and minerals, which lower a
 * berry by another 0.2 °C or so. Without any sugar value: −1 °C.
 *
 * @param food grams per 100 g
 * @returns °C, below 0
 * Accuracy: 5 % for sugar solutions to 20 %; 0.5 °C for fruit.
 * Source: CRC Handbook (2021), concentrative properties of aqueous solutions.
 * @example freezingPoint_C({ water_g: 90, sugars_g: 10, sucrose_g: 10 }) // −0.62
 */
export function freezingPoint_C(food: FoodComposition): number {
  const sugars = knownSugars(food);
  if (sugars === null) return usualFruit_C;
  const sucrose_mol = sugars.sucrose_g / molar.sucrose;
  const hexose_mol = sugars.hexose_g / molar.hexose;
  const bound_g = molar.water * (boundWaters.sucrose * sucrose_mol + boundWaters.hexose * hexose_mol);
  const free_g = Math.max(food.water_g - bound_g, food.water_g / 4, 1e-6);
  const point = (-cryoscopic * 1000 * (sucrose_mol + hexose_mol)) / free_g;
  // A syrup's point lies beyond the law and beyond every freezer; −30 °C says "does not freeze here".
  return Math.min(pureWater_C, Math.max(point, -30));
}
