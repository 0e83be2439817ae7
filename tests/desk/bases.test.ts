import { describe, expect, it } from 'vitest';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { daysPlan } from './example-trial.ts';

const made = {
  name: 'Batch 1',
  volume_mL: 3000,
  temperature_C: 21,
  sugarStart_g_per_L: 60,
  sugarNow_g_per_L: 40,
  alcohol_pctVol: 0.3,
  note: 'from the tall crock',
};

describe('bases:change', () => {
  it('changes what is given and leaves the rest; null forgets', async () => {
    const { ask } = await temporaryDesk();
    const { culture } = await ask('cultures:save', { name: 'Old mother', kind: 'kombucha mother' });
    const { base } = await ask('bases:start', { ...made, culture });
    await ask('bases:change', { base, name: 'Batch one' });
    expect(await ask('bases:open', { base })).toMatchObject({
      ...made,
      name: 'Batch one',
      culture: { id: culture, name: 'Old mother', kind: 'kombucha mother' },
      madeAt: '2026-05-01T08:00:00.000Z',
    });
    await ask('bases:change', { base, sugarNow_g_per_L: null, culture: null, note: null });
    expect(await ask('bases:open', { base })).toMatchObject({
      name: 'Batch one',
      sugarStart_g_per_L: 60,
      sugarNow_g_per_L: null,
      temperature_C: 21,
      culture: null,
      note: null,
    });
  });

  it('holds what is given against what stays', async () => {
    const { ask, fail } = await temporaryDesk();
    const { base } = await ask('bases:start', made);
    expect(await fail('bases:change', { base, sugarStart_g_per_L: 30 })).toMatchObject({ path: ['sugarNow_g_per_L'] });
    expect(await fail('bases:change', { base, sugarNow_g_per_L: 70 })).toMatchObject({ path: ['sugarNow_g_per_L'] });
    expect(await fail('bases:change', { base, name: null })).toMatchObject({ code: 'invalid-input', path: ['name'] });
    expect(await ask('bases:open', { base })).toMatchObject(made);
  });

  it('writes nothing where nothing is given', async () => {
    const { ask, kitchen } = await temporaryDesk();
    const { base } = await ask('bases:start', made);
    const steps = () => kitchen.read.one<{ n: number }>('SELECT count(*) AS n FROM steps')?.n;
    const before = steps();
    await ask('bases:change', { base });
    expect(steps()).toBe(before);
  });

  it('says volumes in the measures of both kinds of kitchen', async () => {
    const { ask, fail } = await temporaryDesk();
    const { base } = await ask('bases:start', made);
    await ask('trials:save', { ...daysPlan, base, baseAvailable_mL: 3000 });
    // 2400 mL are 2.536 US quarts (a quart is 946.353 mL, NIST SP 811).
    expect((await fail('bases:change', { base, volume_mL: 2000 })).message).toContain('2400 mL (2 1/2 qt)');
    expect((await fail('trials:save', { ...daysPlan, base, baseAvailable_mL: 3000 })).message).toMatch(
      /2400 mL \(2 1\/2 qt\) of “Batch 1”; 600 mL \(2 1\/2 cups\)/,
    );
  });
});

describe('a base', () => {
  it('keeps sugar within what dissolves, with the permitted range', async () => {
    const { fail, kitchen } = await temporaryDesk();
    expect(await fail('bases:start', { ...made, sugarStart_g_per_L: 950, sugarNow_g_per_L: undefined })).toMatchObject({
      path: ['sugarStart_g_per_L'],
      message: expect.stringMatching(/dissolves at 20 °C; permitted: 0 to 892 g\/L/),
    });
    expect(kitchen.read.all('SELECT id FROM bases')).toEqual([]);
  });

  it('shows its readings and sightings, and only its own', async () => {
    const { ask, clock } = await temporaryDesk();
    const { base } = await ask('bases:start', made);
    const { base: other } = await ask('bases:start', { ...made, name: 'Batch 2' });
    clock.move(24);
    await ask('readings:log', { base, brix: 5.2, ph: 3.9, note: 'before straining' });
    await ask('sightings:log', { base, what: 'film' });
    await ask('readings:log', { base: other, ph: 4.4 });
    const open = await ask('bases:open', { base });
    expect(open.readings).toMatchObject([{ brix: 5.2, ph: 3.9, note: 'before straining' }]);
    expect(open.sightings).toMatchObject([{ what: 'film' }]);
    await ask('entries:remove', { kind: 'reading', id: open.readings[0]?.id ?? '' });
    expect((await ask('bases:open', { base })).readings).toEqual([]);
  });
});
