import { describe, expect, it } from 'vitest';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { daysPlan } from './example-trial.ts';

describe('cultures', () => {
  it('keep their weights over the seasons, whatever order they are written down in', async () => {
    const { ask, clock } = await temporaryDesk();
    const { culture } = await ask('cultures:save', { name: 'Grains', kind: 'water kefir', weight_g: 200 });
    clock.move(24 * 10);
    await ask('cultures:log', { culture, what: 'refreshed', weight_g: 260 });
    await ask('cultures:log', { culture, what: 'weighed', weight_g: 230, at: '2026-05-06T08:00:00Z' });
    const whole = await ask('cultures:open', { culture });
    expect(whole).toMatchObject({ weight_g: 260, refreshedAt: '2026-05-11T08:00:00.000Z' });
    expect(whole.log.map(({ what, weight_g }) => [what, weight_g])).toEqual([
      ['weighed', 200],
      ['weighed', 230],
      ['refreshed', 260],
    ]);
    await ask('undo:last', {});
    await ask('undo:last', {});
    expect(await ask('cultures:open', { culture })).toMatchObject({ weight_g: 200, refreshedAt: null });
  });

  it('split in two: the weights are shared, the lineage is kept, and the whole stays while parts lead to it', async () => {
    const { ask, fail } = await temporaryDesk();
    const { culture } = await ask('cultures:save', {
      name: 'Grains',
      kind: 'water kefir',
      weight_g: 200,
      rests: 'fridge',
    });
    expect(await fail('cultures:split', { culture, name: 'Half', weight_g: 200 })).toMatchObject({
      code: 'refused',
      path: ['weight_g'],
    });
    const part = await ask('cultures:split', { culture, name: 'For Ann', weight_g: 80 });
    expect(await ask('cultures:open', part)).toMatchObject({
      weight_g: 80,
      rests: 'fridge',
      parent: { id: culture, name: 'Grains' },
      log: [{ what: 'split', weight_g: 80 }],
    });
    expect(await ask('cultures:open', { culture })).toMatchObject({
      weight_g: 120,
      children: [{ name: 'For Ann' }],
      log: [
        { what: 'weighed', weight_g: 200 },
        { what: 'split', weight_g: 120, note: 'For Ann' },
      ],
    });
    expect(await fail('cultures:remove', { culture })).toMatchObject({ code: 'refused' });
    await ask('cultures:remove', part);
    await ask('cultures:remove', { culture });
  });

  it('travel with a trial together with those they were split from', async () => {
    const home = await temporaryDesk();
    const { culture } = await home.ask('cultures:save', { name: 'Grains', kind: 'water kefir', weight_g: 200 });
    const part = await home.ask('cultures:split', { culture, name: 'Part', weight_g: 80 });
    const { base } = await home.ask('bases:start', { name: 'Batch', volume_mL: 4000, culture: part.culture });
    const { trial, jars } = await home.ask('trials:save', { ...daysPlan, base });
    await home.ask('jars:start', { jars: [jars[0]?.id ?? ''] });
    const { bottling } = await home.ask('bottles:fill', {
      jar: jars[0]?.id ?? '',
      count: 2,
      size_mL: 330,
      closure: 'crown',
    });
    await home.ask('bottles:open', { bottling, pour: 'gentle' });
    const { text } = await home.ask('data:trialFile', { trial });
    const away = await temporaryDesk();
    await away.ask('data:takeIn', { text });
    const { cultures } = await away.ask('cultures:list', {});
    expect(cultures.map(({ name, parent }) => [name, parent?.name])).toEqual([
      ['Grains', undefined],
      ['Part', 'Grains'],
    ]);
    const { bottlings } = await away.ask('bottles:list', {});
    expect(bottlings).toMatchObject([{ from: { label: 'A' }, left: 1, openings: [{ pour: 'gentle' }] }]);
  });
});

describe('bottles', () => {
  async function bottled(more: object = {}) {
    const desk = await temporaryDesk();
    const { jars } = await desk.ask('trials:save', daysPlan);
    const jar = jars[0]?.id ?? '';
    await desk.ask('jars:start', { jars: [jar] });
    const { bottling } = await desk.ask('bottles:fill', { jar, count: 2, size_mL: 500, closure: 'swing-top', ...more });
    return { ...desk, jar, bottling };
  }

  it('hold no more than there was, the last one half full at the least', async () => {
    const { ask, fail, jar } = await bottled();
    const bottles = { jar, size_mL: 330, closure: 'crown' as const };
    for (const count of [5, 50]) {
      expect(await fail('bottles:fill', { ...bottles, count })).toMatchObject({ code: 'refused', path: ['count'] });
    }
    await ask('bottles:fill', { ...bottles, count: 4 });
  });

  it('are filled, chilled, opened one by one, and none twice; undo brings one back', async () => {
    const { ask, fail, jar, bottling, clock } = await bottled({ lot: 'L1', sugar_g_per_L: 8 });
    clock.move(24);
    await ask('bottles:chill', { bottling });
    expect(await ask('bottles:open', { bottling, pour: 'lively', note: 'cloudy' })).toMatchObject({ left: 1 });
    expect((await ask('today:read', {})).bottlesWaiting).toBe(1);
    await ask('bottles:open', { bottling, pour: 'gushed' });
    expect(await fail('bottles:open', { bottling, pour: 'flat' })).toMatchObject({ code: 'refused' });
    const [all] = (await ask('bottles:list', { jar })).bottlings;
    expect(all).toMatchObject({
      from: { kind: 'jar', label: 'A' },
      lot: 'L1',
      left: 0,
      chilledAt: '2026-05-02T08:00:00.000Z',
      openings: [{ pour: 'lively', note: 'cloudy' }, { pour: 'gushed' }],
    });
    await ask('undo:last', {});
    expect((await ask('bottles:list', {})).bottlings[0]?.left).toBe(1);
  });

  it('are cautioned by what the sugar left can make, and where nobody knows that', async () => {
    const { ask, jar } = await bottled({ sugar_g_per_L: 20 });
    const [unrated] = (await ask('bottles:list', { jar })).bottlings;
    // 20 g/L of sucrose are 20/342.30·4 mol of CO2, 5.2 volumes at 22.263 L/mol, above the one held at closing: beyond 4.7 bar at 35 °C.
    expect(unrated?.cautions.map(({ code }) => code)).toEqual([
      'vessel-unrated',
      'pressure-sparkling',
      'pressure-glass-limit',
    ]);
    await ask('bottles:fill', { jar, count: 1, size_mL: 500, closure: 'plastic', ratedGauge_bar: 10 });
    const unknown = (await ask('bottles:list', { jar })).bottlings.find(({ closure }) => closure === 'plastic');
    expect(unknown).toMatchObject({ gauge_bar: null, cautions: [{ code: 'sugar-at-closing' }] });
  });

  it('come from a jar that stood and is still there, or from a batch', async () => {
    const { ask, fail, jar } = await bottled();
    expect(await fail('bottles:fill', { count: 1, size_mL: 500, closure: 'crown' })).toMatchObject({ path: ['jar'] });
    expect(await fail('bottles:fill', { jar, count: 1, size_mL: 500, closure: 'open-jar' })).toMatchObject({
      path: ['closure'],
    });
    await ask('sightings:log', { jar, what: 'mould' });
    expect(await fail('bottles:fill', { jar, count: 1, size_mL: 500, closure: 'crown' })).toMatchObject({
      code: 'refused',
      message: expect.stringContaining('mould'),
    });
  });
});
