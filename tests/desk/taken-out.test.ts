import { describe, expect, it } from 'vitest';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { daysPlan, preparedTrial } from './example-trial.ts';

/** The days trial with one tasting built and one still to be built, scored by two tasters. */
async function scored(ranked = false) {
  const test = await temporaryDesk();
  const { ask } = test;
  const prepared = await preparedTrial(test, 3);
  const samples = prepared.jars.map(({ id }) => ({ jar: id }));
  const built = await ask('tastings:build', {
    trial: prepared.trial,
    name: 'Day three',
    samples,
    tasters: prepared.tasters,
    seed: 9,
    ranked,
    ...(ranked ? {} : { attributes: [{ name: 'liking', low: 1, high: 9 }] }),
  });
  const jar = (label: string) => prepared.jars.find((one) => one.label === label)?.id ?? '';
  const code = (label: string) => built.codes[jar(label)] ?? '';
  const score = (taster: string, label: string, value: number) =>
    ask('scores:enter', {
      tasting: built.tasting,
      scores: [{ taster, sample: code(label), attribute: ranked ? 'place' : 'liking', score: value }],
    });
  return { ...test, ...prepared, tasting: built.tasting, jar, code, score };
}

describe('mould in a jar', () => {
  it('takes it out of every tasting that is not revealed, and leaves a revealed one as it was', async () => {
    const { ask, trial, jars, tasters, tasting, jar, code, score } = await scored();
    const samples = jars.map(({ id }) => ({ jar: id }));
    await ask('tastings:build', { trial, name: 'Later', samples, tasters });
    const { tasting: done } = await ask('tastings:build', { trial, name: 'Done', samples, tasters });
    await ask('tastings:close', { tasting: done });
    await score('Taster A', 'B', 7);
    await score('Taster A', 'A', 4);

    const seen = await ask('sightings:log', { jar: jar('B'), what: 'mould' });
    expect(seen).toMatchObject({ discarded: true, tastings: ['Day three', 'Later'] });
    const open = await ask('tastings:open', { tasting });
    expect(open.sampleList.filter(({ takenOut }) => takenOut !== null)).toMatchObject([
      { code: code('B'), jar: null, takenOut: { why: 'mould' } },
    ]);
    // Two samples are left to three tasters; of two scores one counts.
    expect(open).toMatchObject({ samples: 2, expected: 6, scores: 1 });
    expect((await ask('tastings:open', { tasting: done })).sampleList.every(({ takenOut }) => takenOut === null)).toBe(
      true,
    );
  });

  it('keeps what was scored, takes no more, and counts none of it; the finding says so', async () => {
    const { ask, fail, trial, tasting, jar, code, score, kitchen } = await scored();
    for (const [at, taster] of ['Taster A', 'Taster B', 'Taster C'].entries()) {
      await score(taster, 'A', 3 + at);
      await score(taster, 'B', 9);
      await score(taster, 'C', 5 + at);
    }
    await ask('sightings:log', { jar: jar('B'), what: 'mould' });
    const refused = await fail('scores:enter', {
      tasting,
      scores: [{ taster: 'Taster A', sample: code('B'), attribute: 'liking', score: 2 }],
    });
    expect(refused).toMatchObject({ path: ['scores', 0, 'sample'] });
    expect(refused.message).toContain('its jar was discarded (mould)');
    const table = `taster,sample,liking\nTaster A,${code('B')},2\n`;
    expect(await ask('scores:import', { tasting, table })).toMatchObject({
      accepted: 0,
      refused: [{ code: 'taken-out' }],
    });
    expect(await fail('remarks:save', { tasting, taster: 'Taster A', sample: code('B'), words: 'odd' })).toBeTruthy();
    expect(kitchen.read.one('SELECT count(*) AS n FROM scores')).toEqual({ n: 9 });

    await ask('tastings:close', { tasting });
    const findings = await ask('findings:read', { trial });
    expect(new Set(findings.scores.map((one) => one.jar))).toEqual(new Set(['A', 'C']));
    expect(findings.takenOut).toMatchObject([{ jar: 'B', level: '2 days', why: 'mould', scores: 3 }]);
    expect(findings.takenOut[0]?.sentence).toBe(
      'Jar B (2 days) was taken out of “Day three” before it was revealed: mould. Its 3 scores are kept and not counted.',
    );
    expect((await ask('findings:text', { trial })).text).toContain('was taken out of “Day three”');
    expect((await ask('scores:list', { tasting })).scores).toHaveLength(9);
  });

  it('leaves the order of the other cups to be counted where cups were put in order', async () => {
    const { ask, trial, tasting, jar, score } = await scored(true);
    const places = { 'Taster A': [2, 1, 3], 'Taster B': [3, 1, 2], 'Taster C': [2, 1, 3] } as const;
    for (const [taster, [a, b, c]] of Object.entries(places)) {
      await score(taster, 'A', a);
      await score(taster, 'B', b);
      await score(taster, 'C', c);
    }
    await ask('sightings:log', { jar: jar('B'), what: 'mould' });
    await ask('tastings:close', { tasting });
    const [ranking] = (await ask('findings:places', { trial })).rankings;
    expect(ranking?.counted).toBe(3);
    expect(ranking?.samples.map(({ sample, rankSum }) => [sample, rankSum])).toEqual([
      ['1 day', 4],
      ['3 days', 5],
    ]);
  });

  it('goes with any discarding, and comes back by one undo', async () => {
    const { ask, tasting, jar } = await scored();
    expect(await ask('jars:discard', { jars: [jar('C')], reason: 'broken glass' })).toMatchObject({
      tastings: ['Day three'],
    });
    expect((await ask('tastings:open', { tasting })).samples).toBe(2);
    await ask('undo:last', {});
    expect((await ask('tastings:open', { tasting })).samples).toBe(3);
    expect((await ask('jars:open', { jar: jar('C') })).jar.state).toBe('pulled');
  });

  it('ends a test of telling apart, without saying which of its jars it was', async () => {
    const { ask, fail, trial, tasters, jar } = await scored();
    const { discrimination } = await ask('discriminations:build', {
      trial,
      name: 'A or B',
      method: 'triangle',
      jarA: jar('A'),
      jarB: jar('B'),
      tasters,
    });
    await ask('sightings:log', { jar: jar('B'), what: 'mould' });
    const open = await ask('discriminations:open', { discrimination });
    expect(open.warnings[0]).toContain('One of the two jars was discarded (mould)');
    const answer = { discrimination, taster: tasters[0] ?? '', round: 1, chosen: 1 };
    expect(await fail('discriminations:answer', answer)).toMatchObject({ code: 'refused' });
  });
});

