import { describe, expect, it } from 'vitest';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { daysPlan } from './example-trial.ts';

describe('sheets:ofTrial', () => {
  it('gives each level’s jar its sheet from the trial’s own base; a plan without one says what is missing', async () => {
    const { ask } = await temporaryDesk();
    const { base } = await ask('bases:start', {
      name: 'B',
      volume_mL: 3000,
      sugarStart_g_per_L: 60,
      sugarNow_g_per_L: 40,
      temperature_C: 21,
      alcohol_pctVol: 0.3,
    });
    const { trial } = await ask('trials:save', { ...daysPlan, base });
    const { levels } = await ask('sheets:ofTrial', { trial });
    const sheet = levels[0]?.sheet;
    // 800 mL of base with 40 g/L and 75 g of raspberries with 4.42 g per 100 g (USDA SR28): 32 + 3.3 g in some 874 mL.
    expect(sheet?.sugar.added_g).toBeCloseTo(3.315, 3);
    expect(sheet?.sugar.total_g_per_L).toBeCloseTo((32 + 3.315) / ((sheet?.volume_mL ?? 0) / 1000), 6);
    expect(sheet?.volume_mL).toBeGreaterThan(870);
    expect(sheet?.alcohol.ifAllSugar_pctVol).toBeGreaterThan(0.3);
    const bare = await ask('trials:save', daysPlan);
    const without = await ask('sheets:ofTrial', { trial: bare.trial });
    expect(without.levels[0]).toMatchObject({ sheet: null, problem: expect.stringContaining('names no base') });
  });

  it('knows the owner’s own ingredients', async () => {
    const { ask } = await temporaryDesk();
    await ask('pantry:save', { name: 'quince paste', kind: 'fruit', water_g: 30, sugars_g: 60 });
    const { base } = await ask('bases:start', { name: 'B', volume_mL: 3000, sugarStart_g_per_L: 50 });
    const held = { ...daysPlan.held, additions: [{ ingredient: 'Quince paste', mass_g: 50, state: 'fresh' as const }] };
    const { trial } = await ask('trials:save', { ...daysPlan, base, held });
    expect((await ask('sheets:ofTrial', { trial })).levels[0]?.sheet?.sugar.added_g).toBeCloseTo(30, 9);
  });
});

describe('course:read', () => {
  it('puts readings on hours, fits the fall from four on, and says when a sweetness is reached', async () => {
    const { ask } = await temporaryDesk();
    const { trial, jars } = await ask('trials:save', daysPlan);
    const [a = '', b = ''] = jars.map(({ id }) => id);
    await ask('jars:start', { jars: [a, b], at: '2026-04-25T08:00:00Z' });
    // A first-order fall from 8 °Bx that halves every 24 hours.
    for (const hours of [0, 12, 24, 36, 48, 60]) {
      const at = new Date(Date.parse('2026-04-25T08:00:00Z') + hours * 3_600_000).toISOString();
      await ask('readings:log', {
        jar: a,
        at,
        brix: Number((8 * 0.5 ** (hours / 24)).toFixed(2)),
        ph: 3.5,
        temperature_C: 22,
      });
    }
    await ask('readings:log', { jar: b, at: '2026-04-26T08:00:00Z', sg: 1.02 });
    const course = await ask('course:read', { trial, wanted_brix: 3 });
    const [first, second] = course.jars;
    expect(first?.brix.map(({ hours }) => hours)).toEqual([0, 12, 24, 36, 48, 60]);
    expect(first?.fall?.model).toBe('first-order');
    // 8 · 2^(−t/24) = 3 at t = 24 · log2(8/3) = 33.96 hours.
    expect(first?.sweetEnough?.hours).toBeCloseTo(33.96, 1);
    expect(first?.equivalentHours?.middle).toBeCloseTo(60, 6);
    expect(second?.brix[0]?.value).toBeCloseTo(5.09, 1);
    expect(second?.fall).toBeNull();
    expect(second?.reasons[0]).toMatchObject({ code: 'too-few-readings' });
  });
});

describe('pantry:stock', () => {
  it('keeps what is on hand and its price under the pantry’s own name', async () => {
    const { ask, fail } = await temporaryDesk();
    expect(await ask('pantry:stock', { name: 'Raspberries, raw', onHand_g: 500 })).toEqual({
      name: 'raspberries',
      onHand_g: 500,
      price_per_kg: null,
      price_per_L: null,
    });
    await ask('pantry:stock', { name: 'raspberries', price_per_kg: 12.5 });
    const row = (await ask('pantry:list', {})).ingredients.find(({ name }) => name === 'raspberries');
    expect(row).toMatchObject({
      onHand_g: 500,
      price_per_kg: 12.5,
      fdcId: 167755,
      measures: [{ unit: 'cup', form: null, mass_g: 123 }],
    });
    expect(await fail('pantry:stock', { name: 'moon dust', onHand_g: 5 })).toMatchObject({
      code: 'not-found',
      path: ['name'],
    });
    expect(await fail('pantry:stock', { name: 'raspberries', onHand_g: -5 })).toMatchObject({ code: 'invalid-input' });
  });
});
