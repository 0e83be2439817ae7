import { describe, expect, it } from 'vitest';
import { openKitchen } from '#store/open-kitchen.ts';
import type { Sqlite } from '#store/sqlite-driver.ts';
import { ownedTables, tableNames } from '#store/tables.ts';
import { actName, actsInRound, doAct, newKnown } from '#tests/faults/scripted-acts.ts';
import { handClock, temporaryDesk } from './temporary-kitchen.ts';

// Every statement that the desk prepares in a round of work and in every screen's requests, explained by SQLite itself
// (EXPLAIN QUERY PLAN, sqlite.org/eqp.html): none may go through a whole table that grows with the years.

/** Tables that stay small: a kitchen has some dozens of tasters and ingredients, not thousands. */
const small = new Set([
  'kitchens',
  'tasters',
  'ingredients',
  'stocks',
  'cultures',
  'drafts',
  'row_counts',
  'seals',
  'erasures',
  'taster_counts',
]);

/** Lists that show all there is, and so must read all there is; each beside the table it may go through. */
const showAll: readonly (readonly [RegExp, string])[] = [
  [/FROM trials AS t ORDER BY t\.starts_at DESC/, 'trials'],
  [/FROM tastings AS t LEFT JOIN tasting_counts AS n ON n\.tasting_id = t\.id ORDER BY/, 'tastings'],
  [/FROM discriminations AS d ORDER BY/, 'discriminations'],
  [/FROM bases AS b LEFT JOIN cultures/, 'bases'],
  [/FROM house_recipes AS r JOIN recipe_versions/, 'house_recipes'],
  [/FROM house_recipes AS r JOIN recipe_versions/, 'recipe_versions'],
  [/SELECT blind_code AS code FROM samples GROUP BY blind_code/, 'samples'],
  [/FROM bottlings AS b LEFT JOIN jars/, 'bottlings'],
  [/AS waiting FROM bottlings AS b$/, 'bottlings'],
  // Find looks at every name there is.
  ...['trials', 'tastings', 'house_recipes', 'bases'].map((table) => [/ AS kind, (j\.)?id, /, table] as const),
  // These stop at their limit, and are read in the order of an index.
  [/ORDER BY held_at DESC, id DESC LIMIT \?\) GROUP BY trial_id/, 'tastings'],
];

/** Indexes over few rows, however many the table has: open tastings, removed rows, the sample. */
const fewRows = /USING (COVERING )?INDEX (\w+_open|changes_removed|changes_erased|\w+_of_sample)\b/;

interface Plan {
  readonly detail: string;
}

/** Names that a statement gives to its tables. */
function aliases(sql: string): Map<string, string> {
  return new Map([...sql.matchAll(/\b(\w+) AS (\w+)/g)].map(([, table = '', alias = '']) => [alias, table]));
}

/** Something for each place of a statement: only its plan is asked for. */
function valuesFor(sql: string): unknown[] {
  const named = [...sql.matchAll(/@(\w+)/g)].map(([, name = '']) => [name, 0] as const);
  const places = [...sql.matchAll(/\?/g)].map(() => 0);
  return named.length > 0 ? [...places, Object.fromEntries(named)] : places;
}

