import { describe, expect, it } from 'vitest';
import { equivalentHours } from '#core/ferment/equivalent-hours.ts';
import type { JarInput } from '#core/ferment/jar-input.ts';
import { jarSheet } from '#core/ferment/jar-sheet.ts';
import { sugarSolution } from '#core/ferment/sugar-solution.ts';

// Facts of the trade, each common practice, no source: a first ferment of about two days; a second with fruit of one to three days, 50 to
// 150 g/L of crushed fruit with room for it and for froth; a resting culture kept cold in sugar water of 5 to 6 %, refreshed about every
// two weeks; frozen fruit starts later than fresh; an open cover gives a little more vinegar than an airlock.

/** A second ferment as a kitchen sets it up: 800 mL of a base two days old in a litre jar. */
function secondFerment(perLitre_g: number, state: 'fresh' | 'frozen'): JarInput {
  return {
    vessel: { kind: 'open-jar', capacity_mL: 1000 },
    base: { volume_mL: 780, temperature_C: 22, sugar_g_per_L: 35, alcohol_pctVol: 0.4 },
    additions: [
      {
        ingredient: state === 'fresh' ? 'strawberries' : 'strawberries, frozen',
        mass_g: perLitre_g * 0.78,
        state,
      },
    ],
    ambient_C: 22,
  };
}

function expectWithin(value: number | null | undefined, low: number, high: number, line: string): void {
  expect(value, line).not.toBeNull();
  expect(value, line).toBeGreaterThanOrEqual(low);
  expect(value, line).toBeLessThanOrEqual(high);
}

describe('the sheet of a jar as the trade makes it', () => {
  it.each([50, 75, 100, 125, 150])('is sensible on every line with %d g/L of fresh crushed fruit', (perLitre_g) => {
    const input = secondFerment(perLitre_g, 'fresh');
    const sheet = jarSheet(input);
    expectWithin(sheet.volume_mL, 815, 900, 'volume_mL: base, and fruit about as dense as water');
    expectWithin(sheet.fillFraction, 0.815, 0.9, 'fillFraction: a tenth left for froth');
    expectWithin(sheet.headspace_mL, 100, 185, 'headspace_mL');
    // Strawberries hold about 5 % sugar: 39 to 117 g bring 2 to 6 g.
    expectWithin(sheet.sugar.added_g, 1.8, 6, 'added_g');
    expectWithin(sheet.sugar.total_g_per_L, 34, 39, 'total_g_per_L: fruit this lean hardly sweetens');
    expectWithin(sheet.sugar.brix, 3.3, 3.9, 'brix');
    expectWithin(sheet.sugar.sg, 1.012, 1.016, 'sg');
    expectWithin(sheet.alcohol.ifAllSugar_pctVol, 2.6, 3.1, 'ifAllSugar_pctVol');
    expectWithin(sheet.alcohol.ifYeastYield_pctVol, 2.3, sheet.alcohol.ifAllSugar_pctVol ?? 0, 'ifYeastYield_pctVol');
    expectWithin(sheet.alcohol.sugarLeftToHalfPercent_g_per_L, 1.4, 2.3, 'sugarLeftToHalfPercent_g_per_L');
    expect(sheet.carbonation, 'nothing is closed').toBeNull();
    expect(sheet.thaw, 'nothing is frozen').toBeNull();
    expect(sheet.reasons).toEqual([]);
    expect(sheet.cautions.map(({ code }) => code)).toEqual(['alcohol-line', 'mould', 'ph-measure', 'live-drink']);
  });

  it.each([50, 100, 150])('starts later with %d g/L frozen than fresh, by hours and not by days', (perLitre_g) => {
    const frozen = jarSheet(secondFerment(perLitre_g, 'frozen'));
    expect(jarSheet(secondFerment(perLitre_g, 'fresh')).thaw).toBeNull();
    expectWithin(frozen.thaw?.mix_C, 4, 18, 'mix_C');
    expectWithin(frozen.thaw?.ice_g, 0, 0, 'ice_g: so much base melts it all');
    expectWithin(frozen.thaw?.hoursToWithinOneDegree, 2, 9, 'hoursToWithinOneDegree');
    expectWithin(frozen.thaw?.lostEquivalentHours.low, 0.5, 4, 'lostEquivalentHours.low');
    expectWithin(
      frozen.thaw?.lostEquivalentHours.high,
      frozen.thaw?.lostEquivalentHours.low ?? 0,
      5,
      'lostEquivalentHours.high',
    );
  });

  it('presses hard in a bottle closed after two days, and harder on a warm day', () => {
    const sheet = jarSheet({
      ...secondFerment(100, 'fresh'),
      vessel: { kind: 'swing-top', capacity_mL: 950 },
      sealedWithSugar_g_per_L: 8,
    });
    expectWithin(sheet.carbonation?.volumes, 2, 3.5, 'volumes');
    expectWithin(sheet.carbonation?.gauge_bar.ambient, 1.5, 3, 'gauge at 22 °C');
    expectWithin(sheet.carbonation?.gauge_bar.at35, 2.2, 4.2, 'gauge at 35 °C');
    expect(sheet.cautions[0]?.code).toBe('vessel-unrated');
  });

  it('counts one to three days at 22 °C as themselves, and a cooler kitchen as fewer hours', () => {
    for (const days of [1, 2, 3]) {
      const at = (temperature_C: number) => equivalentHours([{ hours: 24 * days, temperature_C }]);
      expect(at(22).middle).toBeCloseTo(24 * days, 9);
      expectWithin(at(18).middle, 24 * days * 0.55, 24 * days * 0.8, `${days} days at 18 °C`);
    }
  });

  it('slows a culture resting in the cold to a tenth of its pace or less: two weeks are about a day', () => {
    const rest = equivalentHours([{ hours: 14 * 24, temperature_C: 4 }]);
    expectWithin(rest.low, 0, 10, 'low');
    expectWithin(rest.high, 1, 34, 'high');
  });

  it('takes sugar water of 5 to 6 % for what it is', () => {
    expectWithin(sugarSolution({ brix: 5 }).sugar_g_per_L, 50, 52, '5 %');
    expectWithin(sugarSolution({ brix: 6 }).sugar_g_per_L, 60, 62.5, '6 %');
    expectWithin(sugarSolution({ brix: 5.5 }).sg, 1.02, 1.023, 'SG of 5.5 %');
  });

  it('lets the cover change no line: vinegar comes with air and cannot be worked out, so pH is to be measured', () => {
    const open = jarSheet(secondFerment(100, 'fresh'));
    const lidded = jarSheet({
      ...secondFerment(100, 'fresh'),
      vessel: { kind: 'lidded-jar', capacity_mL: 1000, ratedGauge_bar: 3 },
    });
    const { cautions, ...figures } = open;
    expect(lidded).toMatchObject(figures);
    expect(cautions.find(({ code }) => code === 'ph-measure')?.message).toContain('cannot be worked out beforehand');
  });
});