describe('a mistaken sighting', () => {
  it('stays to be read, brings the jar and its samples back in one step, and undo throws it out again', async () => {
    const { ask, fail, tasting, jar } = await scored();
    const { sighting } = await ask('sightings:log', { jar: jar('B'), what: 'mould', note: 'white spots' });
    const back = await ask('sightings:correct', { sighting, why: 'film yeast' });
    expect(back).toEqual({ sighting, broughtBack: 'B', tastings: ['Day three'], without: [] });
    const page = await ask('jars:open', { jar: jar('B') });
    expect(page.jar).toMatchObject({ state: 'pulled', discardReason: null });
    expect(page.sightings).toMatchObject([{ what: 'mould', note: 'white spots', correction: 'film yeast' }]);
    expect(page.sightings[0]?.correctedAt).not.toBeNull();
    expect((await ask('tastings:open', { tasting })).samples).toBe(3);
    expect(await fail('sightings:correct', { sighting })).toMatchObject({ code: 'refused' });

    await ask('undo:last', {});
    expect((await ask('jars:open', { jar: jar('B') })).jar).toMatchObject({ discardReason: 'mould' });
    expect((await ask('tastings:open', { tasting })).samples).toBe(2);
  });

  it('can’t be taken out instead', async () => {
    const { ask, desk, jar } = await scored();
    const { sighting } = await ask('sightings:log', { jar: jar('B'), what: 'film' });
    const removed = await desk.handle('entries:remove', { kind: 'sighting', id: sighting });
    expect(removed).toMatchObject({ ok: false, error: { code: 'invalid-input', path: ['kind'] } });
  });

  it('leaves the jar out while mould was seen twice, or it went for another reason', async () => {
    const { ask, jar } = await scored();
    const first = await ask('sightings:log', { jar: jar('A'), what: 'mould' });
    await ask('sightings:log', { jar: jar('A'), what: 'mould' });
    expect(await ask('sightings:correct', { sighting: first.sighting })).toMatchObject({ broughtBack: null });
    expect((await ask('jars:open', { jar: jar('A') })).jar.state).toBe('discarded');
    await ask('jars:discard', { jars: [jar('C')], reason: 'smells off' });
    const late = await ask('sightings:log', { jar: jar('C'), what: 'mould' });
    expect(await ask('sightings:correct', { sighting: late.sighting })).toMatchObject({ broughtBack: null });
    expect((await ask('jars:open', { jar: jar('C') })).jar.discardReason).toBe('smells off');
  });

  it('comes too late for a tasting that was revealed without the jar, and says so', async () => {
    const { ask, trial, tasting, jar, score } = await scored();
    await score('Taster A', 'B', 8);
    await score('Taster A', 'A', 3);
    const { sighting } = await ask('sightings:log', { jar: jar('B'), what: 'mould' });
    await ask('tastings:close', { tasting });
    expect(await ask('sightings:correct', { sighting })).toMatchObject({
      broughtBack: 'B',
      tastings: [],
      without: ['Day three'],
    });
    expect((await ask('findings:read', { trial })).takenOut).toHaveLength(1);
  });

  it('is no first bubble, no look and no stir any more', async () => {
    const { ask, trial, jar } = await scored();
    const { sighting } = await ask('sightings:log', { jar: jar('A'), what: 'first-bubbles' });
    const seen = async () =>
      (await ask('course:read', { trial })).jars.find((one) => one.jar === jar('A'))?.events.map(({ what }) => what);
    expect(await seen()).toContain('first-bubbles');
    await ask('sightings:correct', { sighting });
    expect(await seen()).not.toContain('first-bubbles');
  });
});