/** The growing tables that a statement goes through from end to end. */
function scans(db: Sqlite, sql: string): string[] {
  if (!/^\s*(SELECT|UPDATE|DELETE|WITH)/i.test(sql)) return [];
  const named = aliases(sql);
  const plan = db.prepare(`EXPLAIN QUERY PLAN ${sql}`).all(...valuesFor(sql)) as Plan[];
  const stopsAtOne = /ORDER BY id( DESC)? LIMIT 1$/.test(sql) && !/WHERE/.test(sql);
  return plan.flatMap(({ detail }) => {
    if (stopsAtOne || fewRows.test(detail)) return [];
    const found = /^SCAN (\w+)/.exec(detail)?.[1];
    const table = found === undefined ? undefined : (named.get(found) ?? found);
    if (
      table === undefined ||
      small.has(table) ||
      /^(json_each|sqlite_schema|pragma_|CONSTANT|SUBQUERY|\()/.test(table)
    )
      return [];
    const isSubquery = !db.prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = ?").get(table);
    return isSubquery ||
      showAll.some(([pattern, allowed]) => allowed === table && pattern.test(sql.replace(/\s+/g, ' ')))
      ? []
      : [table];
  });
}

async function preparedByDesk(): Promise<{ db: Sqlite; statements: Set<string> }> {
  const test = await temporaryDesk(handClock('2026-05-05T08:00:00.000Z'));
  const { db, read } = test.kitchen;
  const statements = new Set<string>();
  const prepare = db.prepare.bind(db);
  db.prepare = ((sql: string) => {
    statements.add(sql);
    return prepare(sql);
  }) as typeof db.prepare;
  await test.ask('kitchen:sample', {});
  const known = newKnown();
  for (let act = 0; act < actsInRound; act += 1) {
    // Erasing looks at every line of history, once in years; it is named here and nowhere else.
    if (actName(act) === 'tasters:erase') {
      const before = new Set(statements);
      await doAct(test.desk, known, act);
      for (const sql of statements) if (!before.has(sql)) statements.delete(sql);
    } else await doAct(test.desk, known, act);
  }
  // Another window writes, and this one is told of what.
  const other = await openKitchen(test.kitchen.file);
  other.write({ request: 'test', summary: 'test' }, (writer) =>
    writer.insert('tasters', { name: 'Seen from beside', avoids: '[]', avoids_alcohol: 0, note: null }),
  );
  other.close();
  test.kitchen.lookForOthers();
  const first = (table: string) => read.one<{ id: string }>(`SELECT id FROM ${table} ORDER BY id LIMIT 1`)?.id ?? '';
  const trial = first('trials');
  const asks: readonly (readonly [string, object])[] = [
    ...['kitchen:open', 'undo:state', 'history:read', 'bin:list', 'backups:list'].map((name) => [name, {}] as const),
    ...['trials:list', 'tastings:list', 'tasters:list', 'bases:list', 'cultures:list'].map(
      (name) => [name, {}] as const,
    ),
    ...['pantry:list', 'recipes:list', 'discriminations:list', 'panel:experience'].map((name) => [name, {}] as const),
    ...['trials:open', 'sips:byTrial', 'findings:read', 'profiles:open', 'sheets:ofTrial'].map(
      (name) => [name, { trial }] as const,
    ),
    ...['tastings:open', 'tastings:pour', 'scores:list', 'remarks:list'].map(
      (name) => [name, { tasting: first('tastings') }] as const,
    ),
    ['today:read', {}],
    ['trials:list', { only: 'awake' }],
    ['trials:list', { limit: 60, after: trial }],
    ['tastings:list', { trial }],
    ['tastings:list', { limit: 60, after: first('tastings') }],
    ['photos:ofTrial', { trial }],
    ['findings:places', { trial }],
    ['kitchen:find', { words: 'days' }],
    ['bottles:list', {}],
    ['cultures:open', { culture: first('cultures') }],
    ['jars:open', { jar: first('jars') }],
    ['bases:open', { base: first('bases') }],
    ['recipes:open', { recipe: first('house_recipes') }],
    ['recipes:preview', { trial, level: '2 days' }],
    ['course:read', { trial }],
    ['drafts:open', { name: 'plan' }],
    ['history:row', { table: 'trials', id: trial }],
    ['history:step', { step: 2 }],
    ['history:about', { table: 'trials', id: trial }],
    ...tableNames.flatMap((table) =>
      ownedTables(table).map(
        ({ table: part }) =>
          ['history:parts', { table, id: first(table) || trial, part, after: first(part) || trial }] as const,
      ),
    ),
    ['tastings:warn', { jars: [first('jars')], tasters: [first('tasters')] }],
  ];
  for (const [name, input] of asks) {
    const envelope = await test.desk.handle(name, input);
    if (!envelope.ok) throw new Error(`${name}: ${envelope.error.message}`);
  }
  db.prepare = prepare;
  return { db, statements };
}

describe('what the desk asks of SQLite', () => {
  it('never goes through a whole table that grows, but where a list shows all there is', async () => {
    const { db, statements } = await preparedByDesk();
    expect(statements.size).toBeGreaterThan(80);
    const found = [...statements].flatMap((sql) =>
      scans(db, sql).map((table) => `${table}: ${sql.replace(/\s+/g, ' ')}`),
    );
    expect(found).toEqual([]);
    expect(scans(db, 'SELECT * FROM scores WHERE score > 5')).toEqual(['scores']);
    expect(scans(db, 'SELECT count(*) FROM changes AS c WHERE c.after IS NOT NULL')).toEqual(['changes']);
  });
});
