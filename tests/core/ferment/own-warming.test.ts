import { describe, expect, it } from 'vitest';
import { coldDoubt } from '#core/ferment/cold-doubt.ts';
import { stillAirTimeConstant_h } from '#core/ferment/cold-start.ts';
import type { JarInput } from '#core/ferment/jar-input.ts';
import { jarSheet } from '#core/ferment/jar-sheet.ts';
import { ownWarming } from '#core/ferment/own-warming.ts';

const log = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([hours, temperature_C]) => ({ hours, temperature_C }));

describe('ownWarming(readings, ambient)', () => {
  it('is Newton’s law between two readings, with the doubt of half a degree in each, worked by hand', () => {
    const found = ownWarming(log([0, 10], [2, 16]), 22);
    expect(found?.timeConstant_h.middle).toBeCloseTo(2 / Math.log(12 / 6), 9);
    expect(found?.timeConstant_h.low).toBeCloseTo(2 / Math.log(12.5 / 5.5), 9);
    expect(found?.timeConstant_h.high).toBeCloseTo(2 / Math.log(11.5 / 6.5), 9);
  });
  it('takes the two readings between which most was warmed, in whatever order they come', () => {
    const found = ownWarming(log([6, 20], [1, 9], [3, 15], [30, 22]), 22);
    expect([found?.first.hours, found?.second.hours]).toEqual([1, 6]);
  });
  it('works for a jar that cools', () => {
    expect(ownWarming(log([0, 34], [2, 28]), 22)?.timeConstant_h.middle).toBeCloseTo(2 / Math.log(2), 9);
  });
  it.each([
    ['one reading', log([0, 10])],
    ['readings at one moment', log([1, 10], [1, 14])],
    ['a jar as warm as the room', log([0, 21], [5, 21.5])],
    ['a second reading too near the room', log([0, 10], [20, 21.8])],
    ['a second reading past the room', log([0, 10], [20, 24])],
    ['a jar that did not warm', log([0, 10], [3, 10.4])],
    ['a jar full of ice', log([0, 0], [1, 5])],
    ['readings before the start', log([-3, 5], [-1, 12])],
  ])('finds none in %s', (_what, readings) => {
    expect(ownWarming(readings, 22)).toBeNull();
  });
  it('leaves the far end open where half a degree each would undo the warming', () => {
    expect(ownWarming(log([0, 15], [2, 16]), 22)?.timeConstant_h.high).toBeNull();
  });
});

describe('a cold start with its own warming', () => {
  const jar: JarInput = {
    vessel: { kind: 'open-jar', capacity_mL: 1000, diameter_mm: 100 },
    base: { volume_mL: 900, temperature_C: 22, sugar_g_per_L: 0 },
    additions: [{ ingredient: { name: 'ice', water_g: 100, sugars_g: 0 }, mass_g: 100, state: 'frozen' }],
    ambient_C: 22,
  };
  it('has the still-air time constant of its surface, worked by hand', () => {
    // The cylinder of cold-start.test.ts: 0.05573 m² and 998.6 g of water at 4.185 kJ/(kg·K).
    const hand = (0.9986 * 4.185 * 1000) / (8 * 0.05573) / 3600;
    expect(Math.abs(stillAirTimeConstant_h(jar) / hand - 1)).toBeLessThan(0.005);
  });
  it('is the still-air one when its own time constant is that of still air', () => {
    const still = jarSheet(jar).thaw;
    const own = jarSheet(jar, stillAirTimeConstant_h(jar)).thaw;
    expect(own?.hoursToWithinOneDegree).toBeCloseTo(still?.hoursToWithinOneDegree ?? 0, 9);
    const slow = jarSheet(jar, 2 * stillAirTimeConstant_h(jar)).thaw;
    expect(slow?.hoursToWithinOneDegree).toBeCloseTo(2 * (still?.hoursToWithinOneDegree ?? 0), 9);
    expect(slow?.lostEquivalentHours.high).toBeCloseTo(2 * (still?.lostEquivalentHours.high ?? 0), 9);
  });
  it('is in doubt by 5 to 12 W/(m²·K) in still air, by its thermometer where measured', () => {
    const cold = jarSheet(jar).thaw;
    if (cold === null) throw new Error('something is frozen');
    const still = coldDoubt(cold, null).hoursToWithinOneDegree;
    expect(still.low).toBeCloseTo((cold.hoursToWithinOneDegree * 8) / 12, 9);
    expect(still.high).toBeCloseTo((cold.hoursToWithinOneDegree * 8) / 5, 9);
    const own = coldDoubt(cold, { low: 2, middle: 2.5, high: null });
    expect(own.lostEquivalentHours.low).toBeCloseTo(cold.lostEquivalentHours.low * 0.8, 9);
    expect(own.lostEquivalentHours.high).toBeNull();
  });
});
