import { describe, expect, it } from 'vitest';
import { coldStart } from '#core/ferment/cold-start.ts';
import type { JarInput } from '#core/ferment/jar-input.ts';
import { jarSheet } from '#core/ferment/jar-sheet.ts';
import { resolveAddition } from '#core/ferment/resolve-addition.ts';

const ice = { name: 'ice', water_g: 100, sugars_g: 0 };
const jar: JarInput = {
  vessel: { kind: 'open-jar', capacity_mL: 1000, diameter_mm: 100 },
  base: { volume_mL: 900, temperature_C: 22, sugar_g_per_L: 0 },
  additions: [{ ingredient: ice, mass_g: 100, state: 'frozen' }],
  ambient_C: 22,
};

describe('coldStart', () => {
  it('warms through wall, bottom and top at 8 W/(m²·K), worked by hand', () => {
    const found = jarSheet(jar).thaw;
    // A cylinder 10 cm wide holding 1000.4 mL: 2·78.54 cm² of ends and 400.2 cm² of wall, 0.0557 m²; 998.6 g of water at 4.185 kJ/(kg·K).
    const timeConstant_h = (0.9986 * 4.185 * 1000) / (8 * 0.05573) / 3600;
    const gap = 22 - (found?.mix_C ?? 0);
    expect(found?.mix_C).toBeCloseTo(10.95, 1);
    expect(Math.abs((found?.hoursToWithinOneDegree ?? 0) / (timeConstant_h * Math.log(gap)) - 1)).toBeLessThan(0.01);
  });
  it('takes the jar’s own time constant where it was measured', () => {
    const additions = [resolveAddition(jar.additions[0] ?? { ingredient: ice, mass_g: 0, state: 'frozen' }, 22)].filter(
      (one) => one !== null,
    );
    const slow = coldStart(jar, additions, 1000, 4);
    expect(slow.hoursToWithinOneDegree).toBeCloseTo(4 * Math.log(22 - slow.mix_C), 1);
  });
  it('warms a flat or a slender jar sooner than one as tall as wide', () => {
    const hours = (diameter_mm: number) =>
      jarSheet({ ...jar, vessel: { ...jar.vessel, diameter_mm } }).thaw?.hoursToWithinOneDegree ?? 0;
    expect(hours(200)).toBeLessThan(hours(108));
    expect(hours(60)).toBeLessThan(hours(108));
  });
  it('counts lost hours at 22 °C, fewer than it takes to warm', () => {
    const lost = jarSheet(jar).thaw?.lostEquivalentHours;
    expect(lost?.reference_C).toBe(22);
    expect(lost?.low).toBeGreaterThan(1);
    expect(lost?.high).toBeLessThan(jarSheet(jar).thaw?.hoursToWithinOneDegree ?? 0);
  });
  it('costs nothing that yeast would have used in a room where it stands still', () => {
    const cold = jarSheet({ ...jar, ambient_C: 1, base: { ...jar.base, temperature_C: 1 } });
    expect(cold.thaw?.lostEquivalentHours.high).toBeCloseTo(0, 9);
  });
});
