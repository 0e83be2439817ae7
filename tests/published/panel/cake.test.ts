import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analysePanel } from '#core/panel/analyse.ts';

interface Cake {
  taster: number[];
  temperature: number[];
  angle: number[];
  f: number;
  df2: number;
  varTaster: number;
  varError: number;
  linear: [estimate: number, error: number, df: number, p: number];
  quadratic: [estimate: number, error: number, df: number, p: number];
}
// Cook's chocolate cakes as an ordered panel with repeats; data and lmerTest's answers come from fixtures/cake.R.
const cake: Cake = JSON.parse(readFileSync(new URL('./fixtures/cake.json', import.meta.url), 'utf8'));

describe('cake (Cook 1938): fifteen replicates as tasters, six temperatures, three recipes as repeats', () => {
  const scores = cake.taster.map((taster, index) => ({
    taster: `${taster}`,
    sample: `${cake.temperature[index]}`,
    attribute: 'angle',
    score: cake.angle[index] ?? 0,
  }));
  const levels = Object.fromEntries(cake.temperature.map((level) => [`${level}`, level]));
  const found = analysePanel({ scores, levels }).attributes[0];

  it('test and variances as lmerTest, with the interaction at zero and said so', () => {
    expect((found?.test?.f ?? 0) / cake.f).toBeCloseTo(1, 6);
    expect((found?.test?.dfError ?? 0) / cake.df2).toBeCloseTo(1, 6);
    expect((found?.variances.taster ?? 0) / cake.varTaster).toBeCloseTo(1, 5);
    expect((found?.variances.error ?? 0) / cake.varError).toBeCloseTo(1, 6);
    expect(found?.variances.tasterBySample).toBe(0);
    expect(found?.reasons.map(({ code }) => code)).toContain('interaction-variance-zero');
  });

  it('slope and curvature as lmerTest', () => {
    const [slope, , , slopeP] = cake.linear;
    const [bend, , , bendP] = cake.quadratic;
    expect((found?.trend?.slope ?? 0) / slope).toBeCloseTo(1, 9);
    expect(Math.log((found?.trend?.slopeP ?? 1) / slopeP)).toBeCloseTo(0, 3);
    // lmer loses digits to the size of the squared temperatures.
    expect((found?.trend?.curvature ?? 0) / bend).toBeCloseTo(1, 5);
    expect(found?.trend?.curvatureP).toBeCloseTo(bendP, 4);
  });

  it('the curve has 41 even levels from 175 to 225, its band around it', () => {
    const curve = found?.trend?.curve ?? [];
    expect(curve.map(({ level }) => level)).toEqual(Array.from({ length: 41 }, (_, index) => 175 + 1.25 * index));
    for (const { fit, low, high } of curve) expect(low !== null && high !== null && low < fit && fit < high).toBe(true);
  });
});
