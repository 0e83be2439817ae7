import { describe, expect, it } from 'vitest';
import { closedAtStart } from '#core/ferment/closed-at-start.ts';
import type { JarInput } from '#core/ferment/jar-input.ts';
import { jarSheet } from '#core/ferment/jar-sheet.ts';
import { cautionsOfSheets } from '#renderer/parts/caution/cautions-of-sheets.ts';

const jar: JarInput = {
  vessel: { kind: 'open-jar', capacity_mL: 1000 },
  base: { volume_mL: 800, temperature_C: 22, sugar_g_per_L: 30 },
  additions: [{ ingredient: 'raspberries', mass_g: 50, state: 'fresh' }],
  ambient_C: 22,
};
const level = (name: string, change: Partial<JarInput> = {}) => ({
  level: name,
  sheet: jarSheet({ ...jar, ...change }),
});
const honey: JarInput['additions'] = [{ ingredient: 'honey', mass_g: 40, state: 'liquid' }];

describe('cautionsOfSheets(levels, vessel)', () => {
  it('says each code once; with the level it weighs most on where figures differ', () => {
    const found = cautionsOfSheets([level('fruit'), level('honey', { additions: honey })], jar.vessel);
    const codes = found.map(({ code }) => code);
    expect(new Set(codes).size).toBe(codes.length);
    const of = (code: string) => found.find((one) => one.code === code)?.message;
    expect(of('alcohol-line')).toMatch(/^The most in “honey”: Could pass/);
    expect(of('honey-infants')).toMatch(/^In “honey”: Holds honey/);
    expect(of('mould')).toMatch(/^Mould is/);
  });
  it('keeps the vessel’s own cautions where no sheet can be worked out', () => {
    const codes = cautionsOfSheets([{ level: 'x', sheet: null }], { kind: 'swing-top', capacity_mL: 1000 });
    expect(codes.map(({ code }) => code)).toEqual(['vessel-unrated', 'mould']);
  });
});

describe('closedAtStart(input, cover)', () => {
  const bottle = (ratedGauge_bar?: number): JarInput => ({
    ...jar,
    vessel: { kind: 'swing-top', capacity_mL: 1000, ...(ratedGauge_bar === undefined ? {} : { ratedGauge_bar }) },
  });
  const codes = (input: JarInput, cover: string | null) =>
    jarSheet(closedAtStart(input, cover)).cautions.map(({ code }) => code);
  it('holds a rated bottle against all the sugar it starts with', () => {
    expect(codes(bottle(6), null)).toContain('pressure-above-rating');
    expect(codes(bottle(), null)).toEqual(expect.arrayContaining(['vessel-unrated', 'pressure-glass-limit']));
  });
  it('lets cloth and airlock pass the gas, and leaves an unknown sugar unknown', () => {
    expect(closedAtStart(bottle(6), 'airlock').sealedWithSugar_g_per_L).toBeUndefined();
    expect(closedAtStart(jar, 'lid').sealedWithSugar_g_per_L).toBeUndefined();
    const unknown = { ...bottle(6), base: { ...jar.base, sugar_g_per_L: null } };
    expect(closedAtStart(unknown, null).sealedWithSugar_g_per_L).toBeUndefined();
  });
});
