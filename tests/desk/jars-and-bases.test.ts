import { describe, expect, it } from 'vitest';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { daysPlan, preparedTrial } from './example-trial.ts';

describe('jars', () => {
  it('start, are pulled and strained in order; a list changes as a whole or not at all', async () => {
    const { ask, fail, clock, kitchen } = await temporaryDesk();
    const { jars } = await ask('trials:save', daysPlan);
    const [a = '', b = ''] = jars.map(({ id }) => id);
    expect(await fail('jars:pull', { jars: [a] })).toMatchObject({ code: 'refused', path: ['jars', 0] });
    await ask('jars:start', { jars: [a] });
    expect(await fail('jars:start', { jars: [b, a] })).toMatchObject({ code: 'refused', path: ['jars', 1] });
    expect(kitchen.read.one('SELECT count(*) AS n FROM jars WHERE started_at IS NOT NULL')).toEqual({ n: 1 });
    expect(await fail('jars:pull', { jars: [a], at: '2026-04-01T00:00:00Z' })).toMatchObject({ path: ['at'] });
    clock.move(30);
    const pulled = await ask('jars:pull', { jars: [a] });
    expect(pulled.jars[0]).toMatchObject({ state: 'pulled', pulledAt: '2026-05-02T14:00:00.000Z' });
    const page = await ask('jars:open', { jar: a });
    expect(page.question).toBe('How many days?');
    expect(page.formula.days).toBe(1);
    expect(await fail('jars:discard', { jars: [b], reason: '' })).toMatchObject({
      code: 'invalid-input',
      path: ['reason'],
    });
    const gone = await ask('jars:discard', { jars: [b], reason: 'dropped' });
    expect(gone.jars[0]).toMatchObject({ state: 'discarded', discardReason: 'dropped' });
  });

  it('take readings, sightings and sips only while they stand or after; mould discards', async () => {
    const { ask, fail, clock, kitchen } = await temporaryDesk();
    const { jars } = await ask('trials:save', daysPlan);
    const [a = '', b = ''] = jars.map(({ id }) => id);
    expect(await fail('readings:log', { jar: a, brix: 5 })).toMatchObject({ code: 'refused', path: ['jar'] });
    await ask('jars:start', { jars: [a, b] });
    expect(await fail('readings:log', { jar: a })).toMatchObject({ code: 'invalid-input', path: ['brix'] });
    expect(await fail('readings:log', { jar: a, base: b, brix: 5 })).toMatchObject({ path: ['jar'] });
    expect(await fail('readings:log', { jar: a, ph: 15 })).toEqual({
      code: 'invalid-input',
      message: 'ph must be 14 or less.',
      path: ['ph'],
    });
    expect(await fail('sips:log', { jar: a, at: '2026-04-30T08:00:00Z', tang: 3 })).toMatchObject({ path: ['at'] });
    for (const [request, more] of [
      ['readings:log', { brix: 4 }],
      ['sightings:log', { what: 'froth' }],
      ['sips:log', { tang: 3 }],
    ] as const) {
      const next = { jar: a, at: '2027-05-01T08:00:00Z', ...more };
      expect(await fail(request, next), request).toMatchObject({ code: 'refused', path: ['at'] });
    }
    clock.move(20);
    await ask('readings:log', { jar: a, sg: 1.02, acidity: { g_per_L: 3.2, as: 'acetic' } });
    const { sip } = await ask('sips:log', { jar: a, tang: 3, liking: 6 });
    await ask('sightings:log', { jar: b, what: 'mould', note: 'blue spot' });
    expect((await ask('jars:open', { jar: b })).jar).toMatchObject({ state: 'discarded', discardReason: 'mould' });
    expect(await fail('sips:log', { jar: b, tang: 3 })).toMatchObject({ code: 'refused' });
    const sips = await ask('sips:byTrial', { trial: (await ask('jars:open', { jar: a })).jar.trial });
    expect(sips.sips).toMatchObject([{ label: 'A', levelName: '1 day', tang: 3, fizz: null, liking: 6 }]);
    expect(sips.sips[0]?.day).toBeCloseTo(20 / 24, 9);
    await ask('entries:remove', { kind: 'sip', id: sip });
    expect(kitchen.read.all('SELECT id FROM sips')).toEqual([]);
    await ask('undo:last', {});
    expect(kitchen.read.all('SELECT id FROM sips')).toEqual([{ id: sip }]);
  });
});

