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
    expect(without.levels[0]).toMatchObject({
      sheet: { sugar: { total_g_per_L: null }, alcohol: { ifAllSugar_pctVol: null } },
      problem: expect.stringContaining('names no base'),
    });
    expect(without.levels[0]?.sheet?.volume_mL).toBeCloseTo(sheet?.volume_mL ?? 0, 9);
  });

  it('knows the owner’s own ingredients', async () => {
    const { ask } = await temporaryDesk();
    await ask('pantry:save', { name: 'quince paste', kind: 'fruit', water_g: 30, sugars_g: 60 });
    const { base } = await ask('bases:start', { name: 'B', volume_mL: 3000, sugarStart_g_per_L: 50 });
    const held = { ...daysPlan.held, additions: [{ ingredient: 'Quince paste', mass_g: 50, state: 'fresh' as const }] };
    const { trial } = await ask('trials:save', { ...daysPlan, base, held });
    expect((await ask('sheets:ofTrial', { trial })).levels[0]?.sheet?.sugar.added_g).toBeCloseTo(30, 9);
  });

  it('names the allergens of the owner’s own, and asks for what nobody said it is made of', async () => {
    const { ask } = await temporaryDesk();
    await ask('pantry:save', { name: 'nut paste', kind: 'other', water_g: 40, sugars_g: 20, allergens: ['nuts'] });
    await ask('pantry:save', { name: 'mystery root', kind: 'root' });
    const withOne = async (ingredient: string) => {
      const held = { ...daysPlan.held, additions: [{ ingredient, mass_g: 50, state: 'fresh' as const }] };
      const { trial } = await ask('trials:save', { ...daysPlan, held });
      return (await ask('sheets:ofTrial', { trial })).levels[0];
    };
    const cautions = (await withOne('nut paste'))?.sheet?.cautions;
    expect(cautions?.find(({ code }) => code === 'allergens')?.message).toContain('nuts');
    expect(await withOne('mystery root')).toMatchObject({
      sheet: null,
      problem: expect.stringContaining('“mystery root” is made of'),
    });
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
    // The band holds its curve, and the curve its readings' fall.
    for (const { value, low, high } of first?.fall?.curve ?? []) {
      expect(low).toBeLessThanOrEqual(value);
      expect(high).toBeGreaterThanOrEqual(value);
    }
  });

  it('marks what was seen and done, and counts the time stood until the pull as hours at 22 °C', async () => {
    const { ask } = await temporaryDesk();
    const { trial, jars } = await ask('trials:save', daysPlan);
    const [a = '', b = '', c = ''] = jars.map(({ id }) => id);
    const start = Date.parse('2026-04-25T08:00:00Z');
    const at = (hours: number) => new Date(start + hours * 3_600_000).toISOString();
    await ask('jars:start', { jars: [a, b], at: at(0) });
    await ask('sightings:log', { jar: a, at: at(9), what: 'first-bubbles' });
    await ask('readings:log', { jar: a, at: at(24), temperature_C: 18 });
    await ask('jars:pull', { jars: [a, b], at: at(48) });
    await ask('readings:log', { jar: a, at: at(60), temperature_C: 5 });
    const [first, second, third] = (await ask('course:read', { trial })).jars;
    expect(first?.events.map(({ hours, what }) => [hours, what])).toEqual([
      [9, 'first-bubbles'],
      [48, 'pulled'],
    ]);
    // 48 h at 18 °C; the cold reading after the pull counts nothing.
    expect(first?.stood).toMatchObject({ hours: 48, from: 'readings' });
    expect(first?.stood?.equivalent.middle).toBeGreaterThan(48 * 0.6);
    expect(first?.stood?.equivalent.high).toBeLessThan(48 * 0.75);
    // Nobody read jar B's temperature: the plan's 22 °C stands for it.
    expect(second?.stood).toMatchObject({ hours: 48, from: 'plan' });
    expect(second?.stood?.equivalent.middle).toBeCloseTo(48, 6);
    expect(third).toMatchObject({ label: 'C', stood: null, events: [] });
    expect(c).not.toBe('');
  });

  it('holds a kombucha’s pH against its own guidance', async () => {
    const { ask } = await temporaryDesk();
    const { culture } = await ask('cultures:save', { name: 'Old one', kind: 'Kombucha' });
    const { base } = await ask('bases:start', { name: 'B', culture, volume_mL: 3000 });
    const { trial, jars } = await ask('trials:save', { ...daysPlan, base });
    await ask('jars:start', { jars: jars.map(({ id }) => id) });
    await ask('readings:log', { jar: jars[0]?.id ?? '', ph: 4.4 });
    const [first] = (await ask('course:read', { trial })).jars;
    expect(first?.cautions.map(({ code }) => code)).toEqual(['ph-guidance']);
  });
});

