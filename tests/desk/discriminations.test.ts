import { describe, expect, it } from 'vitest';
import { type TestDesk, temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { preparedTrial } from './example-trial.ts';

async function builtTest(
  test: TestDesk,
  method: 'triangle' | 'duo-trio' | 'paired' | 'paired-two-sided',
  tasters = 12,
) {
  const prepared = await preparedTrial(test, tasters);
  const [a = '', b = ''] = prepared.jars.map(({ id }) => id);
  const { discrimination } = await test.ask('discriminations:build', {
    trial: prepared.trial,
    name: 'Do one and two days differ?',
    method,
    jarA: a,
    jarB: b,
    tasters: prepared.tasters,
    ...(method === 'paired' ? { expected: 'B' as const, asked: 'tangier' } : {}),
    seed: 4,
  });
  return { ...prepared, discrimination };
}

/** The place of the cup that a perfect taster would choose. */
function rightPlace(cups: string): number {
  const [reference, served] = cups.includes(':') ? (cups.split(':') as [string, string]) : ['', cups];
  if (reference !== '') return served.indexOf(reference) + 1;
  if (served.length === 2) return served.indexOf('B') + 1;
  return [...served].findIndex((cup) => [...served].filter((each) => each === cup).length === 1) + 1;
}

describe('a discrimination test', () => {
  it('serves a triangle in balanced orders, stays blind, and counts nine of twelve as ISO 4120 would', async () => {
    const test = await temporaryDesk();
    const { ask, fail, kitchen } = test;
    const { discrimination, tasters } = await builtTest(test, 'triangle');
    const open = await ask('discriminations:open', { discrimination });
    expect(open).toMatchObject({ jarA: null, result: null, presentations: 12, answered: 0 });
    for (const { codes, cups } of open.list) {
      expect(cups).toBeNull();
      expect(new Set(codes).size).toBe(3);
    }
    const poured = await ask('discriminations:pour', { discrimination });
    const counts = new Map<string, number>();
    for (const { cups } of poured.list) counts.set(cups, (counts.get(cups) ?? 0) + 1);
    expect(Object.fromEntries(counts)).toEqual({ ABB: 2, BAA: 2, AAB: 2, BBA: 2, ABA: 2, BAB: 2 });

    const cupsOf = new Map(
      kitchen.read
        .all<{ taster_id: string; cups: string }>('SELECT taster_id, cups FROM presentations')
        .map((row) => [row.taster_id, row.cups]),
    );
    for (const [index, taster] of tasters.entries()) {
      const right = rightPlace(cupsOf.get(taster) ?? '');
      await ask('discriminations:answer', {
        discrimination,
        taster,
        round: 1,
        chosen: index < 9 ? right : (right % 3) + 1,
      });
    }
    expect(
      await fail('discriminations:answer', { discrimination, taster: tasters[0], round: 2, chosen: 1 }),
    ).toMatchObject({ path: ['round'] });
    await ask('discriminations:close', { discrimination });
    const { result, jarA, list } = await ask('discriminations:open', { discrimination });
    expect(jarA?.level).toBe('1 day');
    expect(list.every(({ cups }) => cups !== null)).toBe(true);
    // ISO 4120 (and FAO appendix A): with 12 answers, 8 are significant at 5 % and 9 at 1 %.
    expect(result).toMatchObject({
      correct: 9,
      trials: 12,
      expectedByGuessing: 4,
      minimumCorrect: 8,
      significant: true,
    });
    expect(result?.p).toBeLessThan(0.01);
    expect(result?.sentence).toBe(
      '9 of 12 found the odd cup; guessing would give about 4. These two jars taste different to this panel: guessing alone would do as well about once in 260 times.',
    );
    expect(
      await fail('discriminations:answer', { discrimination, taster: tasters[0], round: 1, chosen: 1 }),
    ).toMatchObject({ code: 'refused' });
    expect((await fail('undo:last', {})).message).toContain('nobody can taste blind again');
  });

  it('never says that two jars are alike when too few were right', async () => {
    const test = await temporaryDesk();
    const { discrimination, tasters } = await builtTest(test, 'duo-trio', 6);
    const { list } = await test.ask('discriminations:pour', { discrimination });
    for (const [index, taster] of tasters.entries()) {
      const cups =
        test.kitchen.read.one<{ cups: string }>('SELECT cups FROM presentations WHERE taster_id = ?', taster)?.cups ??
        '';
      expect(cups).toMatch(/^[AB]:(AB|BA)$/);
      await test.ask('discriminations:answer', {
        discrimination,
        taster,
        round: 1,
        chosen: index < 4 ? rightPlace(cups) : 3 - rightPlace(cups),
      });
    }
    expect(list).toHaveLength(6);
    expect(
      await test.fail('discriminations:answer', { discrimination, taster: tasters[0], round: 1, chosen: 3 }),
    ).toMatchObject({ path: ['chosen'] });
    await test.ask('discriminations:close', { discrimination });
    const { result } = await test.ask('discriminations:open', { discrimination });
    expect(result).toMatchObject({ correct: 4, trials: 6, significant: false });
    expect(result?.sentence).toContain('nor that they taste alike');
    expect(result?.sentence).not.toMatch(/no difference|proved|\bp\b/);
  });

  it('counts the more chosen in a two-sided pair and the expected in a one-sided one', async () => {
    const test = await temporaryDesk();
    const { discrimination, tasters } = await builtTest(test, 'paired-two-sided', 10);
    for (const [index, taster] of tasters.entries()) {
      const cups =
        test.kitchen.read.one<{ cups: string }>('SELECT cups FROM presentations WHERE taster_id = ?', taster)?.cups ??
        '';
      await test.ask('discriminations:answer', {
        discrimination,
        taster,
        round: 1,
        chosen: index < 9 ? rightPlace(cups) : 3 - rightPlace(cups),
      });
    }
    await test.ask('discriminations:close', { discrimination });
    const { result } = await test.ask('discriminations:open', { discrimination });
    expect(result).toMatchObject({ correct: 9, trials: 10, minimumCorrect: 9, significant: true });
    expect(result?.sentence).toContain('jar B');
  });

  it('gives every cup of a small test a code of its own', async () => {
    const test = await temporaryDesk();
    const { discrimination } = await builtTest(test, 'triangle');
    const { list } = await test.ask('discriminations:open', { discrimination });
    expect(new Set(list.flatMap(({ codes }) => codes)).size).toBe(36);
  });

  it('tells nothing while it is open, and afterwards which jar was chosen and whether that was right', async () => {
    const test = await temporaryDesk();
    const { discrimination, tasters } = await builtTest(test, 'paired', 3);
    for (const taster of tasters) {
      await test.ask('discriminations:answer', { discrimination, taster, round: 1, chosen: 1 });
    }
    const open = await test.ask('discriminations:open', { discrimination });
    expect(open).toMatchObject({ jarA: null, jarB: null, expected: null, result: null });
    for (const tray of open.list) expect(tray).toMatchObject({ cups: null, chosenJar: null, isRight: null });
    await test.ask('discriminations:close', { discrimination });
    const closed = await test.ask('discriminations:open', { discrimination });
    for (const { cups, chosenJar, isRight } of closed.list) {
      expect(chosenJar).toBe(cups?.[0]);
      expect(isRight).toBe(cups?.[0] === 'B');
    }
  });

  it('with one taster speaks of that taster alone, and keeps what was taken back out of the count', async () => {
    const test = await temporaryDesk();
    const { jars, tasters, trial } = await preparedTrial(test, 1);
    const [a = '', b = ''] = jars.map(({ id }) => id);
    const taster = tasters[0] ?? '';
    const { discrimination } = await test.ask('discriminations:build', {
      trial,
      name: 'Alone',
      method: 'paired',
      asked: 'tangier',
      jarA: a,
      jarB: b,
      expected: 'B',
      tasters,
      rounds: 6,
    });
    const { list } = await test.ask('discriminations:pour', { discrimination });
    for (const { round, cups } of list) {
      await test.ask('discriminations:answer', { discrimination, taster, round, chosen: cups.indexOf('B') + 1 });
    }
    await test.ask('discriminations:answer', { discrimination, taster, round: 6, chosen: null });
    await test.ask('discriminations:close', { discrimination });
    const { result } = await test.ask('discriminations:open', { discrimination });
    // ISO 5495: five answers of five are significant at 5 % in a one-sided paired test.
    expect(result).toMatchObject({ correct: 5, trials: 5, tasters: 1, minimumCorrect: 5, significant: true });
    expect(result?.sentence).toBe(
      '5 of 5 answers chose as expected (jar B: tangier); guessing would give about 2.5. These two jars taste different to this taster: guessing alone would do as well about once in 32 times. Whether anybody else would notice, one taster can’t tell.',
    );
  });

  it('warns whoever serves while it is open: alcohol, for a taster who avoids it', async () => {
    const test = await temporaryDesk();
    const { jars } = await preparedTrial(test);
    const { taster } = await test.ask('tasters:save', { name: 'Careful', avoidsAlcohol: true });
    const [a = '', b = ''] = jars.map(({ id }) => id);
    const { discrimination } = await test.ask('discriminations:build', {
      name: 'T',
      method: 'triangle',
      jarA: a,
      jarB: b,
      tasters: [taster],
    });
    expect((await test.ask('discriminations:open', { discrimination })).warnings).toEqual([
      expect.stringContaining('Careful avoids alcohol'),
    ]);
    await test.ask('discriminations:close', { discrimination });
    expect((await test.ask('discriminations:open', { discrimination })).warnings).toEqual([]);
  });

  it('refuses jars that can’t be served, the same jar twice, and an expectation where none belongs', async () => {
    const test = await temporaryDesk();
    const { jars, tasters } = await preparedTrial(test);
    const [a = '', b = ''] = jars.map(({ id }) => id);
    const base = { name: 'T', method: 'triangle', jarA: a, jarB: b, tasters };
    expect(await test.fail('discriminations:build', { ...base, jarB: a })).toMatchObject({ path: ['jarB'] });
    expect(await test.fail('discriminations:build', { ...base, expected: 'A' })).toMatchObject({ path: ['expected'] });
    expect(await test.fail('discriminations:build', { ...base, tasters: [tasters[0], tasters[0]] })).toMatchObject({
      path: ['tasters', 1],
    });
    await test.ask('jars:discard', { jars: [b], reason: 'film' });
    expect(await test.fail('discriminations:build', base)).toMatchObject({ code: 'refused', path: ['jarB'] });
    expect((await test.ask('discriminations:list', {})).discriminations).toEqual([]);
  });
});