describe('froth', () => {
  it('stands on a jar from when it is seen until it is said to be gone, was a mistake, or the jar is strained', async () => {
    const { ask, jar, clock } = await scored();
    const isFrothy = async (label: string) => (await ask('jars:open', { jar: jar(label) })).jar.isFrothy;
    const see = (label: string, what: 'froth' | 'clear' | 'cloudy') => {
      clock.move(1);
      return ask('sightings:log', { jar: jar(label), what });
    };
    expect(await isFrothy('A')).toBe(false);
    await see('A', 'froth');
    await see('A', 'cloudy');
    expect(await isFrothy('A')).toBe(true);
    await see('A', 'clear');
    expect(await isFrothy('A')).toBe(false);
    const { sighting } = await see('B', 'froth');
    await ask('sightings:correct', { sighting });
    expect(await isFrothy('B')).toBe(false);
    await see('C', 'froth');
    await ask('jars:strain', { jars: [jar('C')] });
    expect(await isFrothy('C')).toBe(false);
  });
});

describe('mould in a base', () => {
  it('marks the trial and each jar poured from it, until it is corrected', async () => {
    const { ask } = await temporaryDesk();
    const { base } = await ask('bases:start', { name: 'Batch 1', volume_mL: 3000 });
    const { trial, jars } = await ask('trials:save', { ...daysPlan, base });
    const jar = jars[0]?.id ?? '';
    expect((await ask('jars:open', { jar })).baseMould).toBeNull();
    const { sighting } = await ask('sightings:log', { base, what: 'mould' });
    expect((await ask('jars:open', { jar })).baseMould).toMatchObject({ base, name: 'Batch 1' });
    expect((await ask('trials:open', { trial })).baseMould).toMatchObject({ base });
    await ask('sightings:correct', { sighting });
    expect((await ask('jars:open', { jar })).baseMould).toBeNull();
  });
});

describe('a jar in bottles', () => {
  it('is read with the sugar, closure and size that were noted at closing', async () => {
    const { ask, jar } = await scored();
    expect((await ask('sheets:ofJar', { jar: jar('A') })).bottled).toBeNull();
    await ask('bottles:fill', { jar: jar('A'), count: 2, size_mL: 330, closure: 'swing-top', sugar_g_per_L: 9 });
    const { bottled } = await ask('sheets:ofJar', { jar: jar('A') });
    expect(bottled).toMatchObject({ closure: 'swing-top', size_mL: 330, sugar_g_per_L: 9 });
    expect(bottled?.gauge_bar?.at35).toBeGreaterThan(bottled?.gauge_bar?.ambient ?? Number.NaN);
    expect(bottled?.cautions.map(({ code }) => code)).toContain('vessel-unrated');
  });
});
