import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { storedJson } from '#shared/contract/stored-json.ts';
import { columnWordFaults } from '#store/carry/column-words-table.ts';
import { columnNames, type TableName, tableNames } from '#store/tables.ts';
import { type TestDesk, temporaryDesk, temporaryFolder } from './temporary-kitchen.ts';

async function exported(test: TestDesk) {
  const folder = join(temporaryFolder(), 'out');
  const told = await test.ask('data:export', { to: folder });
  const text = (name: string) => readFileSync(join(folder, name), 'utf8');
  return { ...told, text };
}

async function sampleDesk(): Promise<TestDesk> {
  const test = await temporaryDesk();
  await test.ask('kitchen:sample', {});
  return test;
}

const rowsOf = (test: TestDesk, table: TableName) => test.kitchen.read.all(`SELECT * FROM ${table} ORDER BY id`);

describe('data:export', () => {
  it('goes round: export, take into an empty kitchen, export again, the same to the byte', async () => {
    const test = await sampleDesk();
    await test.ask('kitchen:change', { name: 'Round “trip”, kitchen' });
    const first = await exported(test);
    const other = await temporaryDesk();
    const taken = await other.ask('data:takeIn', { text: first.text('kitchen.json') });
    expect(taken).toMatchObject({ taken: true, same: 0, kept: [], renamed: [], holds: 'kitchen' });
    const second = await exported(other);
    expect(second.files.map(({ name }) => name)).toEqual(first.files.map(({ name }) => name));
    expect(first.files.length).toBeGreaterThan(15);
    for (const { name } of first.files) expect(second.text(name)).toBe(first.text(name));
    expect(await other.ask('store:check', {})).toEqual({ ok: true, problems: [] });
    // One step, and it can be taken back.
    await other.ask('undo:last', {});
    expect((await other.ask('trials:list', {})).trials).toEqual([]);
  });

  it('writes CSV that reads back to the rows, and describes every column of every file', async () => {
    const test = await sampleDesk();
    await test.ask('tasters:save', { name: '=HYPERLINK("x")', note: 'a "quoted", word;\nand a second line' });
    const { text, files } = await exported(test);
    const metadata = JSON.parse(text('csv-metadata.json'));
    expect(metadata['@context'][0]).toBe('http://www.w3.org/ns/csvw');
    const csvs = files.filter(({ name }) => name.endsWith('.csv'));
    expect(metadata.tables.map(({ url }: { url: string }) => url)).toEqual(csvs.map(({ name }) => name));
    for (const { url, tableSchema } of metadata.tables) {
      const parsed = Papa.parse<string[]>(text(url).trimEnd()).data;
      const names = tableSchema.columns.map(({ name }: { name: string }) => name);
      expect(parsed[0]).toEqual(names);
      for (const column of tableSchema.columns) expect(column['dc:description'].length).toBeGreaterThan(4);
      for (const { reference } of tableSchema.foreignKeys) {
        expect(tableNames).toContain(reference.resource.replace('.csv', ''));
      }
      const table = tableNames.find((name) => `${name}.csv` === url) ?? 'kitchens';
      expect(parsed.length - 1).toBe(rowsOf(test, table).length);
    }
    expect(text('tasters.csv')).toContain('"\'=HYPERLINK(""x"")"');
    const scores = Papa.parse<Record<string, string>>(text('scores.csv').trimEnd(), { header: true }).data;
    const stored = rowsOf(test, 'scores') as { id: string; score: number }[];
    expect(scores.map(({ id, score }) => [id, Number(score)])).toEqual(stored.map(({ id, score }) => [id, score]));
  });

  it('never overwrites, and leaves nothing half-written where it can’t write or is stopped', async () => {
    const test = await sampleDesk();
    const folder = temporaryFolder();
    expect(await test.fail('data:export', { to: folder })).toMatchObject({ code: 'refused', path: ['to'] });
    writeFileSync(join(folder, 'file'), '');
    expect(await test.fail('data:export', { to: join(folder, 'file', 'x') })).toMatchObject({ code: 'store-missing' });
    mkdirSync(join(folder, 'in'));
    const stopped = await test.desk.handle(
      'data:export',
      { to: join(folder, 'in', 'deep', 'er', 'x') },
      {
        progress() {},
        assertGoing() {
          throw Object.assign(new Error('stop'), {});
        },
      },
    );
    expect(stopped.ok).toBe(false);
    expect(readdirSync(join(folder, 'in'))).toEqual([]);
    expect(existsSync(join(folder, 'file'))).toBe(true);
    // Folders that say they are not there, such as Linux's own, were asked for ever.
    for (const to of process.platform === 'linux' ? ['/proc/out', '/dev/null/out', '/sys/out'] : []) {
      expect(await test.fail('data:export', { to })).toMatchObject({ code: 'store-missing' });
      expect(await test.fail('store:backup', { to: join(to, 'k.sidejar') })).toMatchObject({ code: 'store-missing' });
    }
  });

  it('has words for every column and for none that is gone', () => {
    expect(columnWordFaults()).toEqual([]);
  });

  it('knows the shape of every column that holds JSON', async () => {
    const { kitchen } = await temporaryDesk();
    for (const table of tableNames) {
      const sql = kitchen.read.one<{ sql: string }>('SELECT sql FROM sqlite_schema WHERE name = ?', table)?.sql ?? '';
      const holding = columnNames(table).filter((column) => sql.includes(`json_valid(${column})`));
      expect(Object.keys(storedJson[table] ?? {}).sort()).toEqual(holding.sort());
    }
  });
});

