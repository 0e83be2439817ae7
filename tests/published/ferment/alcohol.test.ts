import { describe, expect, it } from 'vitest';
import {
  alcoholByVolume_pct,
  ballingYield,
  ethanolDensity20_kg_per_m3,
  hexoseYield,
  originalExtract_plato,
  sucroseYield,
  sugarToHalfPercent_g_per_L,
} from '#core/ferment/alcohol.ts';
import { ethanolWaterDensity_kg_per_m3, massFractionOfEthanol } from '#core/ferment/alcoholometry.ts';
import { molarMass_g_per_mol } from '#core/ferment/molar-mass.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { grams, millilitres, percentVolume } from '#core/units/branded.ts';

describe('stoichiometry from IUPAC conventional atomic weights', () => {
  it.each([
    ['hexose', 180.156],
    ['sucrose', 342.297],
    ['ethanol', 46.069],
    ['carbonDioxide', 44.009],
    ['water', 18.015],
    ['acetic', 60.052],
    ['lactic', 90.078],
    ['citric', 192.123],
    ['malic', 134.087],
    ['tartaric', 150.086],
  ] as const)('a mole of %s weighs %f g', (name, mass) => {
    expect(molarMass_g_per_mol[name]).toBeCloseTo(mass, 3);
  });
  it('gives Gay-Lussac’s factors', () => {
    expect(hexoseYield.ethanol).toBeCloseTo(0.51143, 5);
    expect(hexoseYield.carbonDioxide).toBeCloseTo(0.48857, 5);
    expect(sucroseYield.ethanol).toBeCloseTo(0.53835, 5);
    expect(sucroseYield.carbonDioxide).toBeCloseTo(0.51428, 5);
  });
  it('keeps the mass: hexose to ethanol and CO2, sucrose with the water it takes up', () => {
    expect(hexoseYield.ethanol + hexoseYield.carbonDioxide).toBeCloseTo(1, 12);
    expect(sucroseYield.ethanol + sucroseYield.carbonDioxide).toBeCloseTo(1 + 18.015 / 342.297, 5);
  });
});

describe('Balling', () => {
  // C. J. N. Balling, in Nielsen, Kristiansen, Krieger Lassen and Erikstrøm, Brauwelt Int. (2007). The running text there once prints
  // 0.9695 g CO2; only 0.9565 of its balance closes.
  it('closes: 2.0665 g of extract are 1 g alcohol, 0.9565 g CO2 and 0.11 g yeast', () => {
    expect(2.0665 * (ballingYield.ethanol + ballingYield.carbonDioxide) + 0.11).toBeCloseTo(2.0665, 12);
    expect(ballingYield.ethanol).toBeCloseTo(0.48391, 5);
  });
  it('finds 11.7641 °P behind 4 % alcohol and 4 % extract', () => {
    expect(originalExtract_plato(4, 4)).toBeCloseTo(11.7641, 4);
  });
});

describe('alcohol and water', () => {
  // Self-checks printed with the reference implementation of OIML R 22 (1975).
  it.each([
    [0, 20, 998.20123],
    [1, 20, 789.2391233],
    [0, 0, 999.8369332],
    [1, 0, 806.2151206],
    [0.5, 20, 913.770595],
  ])('of mass fraction %f at %f °C follow OIML R 22', (p, t, density) => {
    expect(Math.abs(ethanolWaterDensity_kg_per_m3(p, t) - density)).toBeLessThan(2e-5);
  });
  // OIML R 22 table: % vol, % mass, kg/m³ at 20 °C.
  it.each([
    [0.5, 0.3956, 997.444],
    [1, 0.7919, 996.697],
    [3, 2.3825, 993.806],
    [5, 3.9818, 991.055],
    [10, 8.0149, 984.71],
    [15, 12.0929, 978.971],
    [40, 33.2996, 948.045],
  ])('of %f %% vol hold %f %% by mass', (strength, mass, density) => {
    const p = massFractionOfEthanol(strength);
    expect(p * 100).toBeCloseTo(mass, 3);
    expect(ethanolWaterDensity_kg_per_m3(p)).toBeCloseTo(density, 2);
  });
  // CRC Handbook, 102nd ed.: ethanol 5 % and 10 % by mass at 20 °C, g/cm³.
  it.each([
    [0.01, 0.9963],
    [0.05, 0.9893],
    [0.1, 0.9819],
    [0.2, 0.9687],
  ])('of mass fraction %f agree with the CRC handbook', (p, density) => {
    expect(Math.abs(ethanolWaterDensity_kg_per_m3(p) / 1000 - density)).toBeLessThan(0.0001);
  });
  it('throw outside 0–1 and −20 to 40 °C', () => {
    expect(() => ethanolWaterDensity_kg_per_m3(1.1)).toThrow(OutOfDomain);
    expect(() => ethanolWaterDensity_kg_per_m3(0.5, 60)).toThrow(OutOfDomain);
  });
});

describe('alcohol by volume', () => {
  it('is within 0.01 of OIML R 22 up to 12 % vol', () => {
    for (const strength of [0.5, 1, 3, 5, 8, 12]) {
      const p = massFractionOfEthanol(strength);
      const ethanol_g = p * ethanolWaterDensity_kg_per_m3(p);
      expect(Math.abs(alcoholByVolume_pct(grams(ethanol_g), millilitres(1000)) - strength)).toBeLessThan(0.01);
    }
    expect(ethanolDensity20_kg_per_m3).toBeCloseTo(789.24, 2);
  });
  it('lets 7.33 g/L of sugar ferment below 0.5 % vol, and none once there', () => {
    expect(sugarToHalfPercent_g_per_L(percentVolume(0))).toBeCloseTo((0.005 * 789.2391) / 0.53835, 3);
    expect(sugarToHalfPercent_g_per_L(percentVolume(0.5))).toBe(0);
    expect(sugarToHalfPercent_g_per_L(percentVolume(3))).toBe(0);
  });
});
