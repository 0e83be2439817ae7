import { describe, expect, it } from 'vitest';
import type { AskedOf } from '#shared/contract/all-requests.ts';
import { type TestDesk, temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { preparedTrial } from './example-trial.ts';

async function built(test: TestDesk, more: Partial<AskedOf<'tastings:build'>> = {}) {
  const prepared = await preparedTrial(test);
  const answer = await test.ask('tastings:build', {
    trial: prepared.trial,
    name: 'T',
    samples: prepared.jars.map(({ id }) => ({ jar: id })),
    tasters: prepared.tasters,
    seed: 9,
    ...more,
  });
  const code = (label: string) => answer.codes[prepared.jars.find((jar) => jar.label === label)?.id ?? ''] ?? '';
  return { ...prepared, ...answer, code };
}

const sweetness = { attributes: [{ name: 'sweetness', kind: 'just-about-right' as const, low: -2, high: 2 }] };

async function scoresOf(test: TestDesk, tasting: string) {
  const { scores } = await test.ask('scores:list', { tasting });
  return scores.map(({ taster, sample, replicate, score }) => `${taster} ${sample} ${replicate} ${score}`);
}

describe('while a tasting is open', () => {
  it('a sample is named by its code or id alone: a label or a level is refused, in sheets, remarks and tables', async () => {
    const test = await temporaryDesk();
    const { tasting, code } = await built(test);
    const score = { taster: 'Taster A', attribute: 'tang', score: 5 };
    for (const sample of ['B', 'b', '2 days']) {
      expect(await test.fail('scores:enter', { tasting, scores: [{ ...score, sample }] })).toMatchObject({
        code: 'invalid-input',
        message: expect.stringContaining('blind code alone'),
        path: ['scores', 0, 'sample'],
      });
      expect(await test.fail('remarks:save', { tasting, taster: 'Taster A', sample, words: 'x' })).toMatchObject({
        path: ['sample'],
      });
      const table = `taster,sample,tang\nTaster A,${sample},5`;
      expect(await test.ask('scores:import', { tasting, table })).toMatchObject({
        accepted: 0,
        refused: [{ row: 2, column: 'sample', code: 'jar-while-blind' }],
      });
    }
    expect(await scoresOf(test, tasting)).toEqual([]);
    const { sampleList } = await test.ask('tastings:open', { tasting });
    const id = sampleList.find((sample) => sample.code === code('B'))?.id ?? '';
    await test.ask('scores:enter', { tasting, scores: [{ ...score, sample: id }] });
    expect(await scoresOf(test, tasting)).toEqual([`Taster A ${code('B')} 1 5`]);
  });
});

describe('places of a ranking', () => {
  it('are given once by each taster: a second one is refused at its path and nothing is kept, unless ties are declared', async () => {
    const test = await temporaryDesk();
    const { trial, jars, tasters } = await preparedTrial(test, 2);
    const samples = jars.map(({ id }) => ({ jar: id }));
    const built = await test.ask('tastings:build', { trial, name: 'R', samples, tasters, ranked: true, seed: 2 });
    const { tasting } = built;
    const [a = '', b = '', c = ''] = Object.values(built.codes);
    const place = (sample: string, score: number | null, taster = 'Taster A') => ({
      taster,
      sample,
      attribute: 'place',
      score,
    });
    const stored = async () =>
      (await test.ask('scores:list', { tasting })).scores.map(({ taster, sample, score }) => [taster, sample, score]);
    const twice = { tasting, scores: [place(a, 1), place(b, 2), place(c, 2)] };
    expect(await test.fail('scores:enter', twice)).toMatchObject({
      code: 'invalid-input',
      path: ['scores', 1, 'score'],
      message: expect.stringContaining('Taster A has given place 2 to another sample too'),
    });
    expect(await stored()).toEqual([]);
    // Another taster may give the same place, and places are exchanged in one request.
    await test.ask('scores:enter', { tasting, scores: [place(a, 1), place(b, 2), place(a, 2, 'Taster B')] });
    await test.ask('scores:enter', { tasting, scores: [place(a, 2), place(b, 1)] });
    expect(await test.fail('scores:enter', { tasting, scores: [place(c, 1)] })).toMatchObject({
      path: ['scores', 0, 'score'],
    });
    expect(await stored()).toHaveLength(3);
    await test.ask('scores:enter', { tasting, scores: [place(c, 1)], ties: true });
    expect(await stored()).toContainEqual(['Taster A', c, 1]);
    // A jar that was discarded holds no place any more.
    await test.ask('jars:discard', {
      jars: [jars.find(({ id }) => built.codes[id] === b)?.id ?? ''],
      reason: 'spilled',
    });
    await test.ask('scores:enter', { tasting, scores: [place(c, null)] });
    const table = `taster,sample,attribute,score\nTaster A,${c},place,1\n`;
    expect(await test.ask('scores:import', { tasting, table, preview: true })).toEqual({ accepted: 1, refused: [] });
    await test.ask('scores:enter', { tasting, scores: [place(c, 1)] });
  });
});

describe('a column without a heading', () => {
  it('of a table of scores or readings is said to be left out, unless it is empty', async () => {
    const test = await temporaryDesk();
    const { trial, jars, tasters } = await preparedTrial(test, 2);
    const samples = jars.map(({ id }) => ({ jar: id }));
    const { tasting, codes } = await test.ask('tastings:build', { trial, name: 'T', samples, tasters, seed: 2 });
    const code = Object.values(codes)[0] ?? '';
    const said = [{ row: 1, code: 'no-heading', message: 'Column 4 has no heading and is left out.' }];
    const wide = `taster,sample,tang,,\nTaster A,${code},5,7,\n`;
    expect(await test.ask('scores:import', { tasting, table: wide, preview: true })).toEqual({
      accepted: 1,
      refused: said,
    });
    const long = `taster,sample,attribute, ,score\nTaster A,${code},tang,7,5\n`;
    expect(await test.ask('scores:import', { tasting, table: long })).toEqual({ accepted: 1, refused: said });
    const readings = `jar,hours,brix,\n${jars[0]?.label},24,6.2,x\n`;
    expect(await test.ask('readings:import', { trial, table: readings, preview: true })).toMatchObject({
      accepted: 1,
      refused: said,
    });
    const empty = `jar,hours,brix,\n${jars[0]?.label},24,6.2,\n`;
    expect(await test.ask('readings:import', { trial, table: empty, preview: true })).toMatchObject({ refused: [] });
  });
});

describe('scores:import of just-about-right answers', () => {
  it('takes −2 to 2 and the five words, and names what is neither', async () => {
    const test = await temporaryDesk();
    const { tasting, code } = await built(test, sweetness);
    const table = [
      'taster,sample,sweetness',
      `Taster A,${code('A')},-2`,
      `Taster A,${code('B')},−1`,
      `Taster A,${code('C')},Just about right`,
      `Taster B,${code('A')},much too much`,
      `Taster B,${code('B')},0.5`,
      `Taster B,${code('C')},4`,
      `Taster C,${code('A')},sticky`,
    ].join('\n');
    const { accepted, refused } = await test.ask('scores:import', { tasting, table });
    expect(accepted).toBe(4);
    expect(refused.map(({ row, code: why }) => `${row} ${why}`)).toEqual([
      '6 not-whole',
      '7 off-scale',
      '8 not-a-step',
    ]);
    expect(refused[1]?.message).toContain('take 3 off');
    expect(refused[2]?.message).toContain('“just right”');
    expect((await scoresOf(test, tasting)).map((line) => line.split(' ').at(-1)).sort()).toEqual([
      '-1',
      '-2',
      '0',
      '2',
    ]);
  });
});

describe('scores:import of a ranking', () => {
  it('takes places, names a place given twice, and lets samples share one where it is written so', async () => {
    const test = await temporaryDesk();
    const { tasting, code } = await built(test, { ranked: true });
    const table = [
      'taster,code,place',
      `Taster A,${code('A')},2`,
      `Taster A,${code('B')},1`,
      `Taster A,${code('C')},2`,
      `Taster B,${code('A')},1=`,
      `Taster B,${code('B')},=1`,
      `Taster B,${code('C')},4`,
      `Taster C,${code('A')},1.5`,
      `Taster C,${code('B')},best`,
    ].join('\n');
    const { accepted, refused } = await test.ask('scores:import', { tasting, table });
    expect(accepted).toBe(4);
    expect(refused.map(({ row, code: why }) => `${row} ${why}`)).toEqual([
      '4 place-twice',
      '7 off-scale',
      '8 not-whole',
      '9 not-a-number',
    ]);
    expect(refused[0]?.message).toBe(
      'Taster A has given place 2 in row 2 already. Write 2= where two samples share it on purpose.',
    );
    const later = `taster,code,place\nTaster A,${code('C')},1`;
    expect((await test.ask('scores:import', { tasting, table: later })).refused).toMatchObject([
      { code: 'place-twice' },
    ]);
    expect((await test.ask('scores:import', { tasting, table: `${later}=` })).accepted).toBe(1);
  });
});

describe('scores:import', () => {
  it('gives a row without a replicate the first one that the table leaves free, wherever the others stand', async () => {
    const test = await temporaryDesk();
    const { tasting, code } = await built(test, { replicates: 3 });
    const table = [
      'taster,sample,attribute,score,replicate',
      `Taster A,${code('A')},tang,4,2`,
      `Taster A,${code('A')},tang,5,`,
      `Taster A,${code('A')},tang,6,`,
      `Taster A,${code('A')},tang,7,`,
      `Taster B,${code('A')},tang,3,`,
      `Taster B,${code('A')},tang,2,1`,
    ].join('\n');
    const { accepted, refused } = await test.ask('scores:import', { tasting, table });
    expect(accepted).toBe(5);
    expect(refused).toMatchObject([{ row: 5, code: 'twice-in-table' }]);
    const a = code('A');
    expect((await scoresOf(test, tasting)).sort()).toEqual([
      `Taster A ${a} 1 5`,
      `Taster A ${a} 2 4`,
      `Taster A ${a} 3 6`,
      `Taster B ${a} 1 2`,
      `Taster B ${a} 2 3`,
    ]);
    // Pasted again, it fills no further serving.
    const again = await test.ask('scores:import', { tasting, table });
    expect(again.accepted).toBe(0);
  });

  it('names a column that stands twice: twice the taster takes nothing, twice an attribute leaves the second out', async () => {
    const test = await temporaryDesk();
    const { tasting, code } = await built(test);
    const a = code('A');
    const fields = `taster,sample,taster,tang\nTaster A,${a},Taster B,5`;
    const twice = await test.ask('scores:import', { tasting, table: fields });
    expect(twice).toMatchObject({ accepted: 0, refused: [{ row: 1, column: 'taster', code: 'column-twice' }] });
    const scores = `taster,sample,tang,Tang\nTaster A,${a},5,6\nTaster B,${a},4,`;
    const { accepted, refused } = await test.ask('scores:import', { tasting, table: scores });
    expect(accepted).toBe(2);
    expect(refused).toMatchObject([{ row: 1, column: 'Tang', code: 'column-twice' }]);
    expect(refused[0]?.message).toContain('Its one score is left out');
    expect((await scoresOf(test, tasting)).sort()).toEqual([`Taster A ${a} 1 5`, `Taster B ${a} 1 4`]);
  });

  it('names a thousand refusals and counts the rest', async () => {
    const test = await temporaryDesk();
    const { tasting } = await built(test);
    const table = `taster,sample,tang\n${'Taster A,000,5\n'.repeat(1500)}`;
    const { accepted, refused, refusedMore } = await test.ask('scores:import', { tasting, table, preview: true });
    expect([accepted, refused.length, refusedMore]).toEqual([0, 1000, 500]);
    const short = await test.ask('scores:import', { tasting, table: 'taster,sample,tang\nTaster A,000,5' });
    expect(short).not.toHaveProperty('refusedMore');
  });
});
