import { describe, expect, it } from 'vitest';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { handClock, temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { daysPlan } from './example-trial.ts';

type Need = ValueOf<'today:read'>['needs'][number];

function said({ needs }: ValueOf<'today:read'>): string[] {
  return needs.map(({ kind, when, jars, base, culture, tasting }: Need) =>
    [when, kind, [...jars, base, culture, tasting].flatMap((one) => (one === null ? [] : [one.name])).join('+')].join(
      ' ',
    ),
  );
}

const zone = 'Europe/Berlin';
/** Not stirred, so that it is looked at. */
const stillPlan = { ...daysPlan, held: { additions: [], cover: 'cloth' as const } };

describe('today:read', () => {
  it('says nothing in an empty kitchen', async () => {
    const { ask } = await temporaryDesk();
    expect(await ask('today:read', { zone })).toEqual({
      now: '2026-05-01T08:00:00.000Z',
      zone,
      needs: [],
      bottlesWaiting: 0,
    });
  });

  it('goes with a jar through its life: start, look daily, pull to the minute, taste, nothing more', async () => {
    const { ask, clock } = await temporaryDesk();
    const { jars } = await ask('trials:save', stillPlan);
    const ids = jars.map(({ id }) => id);
    expect(said(await ask('today:read', { zone }))).toEqual(['today start A+B+C']);
    await ask('jars:start', { jars: ids });
    expect(said(await ask('today:read', { zone }))).toEqual(['later pull A', 'later pull B', 'later pull C']);
    clock.move(20);
    expect(said(await ask('today:read', { zone }))).toEqual([
      'today look A+B+C',
      'today pull A',
      'later pull B',
      'later pull C',
    ]);
    await ask('jars:look', { jars: ids });
    expect(said(await ask('today:read', { zone }))).toEqual(['today pull A', 'later pull B', 'later pull C']);
    clock.move(5);
    expect(said(await ask('today:read', { zone }))[0]).toBe('overdue pull A');
    await ask('jars:pull', { jars: ids.slice(0, 1) });
    expect(said(await ask('today:read', { zone }))).toEqual(['today taste A', 'later pull B', 'later pull C']);
    await ask('sips:log', { jar: ids[0] ?? '', liking: 7 });
    expect(said(await ask('today:read', { zone }))).toEqual(['later pull B', 'later pull C']);
  });

  it('lets a jar that was started late stand as long as was planned, on the calendar too', async () => {
    const { ask, clock } = await temporaryDesk();
    const { trial, jars } = await ask('trials:save', stillPlan);
    clock.move(30);
    await ask('jars:start', { jars: jars.map(({ id }) => id) });
    const { needs } = await ask('today:read', { zone });
    expect(needs.map(({ kind, when, dueAt }) => [kind, when, dueAt])).toEqual([
      ['pull', 'later', '2026-05-03T14:00:00.000Z'],
      ['pull', 'later', '2026-05-04T14:00:00.000Z'],
      ['pull', 'later', '2026-05-05T14:00:00.000Z'],
    ]);
    expect((await ask('trials:calendar', { trial })).text.match(/DTSTART:\w+/g)).toEqual([
      'DTSTART:20260503T140000Z',
      'DTSTART:20260504T140000Z',
      'DTSTART:20260505T140000Z',
    ]);
  });

  it('goes on asking for a look at a jar whose pulling is late and put off', async () => {
    const { ask, clock } = await temporaryDesk();
    const { jars } = await ask('trials:save', stillPlan);
    const [first = ''] = jars.map(({ id }) => id);
    await ask('jars:start', { jars: [first] });
    clock.move(25);
    const asked = async () => said(await ask('today:read', { zone })).filter((line) => line.endsWith(' A'));
    expect(await asked()).toEqual(['overdue pull A']);
    await ask('today:putOff', { need: 'pull', jars: [first], span: 'tomorrow', zone, reason: 'no bottles' });
    expect(await asked()).toEqual(['today look A', 'put-off pull A']);
  });

  it('takes a reading, a sip or a sighting for a look, and shows a look missed for a whole day as overdue, first', async () => {
    const { ask, clock } = await temporaryDesk();
    const { jars } = await ask('trials:save', {
      ...stillPlan,
      levels: [
        { name: '6 days', value: 6 },
        { name: '7 days', value: 7 },
      ],
      control: '6 days',
    });
    const [a = '', b = ''] = jars.map(({ id }) => id);
    await ask('jars:start', { jars: [a, b] });
    clock.move(24);
    await ask('readings:log', { jar: a, brix: 6 });
    expect(said(await ask('today:read', { zone }))[0]).toBe('today look B');
    await ask('bases:start', { name: 'Late one', volume_mL: 2000, madeAt: '2026-04-29T12:00:00Z' });
    clock.move(24);
    expect(said(await ask('today:read', { zone })).slice(0, 3)).toEqual([
      'overdue strain Late one',
      'overdue look B',
      'today look A',
    ]);
  });

  it('counts days by the kitchen’s own calendar, and keeps the hour on the wall when the clocks change', async () => {
    // Europe/Berlin goes from 01:59 to 03:00 on 29 March 2026 (Directive 2000/84/EC).
    const { ask, clock } = await temporaryDesk(handClock('2026-03-27T08:00:00.000Z'));
    const { jars } = await ask('trials:save', {
      ...stillPlan,
      levels: [
        { name: '8 days', value: 8 },
        { name: '9 days', value: 9 },
      ],
      control: '8 days',
      start: '2026-03-27T08:00:00.000Z',
    });
    await ask('jars:start', { jars: jars.map(({ id }) => id) });
    clock.move(34);
    await ask('jars:look', { jars: jars.map(({ id }) => id) });
    clock.move(6);
    // 00:00 UTC is 01:00 in Berlin on the 29th, and still the 28th in New York: looked at for that day.
    const berlin = await ask('today:read', { zone });
    expect(berlin.needs[0]).toMatchObject({ kind: 'look', when: 'today', dueAt: '2026-03-29T07:00:00.000Z' });
    expect(said(await ask('today:read', { zone: 'America/New_York' }))).not.toContain('today look A+B');
  });

  it('asks for a stir instead of a look where an open jar is held as stirred daily', async () => {
    const { ask, clock } = await temporaryDesk();
    const { jars } = await ask('trials:save', daysPlan);
    const ids = jars.map(({ id }) => id);
    await ask('jars:start', { jars: ids });
    clock.move(20);
    const [stir] = (await ask('today:read', { zone })).needs;
    expect(stir).toMatchObject({ kind: 'stir', basis: expect.stringContaining('common practice') });
    await ask('sightings:log', { jar: ids[0] ?? '', what: 'froth' });
    expect(said(await ask('today:read', { zone }))[0]).toBe('today stir A+B+C');
    await ask('jars:look', { jars: ids, what: 'stirred' });
    expect(said(await ask('today:read', { zone }))[0]).toBe('today pull A');
  });

  it('strains a base after its planned hours, or after two days as common practice', async () => {
    const { ask, clock } = await temporaryDesk();
    await ask('bases:start', { name: 'Quick', volume_mL: 2000, plannedHours: 24 });
    const usual = await ask('bases:start', { name: 'Usual', volume_mL: 2000 });
    const { needs } = await ask('today:read', { zone });
    expect(needs).toMatchObject([
      { kind: 'strain', when: 'later', dueAt: '2026-05-02T08:00:00.000Z', basis: null },
      { kind: 'strain', when: 'later', dueAt: '2026-05-03T08:00:00.000Z', basis: expect.stringContaining('no source') },
    ]);
    clock.move(49);
    expect(said(await ask('today:read', { zone }))).toEqual(['overdue strain Quick', 'overdue strain Usual']);
    await ask('bases:strain', { base: usual.base });
    expect(said(await ask('today:read', { zone }))).toEqual(['overdue strain Quick']);
  });

  it('feeds a culture that rests cold after two weeks, by its own interval when there is one, and never one of which nobody said', async () => {
    const { ask, clock } = await temporaryDesk();
    const fed = { kind: 'water kefir', refreshedAt: '2026-05-01T08:00:00Z' };
    const { culture } = await ask('cultures:save', { ...fed, name: 'Cold', rests: 'fridge, top shelf' });
    await ask('cultures:save', { ...fed, name: 'Often', rests: 'fridge', refreshDays: 5 });
    await ask('cultures:save', { ...fed, name: 'Counter', rests: 'crock on the shelf' });
    expect(said(await ask('today:read', { zone }))).toEqual(['later feed Often']);
    clock.move(24 * 13);
    expect(said(await ask('today:read', { zone }))).toEqual(['overdue feed Often', 'later feed Cold']);
    clock.move(24);
    const { needs } = await ask('today:read', { zone });
    expect(needs[1]).toMatchObject({ kind: 'feed', when: 'today', basis: expect.stringContaining('two weeks') });
    await ask('cultures:log', { culture, what: 'refreshed', weight_g: 230 });
    expect(said(await ask('today:read', { zone }))).toEqual(['overdue feed Often']);
    await ask('cultures:log', { culture, what: 'revival-feed' });
    clock.move(24);
    expect(said(await ask('today:read', { zone }))).toEqual(['overdue feed Often', 'today feed Cold']);
    await ask('cultures:log', { culture, what: 'revived' });
    expect(said(await ask('today:read', { zone }))).toEqual(['overdue feed Often']);
  });

  it('leads to an open tasting whose day it is, and forgets a jar that was poured there', async () => {
    const { ask, clock } = await temporaryDesk();
    const { trial, jars } = await ask('trials:save', stillPlan);
    const ids = jars.map(({ id }) => id);
    await ask('jars:start', { jars: ids });
    clock.move(72);
    await ask('jars:pull', { jars: ids });
    expect(said(await ask('today:read', { zone }))).toEqual(['today taste A+B+C']);
    const { taster } = await ask('tasters:save', { name: 'Ann' });
    const { tasting } = await ask('tastings:build', {
      trial,
      name: 'First',
      samples: ids.map((jar) => ({ jar })),
      tasters: [taster],
      seed: 3,
    });
    expect((await ask('today:read', { zone })).needs).toMatchObject([
      { kind: 'taste', when: 'today', tasting: { id: tasting }, trial: { id: trial }, jars: [] },
    ]);
    clock.move(24);
    expect(said(await ask('today:read', { zone }))).toEqual(['overdue taste First']);
  });

  it('refuses a zone that is none at its field', async () => {
    const { fail } = await temporaryDesk();
    expect(await fail('today:read', { zone: 'Kitchen/Table' })).toMatchObject({
      code: 'invalid-input',
      path: ['zone'],
    });
  });
});

describe('today:putOff', () => {
  it('puts off until the evening with a reason, comes back by itself, and is taken back by undo', async () => {
    const { ask, clock } = await temporaryDesk();
    await ask('bases:start', { name: 'Crock', volume_mL: 2000, madeAt: '2026-04-29T07:00:00Z' });
    const { bases } = await ask('bases:list', {});
    const put = { need: 'strain', base: bases[0]?.id ?? '', zone } as const;
    const { until } = await ask('today:putOff', { ...put, span: 'tonight', reason: 'at work' });
    expect(until).toBe('2026-05-01T17:00:00.000Z');
    expect((await ask('today:read', { zone })).needs).toMatchObject([
      { when: 'put-off', putOff: { until, reason: 'at work' } },
    ]);
    const again = await ask('today:putOff', { ...put, span: 'hour' });
    expect((await ask('today:read', { zone })).needs[0]?.putOff).toEqual({
      ids: again.putOffs,
      until: '2026-05-01T09:00:00.000Z',
      reason: null,
    });
    clock.move(1);
    expect(said(await ask('today:read', { zone }))).toEqual(['overdue strain Crock']);
    await ask('undo:last', {});
    expect((await ask('today:read', { zone })).needs[0]?.putOff?.reason).toBe('at work');
  });

  it('puts jars off together, and wakes them together', async () => {
    const { ask, clock } = await temporaryDesk();
    const { jars } = await ask('trials:save', stillPlan);
    const ids = jars.map(({ id }) => id);
    await ask('jars:start', { jars: ids });
    clock.move(20);
    await ask('today:putOff', { need: 'look', jars: ids, span: 'tomorrow', zone });
    const put = (await ask('today:read', { zone })).needs.find(({ when }) => when === 'put-off');
    expect(put?.jars.map(({ name }) => name)).toEqual(['A', 'B', 'C']);
    await ask('today:wake', { putOffs: put?.putOff?.ids ?? [] });
    expect(said(await ask('today:read', { zone }))[0]).toBe('today look A+B+C');
  });

  it('names exactly one kind of thing, and only what is there', async () => {
    const { fail } = await temporaryDesk();
    const nowhere = '019e0000-0000-7000-8000-000000000000';
    expect(await fail('today:putOff', { need: 'look', span: 'hour' })).toMatchObject({ code: 'invalid-input' });
    expect(await fail('today:putOff', { need: 'feed', span: 'hour', culture: nowhere })).toMatchObject({
      code: 'not-found',
      path: ['culture'],
    });
  });
});
