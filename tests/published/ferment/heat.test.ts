import { describe, expect, it } from 'vitest';
import { foodEnthalpy_kJ_per_kg, foodHeat, iceShare, specificHeat_kJ_per_kgK } from '#core/ferment/food-heat.ts';
import { freezingPoint_C } from '#core/ferment/freezing-point.ts';
import { mixing } from '#core/ferment/mixing.ts';
import { slowStart } from '#core/ferment/slow-start.ts';
import { calibratedTimeConstant_h, warming } from '#core/ferment/warming.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { celsius, grams } from '#core/units/branded.ts';

const water = { water_g: 100, sugars_g: 0 };
function composition(name: string) {
  const found = findIngredient(name);
  if (!found) throw new Error(name);
  return found.composition;
}

describe('water and ice', () => {
  // IAPWS-95, kJ/(kg·K).
  it.each([
    [0, 4.2194],
    [4, 4.2075],
    [10, 4.1952],
    [15, 4.1885],
    [20, 4.1841],
    [25, 4.1813],
    [40, 4.1794],
  ])('water at %f °C takes %f', (t, cp) => {
    expect(Math.abs(specificHeat_kJ_per_kgK(water, t) - cp)).toBeLessThan(0.0005);
  });
  // IAPWS-06 and IAPWS-95: a kilogram of ice at −18 °C to water at 20 °C, 18·2.030 + 333.43 + 20·4.1973 = 453.9 kJ.
  it('a kilogram of ice from −18 °C to water at 20 °C takes 453.9 kJ', () => {
    const pure = foodHeat(water);
    const taken = foodEnthalpy_kJ_per_kg(pure, 20) - foodEnthalpy_kJ_per_kg(pure, -18);
    expect(Math.abs(taken / 453.9 - 1)).toBeLessThan(0.001);
  });
  // IAPWS-06: mean heat capacity of ice −18 to 0 °C, 2.030.
  it('a kilogram of ice warms from −18 to −1 °C with 2.03 kJ/K', () => {
    const pure = foodHeat(water);
    const taken = foodEnthalpy_kJ_per_kg(pure, -1) - foodEnthalpy_kJ_per_kg(pure, -18);
    expect(Math.abs(taken / 17 / 2.03 - 1)).toBeLessThan(0.02);
  });
});

describe('heat capacity of fruit', () => {
  // ASHRAE Handbook Refrigeration, Thermal Properties of Foods, table 3, above freezing (SI digits from memory, cross-checked with the I-P
  // columns of nine rows). The handbook's composition is its own; here USDA SR28 is used. Its column counts fibre twice, hence 3 %.
  it.each([
    ['strawberries', 4.0],
    ['blueberries', 3.83],
    ['blackberries', 3.91],
    ['cherries, sour', 3.85],
    ['cherries, sweet', 3.73],
    ['cranberries', 3.91],
    ['peaches', 3.91],
    ['apples', 3.81],
    ['pineapple', 3.85],
    ['mango', 3.74],
    ['blackcurrants', 3.71],
    ['ginger', 3.75],
    ['beets', 3.91],
  ])('of %s is within 3 %% of the handbook', (name, cp) => {
    expect(Math.abs(specificHeat_kJ_per_kgK(composition(name)) / cp - 1)).toBeLessThan(0.03);
  });
  // The handbook's raspberries hold 86.57 % of water, SR28's 85.75 %, which alone moves them by 0.7 %: so by the handbook's own composition
  // (fibre 6.8, protein 0.91, fat 0.55, ash 0.40, from memory).
  it('of raspberries is within 3 % of the handbook, by the handbook’s composition', () => {
    const food = { water_g: 86.57, sugars_g: null, fibre_g: 6.8, protein_g: 0.91, fat_g: 0.55, ash_g: 0.4 };
    expect(Math.abs(specificHeat_kJ_per_kgK(food) / 3.96 - 1)).toBeLessThan(0.03);
  });
  // ASHRAE: latent heat = 334 kJ/kg times the water fraction, the same table.
  it.each([
    ['strawberries', 91.57, 306],
    ['blueberries', 84.61, 283],
    ['cherries, sweet', 80.76, 270],
    ['mango', 81.71, 273],
  ])('melting %s, %f %% water, takes %f kJ/kg', (_name, percent, latent) => {
    const fruit = foodHeat({ water_g: percent, sugars_g: null }, -0.002);
    const taken = foodEnthalpy_kJ_per_kg(fruit, 0) - foodEnthalpy_kJ_per_kg(fruit, -2);
    // Two degrees of warming beside it: ice 2.09 kJ/(kg·K), dry matter 1.55.
    const warming = 2 * ((percent / 100) * 2.09 + (1 - percent / 100) * 1.55);
    expect(Math.abs((taken - warming) / latent - 1)).toBeLessThan(0.005);
  });
});

