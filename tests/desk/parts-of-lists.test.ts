import { describe, expect, it } from 'vitest';
import type { AskedOf } from '#shared/contract/all-requests.ts';
import { type TestDesk, temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { daysPlan, preparedTrial } from './example-trial.ts';

async function fiveTrials({ ask }: TestDesk): Promise<string[]> {
  const ids: string[] = [];
  // Two of them start at the same moment: the list must neither repeat nor leave out.
  for (const day of ['01', '02', '02', '03', '04']) {
    const plan: AskedOf<'trials:save'> = {
      ...daysPlan,
      question: `From ${day}?`,
      start: `2026-05-${day}T08:00:00.000Z`,
    };
    ids.push((await ask('trials:save', plan)).trial);
  }
  return ids;
}

describe('trials:list', () => {
  it('without a limit gives all, the newest first, and says nothing of more', async () => {
    const test = await temporaryDesk();
    await fiveTrials(test);
    const whole = await test.ask('trials:list', {});
    expect(whole.trials.map(({ question }) => question)).toEqual([
      'From 04?',
      'From 03?',
      'From 02?',
      'From 02?',
      'From 01?',
    ]);
    expect(Object.keys(whole)).toEqual(['trials']);
  });

  it('in parts gives the same list, each part going on behind the last row of the one before', async () => {
    const test = await temporaryDesk();
    await fiveTrials(test);
    const whole = (await test.ask('trials:list', {})).trials.map(({ id }) => id);
    for (const limit of [1, 2, 3, 5]) {
      const read: string[] = [];
      for (let goesOn = true; goesOn; ) {
        const after = read.at(-1);
        const part = await test.ask('trials:list', { limit, ...(after === undefined ? {} : { after }) });
        expect(part.trials.length).toBeLessThanOrEqual(limit);
        read.push(...part.trials.map(({ id }) => id));
        goesOn = part.more === true;
        expect(goesOn).toBe(read.length < whole.length);
      }
      expect(read).toEqual(whole);
    }
  });

  it('behind a trial that is not there is said at its field', async () => {
    const test = await temporaryDesk();
    const nobody = '00000000-0000-7000-8000-000000000000';
    expect(await test.fail('trials:list', { after: nobody })).toMatchObject({ code: 'not-found', path: ['after'] });
  });

  it('of those awake gives the ones with jars that are planned or stand', async () => {
    const test = await temporaryDesk();
    const { trial, jars } = await preparedTrial(test);
    expect((await test.ask('trials:list', { only: 'awake' })).trials).toEqual([]);
    const ids = await fiveTrials(test);
    const awake = await test.ask('trials:list', { only: 'awake' });
    expect(awake.trials.map(({ id }) => id).sort()).toEqual([...ids].sort());
    expect(awake.trials.every(({ state }) => state === 'planned')).toBe(true);
    expect((await test.ask('trials:list', { only: 'awake', limit: 2 })).trials).toHaveLength(2);
    expect(jars.length).toBeGreaterThan(0);
    expect(ids).not.toContain(trial);
  });
});

describe('tastings:list', () => {
  it('gives those of one trial, and parts of the list', async () => {
    const test = await temporaryDesk();
    const { trial, jars, tasters } = await preparedTrial(test);
    const built: string[] = [];
    for (const [hours, name] of ['One', 'Two', 'Three'].entries()) {
      test.clock.move(hours);
      const own = name === 'Two' ? {} : { trial };
      const samples = jars.map(({ id }) => ({ jar: id }));
      built.push((await test.ask('tastings:build', { ...own, name, samples, tasters, seed: 1 })).tasting);
    }
    const names = ({ tastings }: { tastings: { name: string }[] }) => tastings.map(({ name }) => name);
    expect(names(await test.ask('tastings:list', {}))).toEqual(['Three', 'Two', 'One']);
    expect(names(await test.ask('tastings:list', { trial }))).toEqual(['Three', 'One']);
    const first = await test.ask('tastings:list', { trial, limit: 1 });
    expect([names(first), first.more]).toEqual([['Three'], true]);
    const rest = await test.ask('tastings:list', { trial, limit: 5, after: built[2] ?? '' });
    expect([names(rest), rest.more]).toEqual([['One'], undefined]);
  });
});
