import { describe, expect, it } from 'vitest';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';

describe('a profile of what is wanted', () => {
  it('judges the sample’s days trial: the wished-for level wins most redrawn panels; the same seed repeats', async () => {
    const { ask } = await temporaryDesk();
    await ask('kitchen:sample', {});
    const trial = (await ask('trials:list', {})).trials.find(({ factor }) => factor === 'days')?.id ?? '';
    expect(await ask('profiles:judge', { trial })).toMatchObject({
      winner: null,
      needs: expect.stringContaining('what is wanted'),
    });
    await ask('profiles:save', {
      trial,
      wishes: [
        { attribute: 'liking', goal: 'more', low: 1, high: 9, importance: 2 },
        { attribute: 'tang', goal: 'target', low: 2, high: 9, target: 5.5 },
        { attribute: 'vinegar note', goal: 'less', low: 0, high: 8 },
      ],
    });
    const judged = await ask('profiles:judge', { trial, draws: 400 });
    expect(judged.winner).toBe('3 days');
    expect(judged.setAfterReveal).toBe(true);
    expect(judged.levels.reduce((sum, { winShare }) => sum + winShare, 0)).toBeCloseTo(1, 9);
    for (const { desirability, low, high } of judged.levels) {
      expect(low ?? 0).toBeLessThanOrEqual(high ?? 0);
      expect(desirability).toBeGreaterThanOrEqual(0);
    }
    expect(await ask('profiles:judge', { trial, draws: 400 })).toEqual(judged);
    await ask('undo:last', {});
    expect((await ask('profiles:open', { trial })).wishes).toEqual([]);
  });

  it('tells wishes that stood before the codes were seen from those changed, dropped or said afterwards', async () => {
    const { ask, clock } = await temporaryDesk();
    await ask('kitchen:sample', {});
    // The stall's tasting of the sample is still open.
    const trial = (await ask('trials:list', {})).trials.find(({ factor }) => factor === 'formula')?.id ?? '';
    const tasting = (await ask('tastings:list', {})).tastings.find((each) => each.trial === trial)?.id ?? '';
    const tang = { attribute: 'tang', goal: 'more' as const, low: 2, high: 8 };
    const fizz = { attribute: 'fizz', goal: 'less' as const, low: 2, high: 8 };
    const late = async () => (await ask('profiles:open', { trial })).setAfterReveal;
    await ask('profiles:save', { trial, wishes: [tang, fizz] });
    clock.move(1);
    await ask('tastings:close', { tasting });
    expect(await late()).toBe(false);
    clock.move(1);
    await ask('profiles:save', { trial, wishes: [fizz, tang] });
    expect(await late()).toBe(false);
    await ask('profiles:save', { trial, wishes: [tang] });
    expect(await late()).toBe(true);
    await ask('undo:last', {});
    expect(await late()).toBe(false);
    await ask('profiles:save', { trial, wishes: [{ ...tang, high: 9 }, fizz] });
    expect(await late()).toBe(true);
    // Back to what it was: the same wishes as before, whenever they were written.
    await ask('profiles:save', { trial, wishes: [tang, fizz] });
    expect(await late()).toBe(false);
    expect((await ask('profiles:judge', { trial, draws: 100 })).setAfterReveal).toBe(false);
  });

  it('offers the attributes of the trial’s tastings, and the usual ones before there is any', async () => {
    const { ask } = await temporaryDesk();
    await ask('kitchen:sample', {});
    const trials = (await ask('trials:list', {})).trials;
    const of = (factor: string) => trials.find((trial) => trial.factor === factor)?.id ?? '';
    const usual = await ask('profiles:open', { trial: of('state') });
    expect(usual).toMatchObject({ closedTastings: 0, wishes: [] });
    expect(usual.attributes).toContainEqual({ name: 'liking', low: 1, high: 9 });
    await ask('tastings:build', {
      trial: of('days'),
      name: 'Another',
      samples: [{ jar: (await ask('trials:open', { trial: of('days') })).jarsWhole[0]?.id ?? '' }],
      tasters: [(await ask('tasters:list', {})).tasters[0]?.id ?? ''],
      attributes: [{ name: 'smoke', low: 0, high: 5 }],
    });
    expect((await ask('profiles:open', { trial: of('days') })).attributes).toContainEqual({
      name: 'smoke',
      low: 0,
      high: 5,
    });
  });

  it('refuses ends out of order, a target outside them, and an attribute twice', async () => {
    const { ask, fail } = await temporaryDesk();
    await ask('kitchen:sample', {});
    const trial = (await ask('trials:list', {})).trials[0]?.id ?? '';
    const save = (...wishes: object[]) => fail('profiles:save', { trial, wishes });
    expect(await save({ attribute: 'tang', goal: 'more', low: 5, high: 2 })).toMatchObject({
      path: ['wishes', 0, 'high'],
    });
    expect(await save({ attribute: 'tang', goal: 'target', low: 2, high: 5 })).toMatchObject({
      path: ['wishes', 0, 'target'],
    });
    expect(await save({ attribute: 'tang', goal: 'target', low: 2, high: 5, target: 6 })).toMatchObject({
      path: ['wishes', 0, 'target'],
    });
    const one = { attribute: 'tang', goal: 'more', low: 2, high: 5 };
    expect(await save(one, one)).toMatchObject({ path: ['wishes'] });
  });
});

describe('a taster set aside', () => {
  it('is left out of what is counted, with a reason, and can be brought back', async () => {
    const { ask, fail } = await temporaryDesk();
    await ask('kitchen:sample', {});
    const trial = (await ask('trials:list', {})).trials.find(({ factor }) => factor === 'days')?.id ?? '';
    const { tasters } = await ask('tasters:list', {});
    const taster = tasters[0]?.id ?? '';
    expect(await fail('tasters:bringBack', { trial, taster })).toMatchObject({ code: 'not-found' });
    await ask('tasters:setAside', { trial, taster, reason: 'had a cold' });
    await ask('tasters:setAside', { trial, taster, reason: 'had a heavy cold' });
    await ask('profiles:save', { trial, wishes: [{ attribute: 'liking', goal: 'more', low: 1, high: 9 }] });
    const without = await ask('profiles:judge', { trial, draws: 200 });
    const findings = await ask('findings:read', { trial });
    expect(findings.tasters.find(({ id }) => id === taster)?.setAside).toBe('had a heavy cold');
    expect(findings.withEverybody).toMatch(/liked best/);
    expect(findings.scores.some(({ taster: name }) => name === tasters[0]?.name)).toBe(false);
    await ask('tasters:bringBack', { trial, taster });
    expect((await ask('findings:read', { trial })).withEverybody).toBeNull();
    const withAll = await ask('profiles:judge', { trial, draws: 200 });
    expect(without.levels.map(({ desirability }) => desirability)).not.toEqual(
      withAll.levels.map(({ desirability }) => desirability),
    );
  });
});

describe('panel:experience', () => {
  it('learns the error of a single score from closed tastings, and says from how many', async () => {
    const { ask } = await temporaryDesk();
    expect(await ask('panel:experience', {})).toEqual({ errorSd: null, tastings: 0, degreesOfFreedom: 0 });
    await ask('kitchen:sample', {});
    const learned = await ask('panel:experience', {});
    expect(learned.tastings).toBe(2);
    // The sample's scores waver by 0.8 points and are rounded to halves.
    expect(learned.errorSd).toBeGreaterThan(0.6);
    expect(learned.errorSd).toBeLessThan(1.1);
  });
});