describe('freezing', () => {
  // CRC Handbook, 102nd ed., concentrative properties: freezing point depression at mass %.
  it.each([
    ['sucrose', 5, 0.29],
    ['sucrose', 10, 0.63],
    ['sucrose', 20, 1.47],
    ['glucose', 5, 0.55],
    ['glucose', 10, 1.17],
    ['glucose', 20, 2.7],
    ['fructose', 10, 1.16],
    ['fructose', 20, 2.64],
  ])('%s of %f %% freezes %f °C below water', (kind, percent, depression) => {
    const food = { water_g: 100 - percent, sugars_g: percent, [`${kind}_g`]: percent };
    expect(Math.abs(-freezingPoint_C(food) / depression - 1)).toBeLessThan(0.05);
  });
  // ASHRAE table 3, initial freezing points; the estimate from sugars alone is held to 0.6 °C (acids and minerals are left out).
  it.each([
    ['strawberries', -0.8],
    ['raspberries', -0.6],
    ['blueberries', -1.6],
    ['cherries, sweet', -1.8],
    ['apples', -1.1],
    ['pineapple', -1.0],
  ])('%s freeze near the handbook’s %f °C', (name, point) => {
    expect(Math.abs(freezingPoint_C(composition(name)) - point)).toBeLessThan(0.6);
  });
  // ASHRAE, worked examples of the beef carcass (150 kg; water 58.21, protein 17.48, fat 24.05, ash 0.81 %; freezing from −1.7 °C), from memory.
  const beef = foodHeat({ water_g: 58.21, sugars_g: 0, protein_g: 17.48, fat_g: 24.05, ash_g: 0.81 }, -1.7);
  it('a beef carcass from 10 °C to −20 °C gives up 34 700 kJ, within 3 %', () => {
    const given = 150 * (foodEnthalpy_kJ_per_kg(beef, 10) - foodEnthalpy_kJ_per_kg(beef, -20));
    expect(Math.abs(given / 34_700 - 1)).toBeLessThan(0.03);
  });
  it('half of it is ice at −20 °C, as the handbook’s 0.52 says, within the 0.05 of mass that both formulas differ by', () => {
    // The handbook's two methods do not agree with each other: its own enthalpy example implies less ice than its ice example.
    expect(Math.abs(iceShare(beef, -20) - 0.516)).toBeLessThan(0.055);
  });
});