describe('bases', () => {
  it('are started, allotted to jars, strained; never allotted beyond their volume', async () => {
    const { ask, fail, kitchen, clock } = await temporaryDesk();
    const { culture } = await ask('cultures:save', { name: 'Old mother', kind: 'kombucha mother', weight_g: 200 });
    const { base } = await ask('bases:start', { culture, name: 'Batch 1', volume_mL: 2500, sugarStart_g_per_L: 60 });
    const plan = { ...daysPlan, base, baseAvailable_mL: 2500 };
    await ask('trials:save', plan);
    expect(await ask('bases:open', { base })).toMatchObject({
      allotted_mL: 2400,
      left_mL: 100,
      culture: { name: 'Old mother' },
    });
    expect(await fail('trials:save', plan)).toMatchObject({ code: 'refused', path: ['base'] });
    expect(kitchen.read.one('SELECT count(*) AS n FROM trials')).toEqual({ n: 1 });
    expect(await fail('bases:change', { base, name: 'Batch 1', volume_mL: 2000 })).toMatchObject({
      path: ['volume_mL'],
    });
    expect(await fail('bases:strain', { base, at: '2026-04-01T00:00:00Z' })).toMatchObject({ path: ['at'] });
    clock.move(48);
    await ask('bases:strain', { base, sugarNow_g_per_L: 40 });
    expect(await ask('bases:open', { base })).toMatchObject({
      strainedAt: '2026-05-03T08:00:00.000Z',
      sugarNow_g_per_L: 40,
    });
    expect(await fail('bases:remove', { base })).toMatchObject({ code: 'refused' });
    expect(await fail('cultures:remove', { culture })).toMatchObject({ code: 'refused' });
    expect(
      await fail('bases:start', { name: 'X', volume_mL: 100, sugarStart_g_per_L: 10, sugarNow_g_per_L: 20 }),
    ).toMatchObject({ path: ['sugarNow_g_per_L'] });
    await ask('readings:log', { base, brix: 4 });
    expect(kitchen.read.one('SELECT brix FROM readings WHERE base_id = ?', base)).toEqual({ brix: 4 });
  });
});

describe('what was removed', () => {
  it('lies in the bin with all its parts and comes back whole', async () => {
    const test = await temporaryDesk();
    const { ask } = test;
    const { trial, jars } = await preparedTrial(test);
    await ask('sips:log', { jar: jars[0]?.id ?? '', tang: 3 });
    const before = await ask('trials:open', { trial });
    await ask('trials:remove', { trial });
    expect((await ask('trials:list', {})).trials).toEqual([]);
    const { entries } = await ask('bin:list', {});
    expect(entries).toMatchObject([{ summary: 'Remove the trial “How many days?”', rows: 8 }]);
    expect(await ask('bin:restore', { step: entries[0]?.step ?? 0 })).toEqual({ rows: 8 });
    const after = await ask('trials:open', { trial });
    expect({ ...after, revision: 0, jarsWhole: [] }).toEqual({ ...before, revision: 0, jarsWhole: [] });
    expect((await ask('bin:list', {})).entries).toEqual([]);
    expect((await ask('store:check', {})).ok).toBe(true);
  });

  it('stays where something leads back to it: a trial with a house recipe, a taster with scores', async () => {
    const test = await temporaryDesk();
    const { ask, fail } = test;
    const { trial, jars, tasters } = await preparedTrial(test);
    const free = await ask('tasters:save', { name: 'Free' });
    await ask('tastings:build', {
      trial,
      name: 'T',
      samples: [{ jar: jars[0]?.id ?? '' }, { jar: jars[1]?.id ?? '' }],
      tasters,
    });
    expect(await fail('tasters:remove', { taster: tasters[0] })).toMatchObject({ code: 'refused' });
    await ask('tasters:remove', { taster: free.taster });
    await ask('recipes:promote', { trial, level: '1 day', name: 'R' });
    expect(await fail('trials:remove', { trial })).toMatchObject({ code: 'refused', path: ['trial'] });
  });
});

describe('recipes:promote', () => {
  it('says on what it rests: panel, the maker’s sips, or nothing yet', async () => {
    const test = await temporaryDesk();
    const { ask, fail } = test;
    const { trial, jars } = await preparedTrial(test);
    const basis = async (recipe: string) => (await ask('recipes:open', { recipe })).versionList[0]?.basis;
    expect(await basis((await ask('recipes:promote', { trial, level: '1 day', name: 'None' })).recipe)).toBe('none');
    await ask('sips:log', { jar: jars[1]?.id ?? '', tang: 3, liking: 7 });
    const { recipe } = await ask('recipes:promote', { trial, level: '2 days', name: 'Sips' });
    expect(await basis(recipe)).toBe('sips');
    expect((await ask('recipes:open', { recipe })).versionList[0]?.target).toEqual([
      { attribute: 'tang', mean: 3, spread: null, n: 1 },
      { attribute: 'liking', mean: 7, spread: null, n: 1 },
    ]);
    await ask('jars:discard', { jars: [jars[2]?.id ?? ''], reason: 'film' });
    expect(await fail('recipes:promote', { trial, level: '3 days', name: 'X' })).toMatchObject({
      code: 'refused',
      path: ['level'],
    });
    expect(await fail('recipes:promote', { trial, level: '9 days', name: 'X' })).toMatchObject({
      code: 'not-found',
      path: ['level'],
    });
    expect((await ask('recipes:list', {})).recipes.map(({ name }) => name)).toEqual(['None', 'Sips']);
  });
});