describe('sheets:ofJar', () => {
  const kept = { name: 'B', volume_mL: 3000, sugarNow_g_per_L: 40, sugarStart_g_per_L: 60, alcohol_pctVol: 0.3 };

  it('gives one jar its sheet, with where base and room come from', async () => {
    const { ask } = await temporaryDesk();
    const { base } = await ask('bases:start', kept);
    const { trial, jars } = await ask('trials:save', { ...daysPlan, base });
    const found = await ask('sheets:ofJar', { jar: jars[0]?.id ?? '' });
    expect(found).toMatchObject({
      problem: null,
      room: { temperature_C: 22, from: 'plan' },
      base: { name: 'B', sugar: { g_per_L: 40, from: 'now' }, alcohol: { pctVol: 0.3, from: 'given' } },
      isClosed: false,
      closing: null,
      cold: null,
    });
    expect(found.sheet).toEqual((await ask('sheets:ofTrial', { trial })).levels[0]?.sheet);
  });

  it('counts what a base holds by its own start and present sugar, where nobody gave its alcohol', async () => {
    const { ask } = await temporaryDesk();
    const { alcohol_pctVol: _, ...bare } = kept;
    const { base } = await ask('bases:start', bare);
    const { jars } = await ask('trials:save', { ...daysPlan, base });
    const found = await ask('sheets:ofJar', { jar: jars[0]?.id ?? '' });
    // 20 g/L of sucrose are gone: 4 × 46.068 / 342.297 of it is ethanol, of 789.2391 g/L (OIML R 22): 1.3642 % vol.
    expect(found.base?.alcohol).toEqual({ pctVol: expect.closeTo(1.3642, 3), from: 'fermented' });
    expect(found.sheet?.alcohol.sugarLeftToHalfPercent_g_per_L).toBe(0);
    const given = await temporaryDesk();
    const none = await given.ask('bases:start', { ...kept, alcohol_pctVol: 0 });
    const plain = await given.ask('trials:save', { ...daysPlan, base: none.base });
    const without = await given.ask('sheets:ofJar', { jar: plain.jars[0]?.id ?? '' });
    const more = (found.sheet?.alcohol.ifAllSugar_pctVol ?? 0) - (without.sheet?.alcohol.ifAllSugar_pctVol ?? 0);
    const share = daysPlan.baseEach_mL / (found.sheet?.volume_mL ?? 1);
    expect(more).toBeCloseTo(1.3642 * share, 3);
  });

  it('never takes an unknown sugar for none', async () => {
    const { ask } = await temporaryDesk();
    const { jars } = await ask('trials:save', daysPlan);
    const found = await ask('sheets:ofJar', { jar: jars[0]?.id ?? '' });
    expect(found).toMatchObject({ base: null, sheet: { sugar: { added_g: expect.closeTo(3.315, 3), brix: null } } });
    expect(found.sheet?.reasons.map(({ code }) => code)).toEqual(['base-sugar-unknown', 'base-sugar-unknown']);
  });

  it('reckons a closed bottle from all its sugar, then from the last reading, or from what is asked', async () => {
    const { ask } = await temporaryDesk();
    const { base } = await ask('bases:start', kept);
    const vessel = { kind: 'swing-top' as const, capacity_mL: 1000 };
    const { cover: _, ...held } = daysPlan.held;
    const { jars } = await ask('trials:save', { ...daysPlan, base, vessel, held });
    const jar = jars[0]?.id ?? '';
    const first = await ask('sheets:ofJar', { jar });
    expect(first).toMatchObject({ isClosed: true, closing: { from: 'start' } });
    expect(first.closing?.sugar_g_per_L).toBe(first.sheet?.sugar.total_g_per_L);
    await ask('jars:start', { jars: [jar] });
    await ask('readings:log', { jar, brix: 1 });
    const read = await ask('sheets:ofJar', { jar });
    // 1 °Bx is 10.02 g/L at 20 °C (ICUMSA density 1002.1 kg/m³, computed).
    expect(read.closing).toEqual({ sugar_g_per_L: expect.closeTo(10.02, 1), from: 'reading' });
    expect(read.sheet?.carbonation?.gauge_bar.ambient).toBeLessThan(first.sheet?.carbonation?.gauge_bar.ambient ?? 0);
    const asked = await ask('sheets:ofJar', { jar, sealedWithSugar_g_per_L: 0 });
    expect(asked.sheet?.carbonation?.gauge_bar.ambient).toBeCloseTo(0, 9);
    expect(asked.sheet?.cautions.map(({ code }) => code)).toContain('vessel-unrated');
  });

  it('calibrates a cold start by two of the jar’s own readings and says what it explains of a slow one', async () => {
    const { ask } = await temporaryDesk();
    const { base } = await ask('bases:start', kept);
    const { jars } = await ask('trials:save', {
      ...daysPlan,
      base,
      factor: 'state',
      control: 'fresh',
      levels: [
        { name: 'fresh', state: 'fresh' },
        { name: 'frozen', state: 'frozen' },
      ],
      held: { ...daysPlan.held, days: 2, additions: [{ ingredient: 'raspberries', mass_g: 100, state: 'fresh' }] },
    });
    const idOf = (level: string) => jars.find((one) => one.level === level)?.id ?? '';
    const start = Date.parse('2026-04-25T08:00:00Z');
    const at = (hours: number) => new Date(start + hours * 3_600_000).toISOString();
    await ask('jars:start', { jars: jars.map(({ id }) => id), at: at(0) });
    expect((await ask('sheets:ofJar', { jar: idOf('fresh') })).cold).toBeNull();
    const still = await ask('sheets:ofJar', { jar: idOf('frozen') });
    expect(still.cold).toMatchObject({ coefficient_W_per_m2K: 8, own: null, slowStart: null });

    await ask('readings:log', { jar: idOf('frozen'), at: at(1), temperature_C: 12 });
    await ask('readings:log', { jar: idOf('frozen'), at: at(5), temperature_C: 17 });
    await ask('sightings:log', { jar: idOf('fresh'), at: at(9), what: 'first-bubbles' });
    await ask('sightings:log', { jar: idOf('frozen'), at: at(26), what: 'first-bubbles' });
    const own = await ask('sheets:ofJar', { jar: idOf('frozen') });
    expect(own.cold?.own?.timeConstant_h.middle).toBeCloseTo(4 / Math.log(2), 9);
    // A jar that warms more slowly than still air's has the smaller coefficient, in the same proportion as its hours.
    const ratio =
      (own.sheet?.thaw?.hoursToWithinOneDegree ?? 0) / (still.sheet?.thaw?.hoursToWithinOneDegree ?? Number.NaN);
    expect(8 / (own.cold?.coefficient_W_per_m2K ?? 0)).toBeCloseTo(ratio, 6);
    expect(own.cold?.slowStart).toMatchObject({ against: 'A', late_h: 17 });
    expect(own.cold?.slowStart?.sentence).toMatch(
      /^Of 17 h, the cold explains about .* h; the rest is not temperature\.$/,
    );
    expect(own.cold?.slowStart?.rest_h.low).toBeGreaterThan(5);
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
