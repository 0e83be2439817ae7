import { describe, expect, it } from 'vitest';
import {
  closedPressure,
  gaugeOfVolumes_bar,
  molarVolume_L,
  carbonDioxideSolubility_mol_per_L_atm as solubility,
} from '#core/ferment/carbon-dioxide.ts';
import { waterDensity_kg_per_m3 } from '#core/ferment/water-density.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { celsius, gramsPerLitre, millilitres } from '#core/units/branded.ts';
import { fc } from '#tests/properties.ts';

describe('solubility of CO2 in water', () => {
  // Weiss (1974), Mar. Chem. 2, 203, mol/(L·atm), evaluated apart from this code.
  it.each([
    [0, 0.07758],
    [5, 0.06408],
    [10, 0.05366],
    [20, 0.0391],
    [30, 0.02983],
    [40, 0.0237],
  ])('at %f °C is Weiss’s %f', (t, value) => {
    expect(Math.abs(solubility(t) / value - 1)).toBeLessThan(0.001);
  });
  // CRC Handbook, p. 8-90, 1000·mole fraction at 100 kPa (Carroll 1991, Crovetto 1991), stated good to 2 %; held to 3 %.
  it.each([
    [0, 1.337],
    [5, 1.123],
    [10, 0.95],
    [15, 0.814],
    [20, 0.704],
    [25, 0.614],
    [30, 0.541],
    [35, 0.481],
    [40, 0.431],
  ])('at %f °C agrees with the CRC table', (t, thousandth) => {
    const mol_per_L = (solubility(t) * 100) / 101.325;
    const share = mol_per_L / (mol_per_L + waterDensity_kg_per_m3(t) / 18.015);
    // At 0 °C the two series lie 3.1 % apart.
    expect(Math.abs((share * 1000) / thousandth - 1)).toBeLessThan(t === 0 ? 0.032 : 0.03);
  });
  // CRC table at 20 °C over partial pressures: it stays in proportion, as Henry’s law says.
  it.each([
    [5, 0.035],
    [10, 0.071],
    [30, 0.212],
    [50, 0.353],
  ])('at %f kPa is in proportion', (kPa, thousandth) => {
    const x = ((solubility(20) * kPa) / 101.325 / 55.4) * 1000;
    expect(Math.abs(x / thousandth - 1)).toBeLessThan(0.03);
  });
  // Murray and Riley (1971), Deep-Sea Res. 18, 533, Bunsen coefficients (IUPAC–NIST solubility database, system 62_54).
  it.each([
    [1.04, 1.6471],
    [5, 1.4199],
    [10, 1.1926],
    [15, 1.01],
    [20, 0.8652],
    [25, 0.7519],
    [35, 0.5905],
  ])('at %f °C agrees with Murray and Riley', (t, bunsen) => {
    expect(Math.abs((solubility(t) * molarVolume_L) / bunsen - 1)).toBeLessThan(0.01);
  });
});

describe('pressure of a carbonated drink', () => {
  // (V/β − 1)·1.01325 bar with the table’s β; computed apart from this code, 3 % of the absolute pressure.
  it.each([
    [2, 4, 0.36],
    [2.5, 10, 1.11],
    [2.5, 20, 1.9],
    [3, 20, 2.48],
    [4, 25, 4.35],
    [4.5, 37, 7.08],
  ])('%f volumes at %f °C stand at %f bar', (volumes, t, bar) => {
    expect(Math.abs(gaugeOfVolumes_bar(volumes, t) - bar)).toBeLessThan(0.03 * (bar + 1.01325));
  });
  // OIV-MA-AS314-02, ratio of a reading's absolute pressure at t to that at 20 °C, from memory; only from 10 °C up does it follow pure water.
  it.each([
    [10, 1.36],
    [15, 1.16],
    [25, 0.88],
  ])('the ratio of 20 °C to %f °C is the OIV’s', (t, ratio) => {
    const absolute = (at: number) => gaugeOfVolumes_bar(3, at) + 1.01325;
    expect(Math.abs(absolute(20) / absolute(t) / ratio - 1)).toBeLessThan(0.03);
  });
});

describe('a closed vessel', () => {
  function pressure(contents: number, headspace: number, sugar: number, closing: number, at: number) {
    const vessel = {
      contents_mL: millilitres(contents),
      headspace_mL: millilitres(headspace),
      sugar_g_per_L: gramsPerLitre(sugar),
      closing_C: celsius(closing),
    };
    return closedPressure(vessel, celsius(at));
  }
  it('stands at the air’s pressure with no sugar, and rises when it warms', () => {
    expect(pressure(1000, 0, 0, 20, 20).gauge_bar).toBeCloseTo(0, 12);
    expect(pressure(1000, 0, 0, 20, 35).gauge_bar).toBeGreaterThan(0.4);
  });
  it('brim-full, gains a volume for every 3.844 g/L of sucrose', () => {
    // 342.297/(4·22.263) g per real-gas volume, from atomic weights.
    const more = pressure(1000, 0, 3.8438, 20, 20).volumes - pressure(1000, 0, 0, 20, 20).volumes;
    expect(more).toBeCloseTo(1, 4);
  });
  it('keeps the relation of volumes and pressure', () => {
    const found = pressure(1000, 80, 8, 20, 22);
    expect(gaugeOfVolumes_bar(found.volumes, 22)).toBeCloseTo(found.gauge_bar, 9);
  });
  it('loses no gas: liquid and headspace together hold what was made and what was there', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 2000, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (headspace_mL, sugar_g_per_L, t) => {
          const p = pressure(900, headspace_mL, sugar_g_per_L, 18, t).gauge_bar / 1.01325 + 1;
          const gas = (at: number) => headspace_mL / 1000 / (0.082057366 * (at + 273.15));
          const held = p * (solubility(t) * 0.9 + gas(t));
          const there = solubility(18) * 0.9 + gas(18) + (4 * sugar_g_per_L * 0.9) / 342.297;
          expect(held).toBeCloseTo(there, 6);
        },
      ),
    );
  });
  it('throws on a headspace below zero and beyond 45 °C', () => {
    expect(() => pressure(1000, -1, 0, 20, 20)).toThrow(OutOfDomain);
    expect(() => pressure(1000, 0, 0, 20, 60)).toThrow(OutOfDomain);
  });
});
