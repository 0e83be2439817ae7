import { describe, expect, it } from 'vitest';
import { Failure } from '#shared/failure.ts';
import { type TestDesk, temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { preparedTrial } from './example-trial.ts';

async function builtTasting(test: TestDesk, replicates = 1) {
  const prepared = await preparedTrial(test);
  const built = await test.ask('tastings:build', {
    trial: prepared.trial,
    name: 'Day three',
    samples: prepared.jars.map(({ id }) => ({ jar: id })),
    tasters: prepared.tasters,
    replicates,
    seed: 9,
  });
  const code = (label: string) => built.codes[prepared.jars.find((jar) => jar.label === label)?.id ?? ''] ?? '';
  return { ...prepared, ...built, code };
}

describe('tastings:build', () => {
  it('gives three-digit codes that tell nothing and are not those of an open tasting', async () => {
    const test = await temporaryDesk();
    const first = await builtTasting(test);
    const codes = Object.values(first.codes);
    for (const code of codes) {
      expect(code).toMatch(/^[1-9]\d\d$/);
      expect(new Set(code).size).toBe(3);
      expect(['123', '321', '100', '999', '111']).not.toContain(code);
    }
    const second = await test.ask('tastings:build', {
      name: 'Again',
      samples: first.jars.map(({ id }) => ({ jar: id })),
      tasters: first.tasters,
      seed: 9,
    });
    for (const code of Object.values(second.codes)) expect(codes).not.toContain(code);
  });

  it('draws other codes each time where no seed is given', async () => {
    const drawn = new Set<string>();
    for (let kitchen = 0; kitchen < 4; kitchen += 1) {
      const test = await temporaryDesk();
      const { jars, tasters } = await preparedTrial(test);
      const built = await test.ask('tastings:build', {
        name: 'T',
        samples: jars.map(({ id }) => ({ jar: id })),
        tasters,
      });
      drawn.add(Object.values(built.codes).join(' '));
    }
    expect(drawn.size).toBeGreaterThan(1);
  });

  it('serves every taster every sample once, in orders balanced for place', async () => {
    const test = await temporaryDesk();
    const prepared = await preparedTrial(test, 6);
    const { tasting } = await test.ask('tastings:build', {
      name: 'Six',
      samples: prepared.jars.map(({ id }) => ({ jar: id })),
      tasters: prepared.tasters,
    });
    const { orders } = await test.ask('tastings:open', { tasting });
    expect(orders).toHaveLength(6);
    const places = new Map<string, number[]>();
    for (const { sittings } of orders) {
      expect(sittings).toHaveLength(1);
      sittings[0]?.codes.forEach((code, place) => {
        const counts = places.get(code) ?? [0, 0, 0];
        counts[place] = (counts[place] ?? 0) + 1;
        places.set(code, counts);
      });
    }
    // Six tasters fill one Williams square for three samples: each sample twice in each place.
    expect([...places.values()]).toEqual([
      [2, 2, 2],
      [2, 2, 2],
      [2, 2, 2],
    ]);
  });

  it('refuses a discarded jar, a jar that was never started, and the same jar twice', async () => {
    const test = await temporaryDesk();
    const { jars, tasters } = await preparedTrial(test);
    const [a = '', b = ''] = jars.map(({ id }) => id);
    const seen = await test.ask('sightings:log', { jar: a, what: 'mould' });
    expect(seen.discarded).toBe(true);
    const build = (samples: string[]) =>
      test.fail('tastings:build', { name: 'T', samples: samples.map((jar) => ({ jar })), tasters });
    expect(await build([b, a])).toMatchObject({ code: 'refused', path: ['samples', 1, 'jar'] });
    expect(await build([b, b])).toMatchObject({ code: 'refused', path: ['samples', 1, 'jar'] });
    expect(test.kitchen.read.all('SELECT id FROM tastings')).toEqual([]);
  });

  it('warns who must not taste what', async () => {
    const test = await temporaryDesk();
    const { ask } = test;
    await ask('pantry:save', {
      name: 'almond syrup',
      kind: 'sweetener',
      water_g: 30,
      sugars_g: 60,
      allergens: ['nuts'],
    });
    const { jars } = await ask('trials:save', {
      question: 'Syrup?',
      factor: 'amount',
      levels: [
        { name: '20 g', value: 20 },
        { name: '40 g', value: 40 },
      ],
      control: '20 g',
      held: { additions: [{ ingredient: 'almond syrup', mass_g: 20, state: 'liquid' }], days: 2 },
      calendar: 'staggered-pull',
      baseAvailable_mL: 3000,
      baseEach_mL: 700,
      vessel: { kind: 'open-jar', capacity_mL: 1000 },
      start: '2026-05-01T08:00:00Z',
      seed: 1,
    });
    const ids = jars.map(({ id }) => id);
    await ask('jars:start', { jars: ids });
    const { taster: nutty } = await ask('tasters:save', { name: 'Ann', avoids: ['nuts'] });
    const { taster: sober } = await ask('tasters:save', { name: 'Ben', avoidsAlcohol: true });
    const { taster: free } = await ask('tasters:save', { name: 'Cem' });
    const { tasting, warnings } = await ask('tastings:build', {
      name: 'T',
      samples: ids.map((jar) => ({ jar })),
      tasters: [nutty, sober, free],
    });
    expect(warnings).toHaveLength(2);
    const { orders } = await ask('tastings:open', { tasting });
    const of = (name: string) => orders.find((order) => order.name === name)?.warnings.join(' ');
    expect(of('Ann')).toContain('almond syrup brings it');
    expect(of('Ben')).toContain('avoids alcohol');
    expect(of('Cem')).toBe('');
  });
});

describe('a tasting', () => {
  it('stays blind until it is closed; the pouring list is asked for apart', async () => {
    const test = await temporaryDesk();
    const { tasting } = await builtTasting(test);
    expect((await test.ask('tastings:open', { tasting })).sampleList.map(({ jar }) => jar)).toEqual([null, null, null]);
    const poured = await test.ask('tastings:pour', { tasting });
    expect(poured.sampleList.map(({ jar }) => jar?.label).sort()).toEqual(['A', 'B', 'C']);
    await test.ask('tastings:close', { tasting });
    const closed = await test.ask('tastings:open', { tasting });
    expect(closed.sampleList.map(({ jar }) => jar?.level).sort()).toEqual(['1 day', '2 days', '3 days']);
    expect(
      await test.fail('scores:enter', {
        tasting,
        scores: [{ taster: 'Taster A', sample: 'A', attribute: 'tang', score: 4 }],
      }),
    ).toMatchObject({ code: 'refused' });
  });

  it('keeps, changes and takes back a score; nothing is kept of a sheet with a bad score', async () => {
    const test = await temporaryDesk();
    const { tasting, code } = await builtTasting(test);
    const score = (value: number | null, more = {}) => ({
      taster: 'taster a',
      sample: code('A'),
      attribute: 'Tang',
      score: value,
      ...more,
    });
    const stored = () => test.kitchen.read.all('SELECT score FROM scores');
    await test.ask('scores:enter', { tasting, scores: [score(4)] });
    await test.ask('scores:enter', { tasting, scores: [score(5.5)] });
    expect(stored()).toEqual([{ score: 5.5 }]);
    expect(await test.fail('scores:enter', { tasting, scores: [score(6), score(11, { sample: code('B') })] })).toEqual({
      code: 'invalid-input',
      message: 'tang is scored from 0 to 10; 11 is outside.',
      path: ['scores', 1, 'score'],
    });
    expect(stored()).toEqual([{ score: 5.5 }]);
    expect(await test.fail('scores:enter', { tasting, scores: [score(6, { replicate: 2 })] })).toMatchObject({
      path: ['scores', 0, 'replicate'],
    });
    expect(await test.ask('scores:enter', { tasting, scores: [score(null)] })).toEqual({ entered: 0, removed: 1 });
    expect(stored()).toEqual([]);
  });
});

describe('scores:import', () => {
  it('takes a wide and a long table, with a BOM, semicolons, decimal commas and missed samples', async () => {
    const test = await temporaryDesk();
    const { tasting, code } = await builtTasting(test);
    const wide = `\ufeffTaster;Code;Tang;Liking\nTaster A;${code('A')};4,5;7\nTaster B;${code('A')};;6\n;;;\n`;
    expect(await test.ask('scores:import', { tasting, table: wide })).toEqual({ accepted: 3, refused: [] });
    const long = `judge,code,attribute,score\nTaster C,${code('B')},fizz,3\nTaster C,${code('C')},fizz,8\n`;
    expect(await test.ask('scores:import', { tasting, table: long })).toEqual({ accepted: 2, refused: [] });
    expect(test.kitchen.read.all('SELECT score FROM scores ORDER BY score')).toEqual(
      [3, 4.5, 6, 7, 8].map((score) => ({ score })),
    );
  });

  it('names every row it can’t take, and why, and keeps the others', async () => {
    const test = await temporaryDesk();
    const { tasting, code } = await builtTasting(test);
    const table = [
      'taster,sample,attribute,score,replicate',
      `Taster A,${code('A')},tang,4,`,
      `Taster Z,${code('A')},tang,4,`,
      `Taster A,000,tang,4,`,
      `Taster A,${code('B')},sourness,4,`,
      `Taster A,${code('B')},tang,eleven,`,
      `Taster A,${code('B')},tang,11,`,
      `Taster A,${code('B')},tang,,`,
      `Taster A,${code('A')},tang,5,`,
      `Taster A,${code('B')},tang,5,3`,
      `Taster A,${code('C')},tang,=1+1,`,
      `Taster A,${code('C')},tang,6,1,extra`,
      `Taster A,${code('C')},tang,6,1`,
    ].join('\n');
    const { accepted, refused } = await test.ask('scores:import', { tasting, table });
    expect(accepted).toBe(2);
    expect(refused.map(({ row, code: why }) => `${row} ${why}`)).toEqual([
      '3 unknown-taster',
      '4 unknown-sample',
      '5 unknown-attribute',
      '6 not-a-number',
      '7 off-scale',
      '8 score-missing',
      '9 twice-in-table',
      '10 replicate-outside',
      '11 not-a-number',
      '12 too-many-cells',
    ]);
    expect(refused[4]?.message).toBe('tang is scored from 0 to 10; 11 is outside.');
    const again = await test.ask('scores:import', { tasting, table: `taster,sample,tang\nTaster A,${code('A')},4` });
    expect(again.refused).toMatchObject([{ row: 2, code: 'already-scored' }]);
  });

  it('a preview keeps nothing; a table without the columns names them; a mapping renames them', async () => {
    const test = await temporaryDesk();
    const { tasting, code } = await builtTasting(test, 2);
    const table = `who,glass,tang\nTaster A,${code('A')},4\nTaster A,${code('A')},5`;
    const lost = await test.ask('scores:import', { tasting, table });
    expect(lost).toMatchObject({ accepted: 0, refused: [{ row: 1, code: 'no-header' }] });
    const mapping = { who: 'taster', sample: 'glass' };
    expect(await test.ask('scores:import', { tasting, table, mapping, preview: true })).toEqual({
      accepted: 2,
      refused: [],
    });
    expect(test.kitchen.read.all('SELECT id FROM scores')).toEqual([]);
    await test.ask('scores:import', { tasting, table, mapping });
    expect(test.kitchen.read.all('SELECT replicate, score FROM scores ORDER BY replicate')).toEqual([
      { replicate: 1, score: 4 },
      { replicate: 2, score: 5 },
    ]);
  });

  it('can be stopped: nothing of it is kept', async () => {
    const test = await temporaryDesk();
    const { tasting, code } = await builtTasting(test);
    let asked = 0;
    const table = `taster,sample,tang\nTaster A,${code('A')},4\nTaster B,${code('A')},4`;
    const stopped = await test.desk.handle(
      'scores:import',
      { tasting, table },
      {
        progress() {},
        assertGoing() {
          asked += 1;
          // The first question is asked while matching, the second inside the transaction.
          if (asked > 1) throw new Failure('stopped', 'Stopped. Nothing was changed.');
        },
      },
    );
    expect(stopped).toMatchObject({ ok: false, error: { code: 'stopped' } });
    expect(test.kitchen.read.all('SELECT id FROM scores')).toEqual([]);
  });
});
