import { describe, expect, it } from 'vitest';
import { allRequests } from '#shared/contract/all-requests.ts';
import { fc } from '#tests/properties.ts';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { daysPlan } from './example-trial.ts';

describe('a request that can’t be taken', () => {
  it('of an unknown name settles as unknown-request, also for names that every object has', async () => {
    const { fail } = await temporaryDesk();
    for (const name of ['trials:pla', 'constructor', '__proto__', 'toString', '']) {
      expect(await fail(name, {})).toMatchObject({ code: 'unknown-request', path: ['name'] });
    }
  });

  it('names the field and what it may be: missing, wrong type, NaN, out of range, unknown member, not a moment', async () => {
    const { fail } = await temporaryDesk();
    const plan = (change: object) => fail('trials:plan', { ...daysPlan, ...change });
    const { question: _, ...without } = daysPlan;
    expect(await fail('trials:plan', without)).toEqual({
      code: 'invalid-input',
      message: 'question is missing; it must be words.',
      path: ['question'],
    });
    expect(await plan({ seed: 'seven' })).toMatchObject({ message: 'seed must be a finite number.', path: ['seed'] });
    expect(await plan({ baseEach_mL: Number.NaN })).toMatchObject({
      message: 'baseEach_mL must be a finite number.',
      path: ['baseEach_mL'],
    });
    expect(await plan({ baseEach_mL: -5 })).toMatchObject({ message: 'baseEach_mL must be 0.001 or more.' });
    expect(await plan({ replicates: 99 })).toMatchObject({ message: 'replicates must be 12 or less.' });
    expect(await plan({ colour: 'red' })).toMatchObject({
      message: 'The input has a member the request does not know: colour.',
    });
    expect(await plan({ start: 'tomorrow' })).toMatchObject({
      message: 'start must be a moment with its offset, such as 2026-05-01T09:00:00+02:00.',
    });
    expect(await plan({ factor: 'colour' })).toMatchObject({
      message: 'factor must be one of: fruit, amount, days, state, cover, temperature, formula.',
    });
    expect(
      await plan({
        levels: [
          { name: 'a', value: 1 },
          { name: 'b', additions: [{ ingredient: 'x', mass_g: 0, state: 'fresh' }] },
        ],
      }),
    ).toMatchObject({
      message: 'levels[1].additions[0].mass_g must be 0.001 or more.',
      path: ['levels', 1, 'additions', 0, 'mass_g'],
    });
    expect(await fail('trials:plan', null)).toMatchObject({ code: 'invalid-input', path: [] });
  });

  it('an object that calls something its length is no text and no list, and said to be none', async () => {
    const { fail } = await temporaryDesk();
    const length = { toString: { name: 'x' } };
    expect(await fail('pantry:remove', { ingredient: { length } })).toMatchObject({
      code: 'invalid-input',
      path: ['ingredient'],
    });
    expect(await fail('tasters:save', { name: { length } })).toMatchObject({ code: 'invalid-input', path: ['name'] });
    expect(await fail('jars:start', { jars: [{ length }] })).toMatchObject({
      code: 'invalid-input',
      path: ['jars', 0],
    });
    expect(await fail('jars:start', { jars: { length } })).toMatchObject({ code: 'invalid-input', path: ['jars'] });
    const { ask } = await temporaryDesk();
    expect(await ask('drafts:keep', { name: 'plan', body: { length } })).toEqual({ kept: true });
  });

  it('a string of ten megabytes is refused by its length, and nothing is written', async () => {
    const { fail, kitchen } = await temporaryDesk();
    const steps = () => kitchen.read.one<{ n: number }>('SELECT count(*) AS n FROM steps')?.n;
    const before = steps();
    const long = 'x'.repeat(10_000_000);
    expect(await fail('tasters:save', { name: long })).toEqual({
      code: 'invalid-input',
      message: 'name may have at most 200 characters.',
      path: ['name'],
    });
    expect(await fail('trials:save', { ...daysPlan, question: long })).toMatchObject({ path: ['question'] });
    expect(await fail(long, {})).toMatchObject({ code: 'unknown-request' });
    expect(steps()).toBe(before);
  });

  it('a plan that can’t work settles ok as a plan, and is refused only when saved, at its field', async () => {
    const { ask, fail, kitchen } = await temporaryDesk();
    const tight = { ...daysPlan, baseAvailable_mL: 100 };
    const plan = await ask('trials:plan', tight);
    expect(plan).toMatchObject({
      feasible: false,
      problems: [{ code: 'not-enough-base', path: ['baseAvailable_mL'] }],
    });
    expect(await fail('trials:save', tight)).toMatchObject({ code: 'refused', path: ['baseAvailable_mL'] });
    expect(kitchen.read.all('SELECT id FROM trials')).toEqual([]);
  });

  it('whatever it is, it settles with code, message and path, and a refused one writes nothing (property)', async () => {
    const { desk, kitchen } = await temporaryDesk();
    const names = Object.keys(allRequests).filter((name) => name !== 'kitchen:sample' && name !== 'store:backup');
    const steps = () => kitchen.read.one<{ n: number }>('SELECT count(*) AS n FROM steps')?.n;
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...names), fc.anything(), async (name, input) => {
        const before = steps();
        const envelope = await desk.handle(name, input);
        if (envelope.ok) return;
        expect(envelope.error.code).not.toBe('internal');
        expect(envelope.error.message).toMatch(/\S/);
        expect(steps()).toBe(before);
      }),
      { numRuns: 2000, seed: 11 },
    );
  });
});