describe('mixing', () => {
  it('keeps the heat: ice into water, worked by hand', () => {
    // 100 g of ice at −18 °C into 900 g at 22 °C: 900·4.19·(22 − T) = 100·(36.5 + 333.4 + 4.20·T).
    const hand = (900 * 4.186 * 22 - 100 * (36.5 + 333.43)) / (900 * 4.186 + 100 * 4.2);
    const found = mixing([
      { mass_g: grams(900), temperature_C: celsius(22), food: foodHeat(water) },
      { mass_g: grams(100), temperature_C: celsius(-18), food: foodHeat(water) },
    ]);
    expect(found.ice_g).toBe(0);
    expect(Math.abs(found.mix_C - hand)).toBeLessThan(0.05);
  });
  it('leaves the ice that the warmth cannot melt, at 0 °C', () => {
    // 300 g of water from 20 °C give 25.2 kJ; 300 g of ice take 11.0 kJ to 0 °C; the rest melts 42.6 g.
    const found = mixing([
      { mass_g: grams(300), temperature_C: celsius(20), food: foodHeat(water) },
      { mass_g: grams(300), temperature_C: celsius(-18), food: foodHeat(water) },
    ]);
    expect(Math.abs(found.mix_C)).toBeLessThan(0.05);
    expect(Math.abs(300 - found.ice_g - (25.19 - 10.96) / 0.33343)).toBeLessThan(1);
  });
});

describe('warming', () => {
  const litre = [{ mass_g: grams(1000), temperature_C: celsius(10), food: foodHeat(water) }];
  it('follows Newton’s law: ln(12) time constants from 12 degrees to one', () => {
    // 1 kg · 4.187 kJ/K over 0.4 W/K is 2.908 h.
    const found = warming(litre, celsius(10), { ambient_C: celsius(22), conductance_W_per_K: 0.4 }, 22);
    expect(Math.abs(found.hoursToWithinOneDegree / ((4.187 / 1.44) * Math.log(12)) - 1)).toBeLessThan(0.002);
  });
  it('takes no time and costs nothing in a jar that is as warm as the room', () => {
    const found = warming(litre, celsius(22), { ambient_C: celsius(22), conductance_W_per_K: 0.4 }, 22);
    expect(found.hoursToWithinOneDegree).toBe(0);
    expect(Math.abs(found.lost.high)).toBeLessThan(1e-9);
  });
  it('spends the heat of melting first: a litre of ice takes hA·22 K until it is gone', () => {
    const ice = [{ mass_g: grams(1000), temperature_C: celsius(-1), food: foodHeat(water) }];
    const found = warming(ice, celsius(-1), { ambient_C: celsius(22), conductance_W_per_K: 0.4 }, 22);
    const melting_h = (333.43 + 2.1) / (3.6 * 0.4 * 22);
    const after_h = (4.19 / 1.44) * Math.log(22);
    expect(Math.abs(found.hoursToWithinOneDegree / (melting_h + after_h) - 1)).toBeLessThan(0.02);
  });
  it('never loses more hours than it takes, and more when it starts colder', () => {
    const at = (start: number) =>
      warming(litre, celsius(start), { ambient_C: celsius(22), conductance_W_per_K: 0.4 }, 22);
    expect(at(2).lost.high).toBeGreaterThan(at(10).lost.high);
    expect(at(2).lost.high).toBeLessThan(at(2).hoursToWithinOneDegree);
    expect(at(2).lost.low).toBeGreaterThan(0);
  });
  it('is calibrated by two readings', () => {
    const found = calibratedTimeConstant_h({ hours: 0, temperature_C: 10 }, { hours: 2, temperature_C: 16 }, 22);
    expect(found).toBeCloseTo(2 / Math.log(2), 9);
    expect(() => calibratedTimeConstant_h({ hours: 0, temperature_C: 10 }, { hours: 2, temperature_C: 9 }, 22)).toThrow(
      OutOfDomain,
    );
    expect(() =>
      calibratedTimeConstant_h({ hours: 2, temperature_C: 10 }, { hours: 1, temperature_C: 16 }, 22),
    ).toThrow(OutOfDomain);
  });
  it('says how much of a slow start the cold explains and that the rest is not temperature', () => {
    const found = slowStart(12, { low: 2.6, high: 3.1 });
    expect(found.rest_h.low).toBeCloseTo(8.9, 9);
    expect(found.sentence).toMatch(/2\.6 to 3\.1 h; the rest is not temperature/);
    expect(slowStart(2, { low: 2.6, high: 3.1 }).sentence).toBe('The cold explains all 2 h.');
  });
});
