import { describe, expect, it } from 'vitest';
import { type TestDesk, temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { preparedTrial } from './example-trial.ts';

async function builtTasting(test: TestDesk) {
  const prepared = await preparedTrial(test);
  const built = await test.ask('tastings:build', {
    name: 'Day three',
    samples: prepared.jars.map(({ id }) => ({ jar: id })),
    tasters: prepared.tasters,
  });
  return { ...prepared, ...built, codes: Object.values(built.codes) };
}

describe('remarks:list', () => {
  it('gives each remark by taster and code; empty words take one back, and a closed tasting keeps them', async () => {
    const test = await temporaryDesk();
    const { tasting, codes } = await builtTasting(test);
    const [a = '', b = ''] = codes;
    const remark = (sample: string, words: string) =>
      test.ask('remarks:save', { tasting, taster: 'Taster A', sample, words });
    await remark(a, 'yeasty');
    await remark(b, 'missed: the glass broke');
    await remark(a, 'yeasty, but clean');
    const list = async () => (await test.ask('remarks:list', { tasting })).remarks;
    expect(await list()).toEqual(
      [
        { taster: 'Taster A', sample: a, words: 'yeasty, but clean' },
        { taster: 'Taster A', sample: b, words: 'missed: the glass broke' },
      ].sort((one, other) => one.sample.localeCompare(other.sample)),
    );
    await remark(b, '');
    expect(await list()).toHaveLength(1);
    await test.ask('tastings:close', { tasting });
    expect(await list()).toHaveLength(1);
    expect(await test.fail('remarks:save', { tasting, taster: 'Taster A', sample: a, words: 'late' })).toMatchObject({
      code: 'refused',
    });
    expect(await test.fail('remarks:list', { tasting: tasting.replace(/.$/, '0').replace(/^./, 'f') })).toMatchObject({
      code: 'not-found',
    });
  });
});

describe('scores:columns', () => {
  it('says what each column is taken for, by its name, its synonym or the mapping', async () => {
    const { ask } = await temporaryDesk();
    const table = 'Judge;glass;Tang;room\nAnn;274;5;kitchen\n\n;;;\nBen;274;6;kitchen';
    expect(await ask('scores:columns', { table })).toEqual({
      columns: [
        { head: 'Judge', meaning: 'taster' },
        { head: 'glass', meaning: 'glass' },
        { head: 'Tang', meaning: 'Tang' },
        { head: 'room', meaning: 'room' },
      ],
      rows: 2,
    });
    const mapped = await ask('scores:columns', { table, mapping: { glass: 'sample', room: '' } });
    expect(mapped.columns.map(({ meaning }) => meaning)).toEqual(['taster', 'sample', 'Tang', '']);
  });
});

describe('scores:import', () => {
  it('names an unknown column once, with how many scores are left out by it, and not at all when it is left out', async () => {
    const test = await temporaryDesk();
    const { tasting, codes } = await builtTasting(test);
    const [a = '', b = '', c = ''] = codes;
    const table = `taster,sample,tang,room\nTaster A,${a},4,1\nTaster A,${b},5,2\nTaster A,${c},6,`;
    const { accepted, refused } = await test.ask('scores:import', { tasting, table, preview: true });
    expect(accepted).toBe(3);
    expect(refused).toHaveLength(1);
    expect(refused[0]).toMatchObject({ row: 1, column: 'room', code: 'unknown-attribute' });
    expect(refused[0]?.message).toContain('Its 2 scores are left out.');
    expect(await test.ask('scores:import', { tasting, table, mapping: { room: '' }, preview: true })).toEqual({
      accepted: 3,
      refused: [],
    });
    expect(test.kitchen.read.all('SELECT id FROM scores')).toEqual([]);
  });
});

describe('tastings:warn', () => {
  it('warns before anything is built, and of nobody who avoids nothing', async () => {
    const test = await temporaryDesk();
    const { jars, tasters } = await preparedTrial(test);
    const { taster } = await test.ask('tasters:save', { name: 'Sober', avoidsAlcohol: true });
    const ids = jars.map(({ id }) => id);
    const { warnings } = await test.ask('tastings:warn', { jars: ids, tasters: [...tasters, taster] });
    expect(warnings).toEqual([{ taster, lines: [expect.stringContaining('Sober avoids alcohol')] }]);
    expect(await test.ask('tastings:warn', { jars: ids, tasters })).toEqual({ warnings: [] });
    expect(test.kitchen.read.all('SELECT id FROM tastings')).toEqual([]);
  });
});
