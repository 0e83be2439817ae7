import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { recordedTables } from '#shared/recorded-tables.ts';
import { type TableName, tableNames } from '#store/tables.ts';
import { fill } from '#tests/fixtures/fill-kitchen.ts';
import { type TestDesk, temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { preparedTrial } from './example-trial.ts';

type Step = ValueOf<'history:step'>;
type Row = Step['rows'][number]['row'];

const keyOf = ({ table, id }: { readonly table: string; readonly id: string }) => `${table} ${id}`;

/** A kitchen with rows of every table, changed, removed, brought back and erased. */
async function filledKitchen(): Promise<TestDesk> {
  const test = await temporaryDesk();
  await fill((name, input) => test.ask(name as 'trials:list', input as object) as never);
  const [jarA = '', jarB = ''] = test.kitchen.read.all<{ id: string }>('SELECT id FROM jars').map(({ id }) => id);
  const tasters = (await test.ask('tasters:list', {})).tasters.slice(0, 2).map(({ id }) => id);
  const { discrimination } = await test.ask('discriminations:build', {
    name: 'Closed test',
    method: 'duo-trio',
    jarA,
    jarB,
    tasters,
  });
  await test.ask('discriminations:close', { discrimination });
  return test;
}

/** All that one step changed, part by part. */
async function wholeStep({ ask }: TestDesk, step: number, limit = 40): Promise<Step['rows']> {
  const rows: Step['rows'] = [];
  for (let after: number | null = 0; after !== null; ) {
    const part: Step = await ask('history:step', { step, limit, after });
    rows.push(...part.rows);
    after = part.next;
  }
  return rows;
}

async function everyStep(test: TestDesk): Promise<Step['rows']> {
  const { steps } = await test.ask('history:read', { limit: 500 });
  const rows: Step['rows'] = [];
  for (const { step } of steps) rows.push(...(await wholeStep(test, step)));
  return rows;
}

/** Every row there is, by SQL alone. */
function standing({ kitchen }: TestDesk): { table: TableName; id: string }[] {
  return tableNames.flatMap((table) =>
    kitchen.read.all<{ id: string }>(`SELECT id FROM ${table}`).map(({ id }) => ({ table, id })),
  );
}

/** The tables whose pages lead to the history of one of their rows, as the screens' sources say. */
function linkedTables(): Set<TableName> {
  const sources = globSync('renderer/{pages,parts}/**/*.tsx', { exclude: (name) => name.includes('pages/history') });
  const text = sources.map((file) => readFileSync(file, 'utf8')).join('\n');
  const found = [...text.matchAll(/<HistoryLink\s+table="(\w+)"|\/history\/(\w+)\/\$\{/g)];
  return new Set(
    found.map(([, link, address]) => (link ?? address) as TableName).filter((name) => tableNames.includes(name)),
  );
}

/** Tables that no page shows row by row: they are reached from the list of steps on Data. */
const fromDataAlone: readonly TableName[] = ['kitchens', 'erasures'];

describe('the history of any row', () => {
  it('is known of every table there is', () => {
    expect([...recordedTables].sort()).toEqual([...tableNames].sort());
  });

  it('is reached from the list of steps on Data: every row of every table, standing or removed', async () => {
    const test = await filledKitchen();
    const changed = await everyStep(test);
    const reached = new Set(changed.map(({ row }) => keyOf(row)));
    expect([...new Set(changed.map(({ row }) => row.table))].sort()).toEqual([...tableNames].sort());
    const blind = test.kitchen.read
      .all<{ id: string }>(
        `SELECT id FROM tastings WHERE closed_at IS NULL UNION SELECT id FROM discriminations WHERE closed_at IS NULL
         UNION SELECT s.id FROM samples AS s JOIN tastings AS g ON g.id = s.tasting_id WHERE g.closed_at IS NULL
         UNION SELECT s.id FROM servings AS s JOIN tastings AS g ON g.id = s.tasting_id WHERE g.closed_at IS NULL
         UNION SELECT p.id FROM presentations AS p JOIN discriminations AS d ON d.id = p.discrimination_id WHERE d.closed_at IS NULL`,
      )
      .map(({ id }) => id);
    expect(blind.length).toBeGreaterThan(10);
    expect(standing(test).filter((row) => !reached.has(keyOf(row)) && !blind.includes(row.id))).toEqual([]);
    expect(blind.filter((id) => [...reached].some((key) => key.endsWith(id)))).toEqual([]);
    const gone = changed.filter(({ row }) => !row.isHere);
    expect(gone.map(({ row }) => row.table)).toContain('tasters');
    for (const { row } of changed) {
      const { entries } = await test.ask('history:row', { table: row.table, id: row.id });
      expect(entries.length).toBeGreaterThan(0);
      expect((await test.ask('history:about', { table: row.table, id: row.id })).row).toMatchObject({ id: row.id });
    }
  });

  it('is reached from the pages of things too, through what belongs to them: no table is forgotten', async () => {
    const test = await filledKitchen();
    const linked = linkedTables();
    expect([...linked]).toEqual(expect.arrayContaining(['jars', 'tastings', 'cultures', 'stocks', 'discriminations']));
    const found = new Map<string, Row>();
    const look = async (row: { readonly table: TableName; readonly id: string }): Promise<void> => {
      if (found.has(keyOf(row))) return;
      const about = await test.ask('history:about', row);
      if (about.row === null) throw new Error(`${keyOf(row)} is not known`);
      found.set(keyOf(row), about.row);
      for (const { table, rows } of about.parts) {
        const parts: Row[] = [];
        for (let more = true; more; ) {
          const after = parts.at(-1)?.id;
          const part = await test.ask('history:parts', { ...row, part: table, limit: 7, ...(after ? { after } : {}) });
          parts.push(...part.rows);
          more = part.more;
        }
        expect(parts).toHaveLength(rows);
        for (const part of parts) await look({ table: part.table, id: part.id });
      }
    };
    for (const row of standing(test)) if (linked.has(row.table)) await look({ table: row.table, id: row.id });
    const tables = new Set([...found.values()].map(({ table }) => table));
    expect(tableNames.filter((table) => !tables.has(table) && !fromDataAlone.includes(table))).toEqual([]);
  });

  it('names a row as a person would: by label, moment, whose it is and what it is part of', async () => {
    const test = await filledKitchen();
    const rows = (await everyStep(test)).map(({ row }) => row);
    const first = (table: string) => rows.find((row) => row.table === table);
    expect(first('jars')).toMatchObject({
      name: expect.stringMatching(/\w/),
      of: [{ table: 'levels' }, { table: 'trials' }],
    });
    expect(first('readings')).toMatchObject({ at: expect.stringMatching(/^2026/), of: [{ table: 'jars' }, {}, {}] });
    expect(first('scores')?.also).toHaveLength(2);
    expect(first('bottle_openings')).toMatchObject({
      name: 'gentle',
      of: [{ table: 'bottlings' }, { table: 'jars' }, {}, {}],
    });
    expect(first('recipe_versions')).toMatchObject({
      name: '1',
      of: [{ table: 'house_recipes', name: 'Own house drink' }],
    });
    expect(await test.ask('history:about', { table: 'jars', id: first('scores')?.id ?? '' })).toEqual({
      row: null,
      isVeiled: false,
      parts: [],
    });
    expect(await test.fail('history:step', { step: 9999 })).toMatchObject({ code: 'not-found', path: ['step'] });
    expect(
      await test.fail('history:parts', { table: 'jars', id: first('jars')?.id, part: 'sqlite_schema' }),
    ).toMatchObject({
      path: ['part'],
    });
  });
});

describe('while a tasting is open, its history', () => {
  async function openTasting() {
    const test = await temporaryDesk();
    const { trial, jars, tasters } = await preparedTrial(test, 3);
    const samples = jars.map(({ id }) => ({ jar: id }));
    const { tasting, codes } = await test.ask('tastings:build', { trial, name: 'T', samples, tasters, seed: 1 });
    const sample = Object.values(codes)[0] ?? '';
    await test.ask('scores:enter', { tasting, scores: [{ taster: 'Taster A', sample, attribute: 'tang', score: 4 }] });
    await test.ask('remarks:save', { tasting, taster: 'Taster A', sample, words: 'hedge' });
    return { ...test, test, tasting, jars, tasters, sample };
  }

  /** All that any request of the history says of the kitchen. */
  async function allTold({
    ask,
    fail,
    kitchen,
    test,
    jars,
    tasters,
  }: Awaited<ReturnType<typeof openTasting>>): Promise<string> {
    const told: unknown[] = await everyStep(test);
    for (const { table, id } of standing(test)) {
      const { parts, ...about } = await ask('history:about', { table, id });
      for (const { table: part } of parts) told.push(await ask('history:parts', { table, id, part }));
      if (about.isVeiled) {
        await fail('history:row', { table, id });
        for (const { id: hidden } of [...jars, ...tasters.map((taster) => ({ id: taster }))]) {
          expect(JSON.stringify(about)).not.toContain(hidden);
        }
      } else told.push(about, await ask('history:row', { table, id }));
    }
    const samples = kitchen.read.all<{ id: string; jar_id: string }>('SELECT id, jar_id FROM samples');
    expect(samples.length).toBeGreaterThan(2);
    return JSON.stringify(told);
  }

  it('tells neither whose a score is, nor of which sample, nor which jar is behind it; afterwards all of it', async () => {
    const open = await openTasting();
    const before = await allTold(open);
    const samples = open.kitchen.read.all<{ id: string; blind_code: string }>('SELECT id, blind_code FROM samples');
    for (const { id, blind_code } of samples) {
      expect(before).not.toContain(id);
      expect(before).not.toContain(`"${blind_code}"`);
    }
    expect(before).not.toContain('"taster_id"');
    expect(before).toContain('"score":4');
    expect(before).toContain('hedge');
    await open.ask('tastings:close', { tasting: open.tasting });
    const after = await allTold(open);
    for (const { id } of samples) expect(after).toContain(id);
    expect(after).toContain(`["Taster A","${open.sample}"]`);
  });

  it('stays untold when the tasting lies in the bin, and when a jar of it is discarded', async () => {
    const open = await openTasting();
    const samples = open.kitchen.read.all<{ id: string }>('SELECT id FROM samples');
    await open.ask('jars:discard', { jars: [open.jars[0]?.id ?? ''], reason: 'spilled' });
    const { steps } = await open.ask('history:read', { limit: 1 });
    expect(await open.ask('history:step', { step: steps[0]?.step ?? 0 })).toMatchObject({
      total: 2,
      withheld: 1,
      rows: [{ row: { table: 'jars' } }],
    });
    await open.ask('tastings:remove', { tasting: open.tasting });
    const told = JSON.stringify(await everyStep(open.test));
    for (const { id } of samples) {
      expect(told).not.toContain(id);
      expect(await open.fail('history:row', { table: 'samples', id })).toMatchObject({ code: 'refused' });
    }
    expect(await open.fail('history:row', { table: 'tastings', id: open.tasting })).toMatchObject({ code: 'refused' });
  });
});
