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

describe('what ferment:convert says when it can’t', () => {
  const { input } = fermentRequests['ferment:convert'];
  const said = (strength: object) => {
    const [issue] = input.safeParse(strength).error?.issues ?? [];
    return { path: issue?.path, message: issue?.message };
  };
  it('names the two strengths that were given, at the second', () => {
    expect(said({ brix: 10, sg: 1.04 })).toEqual({
      path: ['sg'],
      message: 'one strength is enough, and this gives brix and sg; give only one of brix, sg, sugar_g_per_L',
    });
    expect(said({ brix: 10, sg: 1.04, sugar_g_per_L: 5 }).message).toContain('brix, sg and sugar_g_per_L');
    expect(said({}).message).toBe('give one of brix, sg, sugar_g_per_L');
  });
  it('speaks of SG in SG, of grams in grams, each with its permitted range', () => {
    // Saturated sucrose at 20 °C holds 66.6 % (Charles 1960, from memory); half a degree more is let through.
    expect(said({ sg: 1.5 })).toMatchObject({ path: ['sg'], message: expect.stringMatching(/permitted: 1 to 1\.33/) });
    expect(said({ sg: 0.998 }).message).toMatch(/holds alcohol.*permitted: 1 to 1\.33/);
    expect(said({ sugar_g_per_L: 2000 }).message).toMatch(/dissolves at 20 °C; permitted: 0 to 89\d/);
    expect(said({ sugar_g_per_L: -1 }).message).toMatch(/negative; permitted: 0 to/);
    expect(said({ brix: 70 }).message).toMatch(/permitted: 0 to 67\.1/);
    expect(said({ sg: 1.5, temperature_C: 60 }).message).toContain('at 60 °C');
    for (const strength of [{ sg: 1.5 }, { sg: 0.99 }]) expect(said(strength).message).not.toMatch(/brix/i);
  });
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
