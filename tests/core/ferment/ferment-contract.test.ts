import { describe, expect, expectTypeOf, it } from 'vitest';
import type { z } from 'zod';
import type { JarInput } from '#core/ferment/jar-input.ts';
import { type JarSheet, jarSheet } from '#core/ferment/jar-sheet.ts';
import { fermentRequests } from '#shared/contract/ferment.ts';

const sheetRequest = fermentRequests['jar:sheet'];
const jar = {
  vessel: { kind: 'swing-top', capacity_mL: 1000 },
  base: { volume_mL: 800, temperature_C: 22, sugar_g_per_L: 40 },
  additions: [{ ingredient: 'Strawberries, frozen, unsweetened', mass_g: 80, state: 'frozen' }],
  ambient_C: 22,
  sealedWithSugar_g_per_L: 8,
};

describe('jar:sheet', () => {
  it('has the core’s own types at both ends', () => {
    expectTypeOf<z.output<typeof sheetRequest.input>>().toExtend<JarInput>();
    expectTypeOf<JarSheet>().toExtend<z.output<typeof sheetRequest.output>>();
  });
  it('takes a jar and gives a sheet of exactly the contract’s shape', () => {
    const sheet = jarSheet(sheetRequest.input.parse(jar));
    expect(sheetRequest.output.parse(sheet)).toEqual(sheet);
  });
  it('refuses with the core’s sentence and the place', () => {
    const bad = sheetRequest.input.safeParse({ ...jar, ambient_C: -300 });
    expect(bad.error?.issues).toMatchObject([
      { path: ['ambient_C'], message: expect.stringContaining('absolute zero') },
    ]);
  });
  it('refuses a member that the contract does not know', () => {
    expect(sheetRequest.input.safeParse({ ...jar, colour: 'red' }).success).toBe(false);
  });
});

describe('ferment:convert', () => {
  const { input } = fermentRequests['ferment:convert'];
  it('takes one strength, at 20 °C unless said otherwise', () => {
    expect(input.parse({ sg: 1.04 })).toEqual({ sg: 1.04, temperature_C: 20 });
  });
  it.each([{ sg: 0.998 }, { brix: 90 }, { brix: 70 }, { sugar_g_per_L: -1 }, { brix: 10, sg: 1.04 }, {}])(
    'refuses %o',
    (strength) => {
      expect(input.safeParse(strength).success).toBe(false);
    },
  );
});

describe('ferment:equivalentHours', () => {
  it('refuses a log that runs backwards, naming the line', () => {
    const log = [
      { hours: 5, temperature_C: 20 },
      { hours: 3, temperature_C: 20 },
    ];
    const bad = fermentRequests['ferment:equivalentHours'].input.safeParse({ log });
    expect(bad.error?.issues[0]?.message).toContain('log[1].hours');
  });
});
