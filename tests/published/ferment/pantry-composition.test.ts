import { describe, expect, it } from 'vitest';
import { findIngredient } from '#core/pantry/find-ingredient.ts';

describe('the pantry against USDA SR28', () => {
  // USDA National Nutrient Database for Standard Reference, Release 28: description, NDB number,
  // water, total sugars, glucose, fructose, sucrose (g per 100 g); null where the release has no value.
  it.each([
    ['Raspberries, raw', '09302', 85.75, 4.42, 1.86, 2.35, 0.2],
    ['Strawberries, frozen, unsweetened', '09318', 89.97, 4.56, 2.02, 2.17, 0.37],
    ['Blueberries, raw', '09050', 84.21, 9.96, 4.88, 4.97, 0.11],
    ['Blueberries, wild, frozen', '09053', 85.8, null, 3.33, 3.71, 0],
    ['Pineapple, raw, all varieties', '09266', 86, 9.85, 1.73, 2.12, 5.99],
    ['Currants, european black, raw', '09083', 81.96, null, null, null, null],
    ['Dates, deglet noor', '09087', 20.53, 63.35, 19.87, 19.56, 23.84],
    ['Honey', '19296', 17.1, 82.12, 35.75, 40.94, 0.89],
    ['Ginger root, raw', '11216', 78.89, 1.7, null, null, null],
    ['Sugars, granulated', '19335', 0.02, 99.8, 0, 0, 99.8],
  ] as const)('%s', (description, ndb, water, sugars, glucose, fructose, sucrose) => {
    const found = findIngredient(description);
    expect(found?.ndb).toBe(ndb);
    expect(found?.composition).toMatchObject({
      water_g: water,
      sugars_g: sugars,
      glucose_g: glucose,
      fructose_g: fructose,
      sucrose_g: sucrose,
    });
  });
});