describe('a trial for somebody else', () => {
  const daysTrial = async (test: TestDesk) =>
    (await test.ask('trials:list', {})).trials.find(({ factor }) => factor === 'days')?.id ?? '';

  it('arrives whole in another kitchen: the same findings, jar for jar', async () => {
    const test = await sampleDesk();
    const trial = await daysTrial(test);
    const file = await test.ask('data:trialFile', { trial });
    expect(file).toMatchObject({ tellsCodes: false, left: [] });
    expect(file.name).toMatch(/\.sidejar-trial$/);
    const other = await temporaryDesk();
    await other.ask('tasters:save', { name: 'taster a' });
    const preview = await other.ask('data:takeIn', { text: file.text, preview: true });
    expect(preview.taken).toBe(false);
    expect(rowsOf(other, 'trials')).toEqual([]);
    const taken = await other.ask('data:takeIn', { text: file.text });
    expect(taken.fresh).toEqual(preview.fresh);
    // Somebody here has that name: the newcomer is told apart, nobody is merged by name.
    expect(taken.renamed).toEqual([
      { table: 'tasters', name: 'Taster A', becomes: expect.stringMatching(/^Taster A \(.+\)$/) },
    ]);
    const there = await test.ask('findings:read', { trial });
    const here = await other.ask('findings:read', { trial });
    expect(here.analysis?.attributes).toEqual(there.analysis?.attributes);
    expect(here.headline).toEqual(there.headline);
    expect(rowsOf(other, 'jars')).toEqual(
      test.kitchen.read.all('SELECT * FROM jars WHERE trial_id = ? ORDER BY id', trial),
    );
    expect((await other.ask('store:check', {})).ok).toBe(true);
    // Taken again: known, nothing doubled.
    const again = await other.ask('data:takeIn', { text: file.text });
    expect(again.taken).toBe(false);
    expect(again.fresh).toEqual([]);
    expect(again.kept).toEqual([{ table: 'tasters', name: 'Taster A' }]);
  });

  it('says when it tells codes, and keeps ours where both changed', async () => {
    const test = await sampleDesk();
    const formula = (await test.ask('trials:list', {})).trials.find(({ factor }) => factor === 'formula')?.id ?? '';
    expect((await test.ask('data:trialFile', { trial: formula })).tellsCodes).toBe(true);
    const trial = await daysTrial(test);
    const { text } = await test.ask('data:trialFile', { trial });
    await test.ask('trials:annotate', { trial, question: 'Asked anew?' });
    const told = await test.ask('data:takeIn', { text });
    expect(told).toMatchObject({ taken: false, fresh: [], kept: [{ table: 'trials' }] });
    expect((await test.ask('trials:open', { trial })).question).toBe('Asked anew?');
  });

  it('refuses what is not what it says, by row and reason, and takes nothing', async () => {
    const test = await sampleDesk();
    const { text } = await test.ask('data:trialFile', { trial: await daysTrial(test) });
    const other = await temporaryDesk();
    const spoilt = (
      change: (file: { tables: Record<string, Record<string, unknown>[]> } & Record<string, unknown>) => void,
    ) => {
      const file = JSON.parse(text);
      change(file);
      return JSON.stringify(file);
    };
    const jar = (file: { tables: Record<string, Record<string, unknown>[]> }) => file.tables.jars?.[1] ?? {};
    const cases: [string, string, RegExp][] = [
      ['', 'invalid-input', /./],
      ['{"format":"sidejar rows"', 'ill-formed-json', /cut off/],
      ['{"format":"other"}', 'invalid-input', /not a file that carries/],
      [
        spoilt((file) => {
          file.schema = 999_990;
        }),
        'store-newer',
        /newer program/,
      ],
      [
        spoilt((file) => {
          file.tables.sqlite_schema = [];
        }),
        'invalid-input',
        /“sqlite_schema”/,
      ],
      [
        spoilt((file) => {
          jar(file).wished = 1;
        }),
        'invalid-input',
        /Row 2 of jars .*“wished”/,
      ],
      [
        spoilt((file) => {
          jar(file).id = '../../etc';
        }),
        'invalid-input',
        /Row 2 of jars .*id is no id/,
      ],
      [
        spoilt((file) => {
          jar(file).base_mL = '800';
        }),
        'invalid-input',
        /Row 2 of jars .*base_mL must be a number/,
      ],
      [
        spoilt((file) => {
          jar(file).base_mL = -4;
        }),
        'invalid-input',
        /a value that a kitchen can’t hold/,
      ],
      [
        spoilt((file) => {
          jar(file).label = null;
        }),
        'invalid-input',
        /label is missing/,
      ],
      [
        spoilt((file) => {
          jar(file).id = file.tables.jars?.[0]?.id;
        }),
        'invalid-input',
        /its id stands twice/,
      ],
      [
        spoilt((file) => {
          (file.tables.levels?.[0] ?? {}).formula = '{"additions":"none"}';
        }),
        'invalid-input',
        /formula is not of its form/,
      ],
      [
        spoilt((file) => {
          (file.tables.levels?.[0] ?? {}).formula = '{';
        }),
        'invalid-input',
        /formula is no JSON/,
      ],
      [
        spoilt((file) => {
          file.tables.tasters = [];
        }),
        'refused',
        /refers to/,
      ],
      [
        spoilt((file) => {
          (file.tables.tasters?.[0] ?? {}).name = 'a\u0000b';
        }),
        'invalid-input',
        /characters that no screen shows/,
      ],
    ];
    for (const [given, code, message] of cases) {
      const failure = await other.fail('data:takeIn', { text: given });
      expect([failure.code, failure.message]).toEqual([code, expect.stringMatching(message)]);
    }
    for (const table of tableNames) if (table !== 'kitchens') expect(rowsOf(other, table)).toEqual([]);
    expect(await other.fail('data:takeIn', { file: '/no/such/file' })).toMatchObject({
      code: 'not-found',
      path: ['file'],
    });
    expect(await other.fail('data:takeIn', {})).toMatchObject({ code: 'invalid-input' });
  });

  it('is not led astray by a key that names a prototype', async () => {
    const test = await sampleDesk();
    const { text } = await test.ask('data:trialFile', { trial: await daysTrial(test) });
    const other = await temporaryDesk();
    const led = text.replace('"tables": {', '"tables": {"__proto__": [{"polluted": 1}],');
    expect(led).not.toBe(text);
    const taken = await other.ask('data:takeIn', { text: led });
    expect(taken.taken).toBe(true);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
    expect(rowsOf(other, 'trials')).toHaveLength(1);
  });

  it('shows words from elsewhere as words', async () => {
    const test = await sampleDesk();
    const { text } = await test.ask('data:trialFile', { trial: await daysTrial(test) });
    const file = JSON.parse(text);
    file.tables.trials[0].question = '# <img src=x onerror=alert(1)> [a](b)';
    const other = await temporaryDesk();
    await other.ask('data:takeIn', { text: JSON.stringify(file) });
    const [trial] = (await other.ask('trials:list', {})).trials;
    const markdown = await other.ask('findings:text', { trial: trial?.id ?? '' });
    expect(markdown.text.split('\n')[0]).toBe('# \\# \\<img src=x onerror=alert\\(1\\)\\> \\[a\\]\\(b\\)');
  });
});
