import { describe, expect, it } from 'vitest';
import { hydrometer } from '#core/ferment/hydrometer.ts';
import { sucroseDensity_kg_per_m3 } from '#core/ferment/sucrose-density.ts';
import { sgFromSgInAir, sucroseSaturation_brix, sugarSolution } from '#core/ferment/sugar-solution.ts';
import { waterDensity_kg_per_m3 } from '#core/ferment/water-density.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { fc } from '#tests/properties.ts';

describe('water', () => {
  // IAPWS-95 at 1 atm, kg/m³.
  it.each([
    [0, 999.843],
    [4, 999.975],
    [10, 999.702],
    [15, 999.103],
    [20, 998.207],
    [25, 997.048],
  ])('at %f °C is within 0.01 kg/m³ of IAPWS', (t, density) => {
    expect(Math.abs(waterDensity_kg_per_m3(t) - density)).toBeLessThan(0.01);
  });
});

describe('sucrose density', () => {
  // ICUMSA SPS-4 polynomial (Bubnik et al. 1995), evaluated apart from this code: °Bx, kg/m³ at 20 °C, SG true, SG in air.
  it.each([
    [0, 998.203, 1.0, 1.0],
    [1, 1002.068, 1.00387, 1.00388],
    [5, 1017.805, 1.01964, 1.01966],
    [10, 1038.115, 1.03998, 1.04003],
    [15, 1059.162, 1.06107, 1.06114],
    [20, 1080.977, 1.08292, 1.08302],
    [30, 1127.032, 1.12906, 1.12922],
    [40, 1176.518, 1.17864, 1.17885],
    [50, 1229.654, 1.23187, 1.23215],
    [60, 1286.611, 1.28893, 1.28927],
    [65, 1316.555, 1.31893, 1.31931],
  ])('at %f °Bx follows ICUMSA in density and both specific gravities', (brix, density, sg, sgInAir) => {
    const solution = sugarSolution({ brix });
    expect(Math.abs(solution.density_kg_per_m3 - density)).toBeLessThan(0.002);
    expect(Math.abs(solution.sg - sg)).toBeLessThan(0.00001);
    expect(Math.abs(solution.sgInAir - sgInAir)).toBeLessThan(0.00001);
  });
  // The same at other temperatures.
  it.each([
    [10, 5, 1040.734],
    [10, 10, 1040.147],
    [10, 15, 1039.262],
    [10, 25, 1036.735],
    [10, 30, 1035.143],
    [20, 5, 1084.478],
    [20, 30, 1077.581],
  ])('of %f °Bx at %f °C is %f kg/m³', (brix, t, density) => {
    expect(Math.abs(sucroseDensity_kg_per_m3(brix, t) - density)).toBeLessThan(0.002);
  });
  // CRC Handbook of Chemistry and Physics, 102nd ed. (2021), concentrative properties of aqueous solutions: g/cm³ at 20 °C.
  it.each([
    [1, 1.0021],
    [2, 1.006],
    [5, 1.0178],
    [8, 1.0299],
    [12, 1.0465],
    [15, 1.0592],
    [20, 1.081],
    [30, 1.127],
    [40, 1.1765],
    [50, 1.2295],
  ])('at %f °Bx agrees with the CRC handbook', (brix, density) => {
    // At 50 °Bx the two sources themselves lie 0.00015 apart.
    expect(Math.abs(sucroseDensity_kg_per_m3(brix) / 1000 - density)).toBeLessThan(brix < 50 ? 0.0001 : 0.0002);
  });
  // NBS Circular C440 (1942), table 109, SG 20/20, from memory; held to 0.0001 up to 30 °Bx as the newer polynomial differs by so much.
  it.each([
    [5, 1.01965],
    [10, 1.03998],
    [20, 1.08287],
    [25, 1.10551],
    [30, 1.12898],
  ])('at %f °Bx agrees with NBS C440', (brix, sg) => {
    expect(Math.abs(sugarSolution({ brix }).sg - sg)).toBeLessThan(0.0001);
  });
  // USDA AMS file code 135-A-50 (1981), Brix to apparent specific gravity 20/20, read on a page that reproduces it.
  it.each([
    [0.1, 1.00039],
    [0.3, 1.00117],
    [3.8, 1.0149],
    [3.9, 1.01529],
    [4, 1.01569],
    [4.1, 1.01609],
    [7.6, 1.03017],
    [7.7, 1.03058],
    [7.8, 1.03098],
    [7.9, 1.03139],
  ])('at %f °Bx agrees with the USDA table, which weighs in air', (brix, sgInAir) => {
    // The table's own rounding (0.000005) beside its stated 0.00002.
    expect(Math.abs(sugarSolution({ brix }).sgInAir - sgInAir)).toBeLessThan(0.000025);
  });
});

describe('conversion', () => {
  it('comes back to the same strength from SG and g/L, 0–60 °Bx, 5–35 °C', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 5, max: 35, noNaN: true }),
        (brix, t) => {
          const solution = sugarSolution({ brix }, t);
          expect(sugarSolution({ sg: solution.sg }, t).brix).toBeCloseTo(brix, 6);
          expect(sugarSolution({ sugar_g_per_L: solution.sugar_g_per_L }, t).brix).toBeCloseTo(brix, 6);
          expect(sgFromSgInAir(solution.sgInAir)).toBeCloseTo(solution.sg, 12);
        },
      ),
    );
  });
  it('throws for what sugar in water cannot have', () => {
    for (const known of [
      { sg: 0.998 },
      { brix: -1 },
      { brix: 95 },
      { sugar_g_per_L: -5 },
      { sugar_g_per_L: Number.NaN },
    ]) {
      expect(() => sugarSolution(known)).toThrow(OutOfDomain);
    }
  });
  it('dissolves about 67 % of sucrose at 20 °C and more when warm', () => {
    // CRC Handbook: 203.9 g of sucrose per 100 g of water at 20 °C, 67.1 % (from memory); Charles (1960) says 66.6 %.
    expect(Math.abs(sucroseSaturation_brix(20) - 67.1)).toBeLessThan(0.6);
    expect(sucroseSaturation_brix(40)).toBeGreaterThan(sucroseSaturation_brix(20));
  });
});

describe('hydrometer', () => {
  it('is right when the sample has the hydrometer’s own temperature', () => {
    expect(hydrometer(sugarSolution({ brix: 12 }).sg, 20).brix).toBeCloseTo(12, 6);
  });
  // NBS Circular C440, temperature corrections of Brix hydrometers graduated at 20 °C, around 10 °Bx, from memory; held to 0.1 °Bx.
  it.each([
    [25, 0.31],
    [30, 0.66],
    [15, -0.26],
    [10, -0.46],
  ])('corrects a 10 °Bx reading at %f °C by about %f', (sample_C, correction) => {
    expect(Math.abs(hydrometer(sugarSolution({ brix: 10 }).sg, sample_C).brix - 10 - correction)).toBeLessThan(0.1);
  });
  it('gives density and g/L at the sample’s temperature', () => {
    const found = hydrometer(1.04, 30);
    expect(found.density_kg_per_m3).toBeCloseTo(sucroseDensity_kg_per_m3(found.brix, 30), 9);
  });
  it('throws beyond 5–35 °C', () => {
    expect(() => hydrometer(1.04, 40)).toThrow(OutOfDomain);
    expect(() => hydrometer(1.04, 2)).toThrow(OutOfDomain);
  });
});
