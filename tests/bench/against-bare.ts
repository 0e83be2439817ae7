import { openKitchen } from '#store/open-kitchen.ts';
import { type Sqlite, sqliteDriver } from '#store/sqlite-driver.ts';

const writes = 300;
const rowsEach = 10;
const reads = 3000;
/** A kitchen that was measured before holds the names of that time. */
const run = Date.now().toString(36);

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

/** The statements that a write makes SQLite run, caught as they go, with their values. */
function recorded(db: Sqlite, work: () => void): { sql: string; values: unknown[] }[] {
  const log: { sql: string; values: unknown[] }[] = [];
  const prepare = db.prepare.bind(db);
  db.prepare = ((sql: string) => {
    const statement = prepare(sql);
    for (const verb of ['run', 'get', 'all'] as const) {
      const own = statement[verb].bind(statement) as (...values: unknown[]) => unknown;
      (statement as unknown as Record<string, unknown>)[verb] = (...values: unknown[]) => {
        log.push({ sql, values });
        return own(...values);
      };
    }
    return statement;
  }) as typeof db.prepare;
  work();
  db.prepare = prepare;
  return log;
}

/** Prints how much longer the store takes than better-sqlite3 alone doing the same statements, each in its transaction. */
export async function againstBare(file: string): Promise<void> {
  const note = { request: 'bench', summary: 'bench' };
  const add = (kitchen: Awaited<ReturnType<typeof openKitchen>>, number: number) =>
    kitchen.write(note, (writer) => {
      for (let row = 0; row < rowsEach; row += 1) {
        writer.insert('tasters', {
          name: `Bench ${run} ${number}/${row}`,
          avoids: '[]',
          avoids_alcohol: 0,
          note: null,
        });
      }
    });
  // A second connection whose statements are caught once: the bare side runs the very same, with fresh keys.
  const watched = await openKitchen(file);
  const pattern = recorded(watched.db, () => add(watched, -1)).filter(({ sql }) => !/^\s*(BEGIN|COMMIT)/.test(sql));
  watched.close();
  const kitchen = await openKitchen(file);
  add(kitchen, -2);
  const Database = sqliteDriver();
  const bare = new Database(file);
  bare.pragma('synchronous = FULL');
  bare.pragma('foreign_keys = ON');
  const prepared = pattern.map(({ sql, values }) => ({ statement: bare.prepare(sql), values, sql }));
  const freshId = (number: number, at: number) =>
    `${run.slice(-4)}${String(number).padStart(8, '0')}-${String(at).padStart(23, '0')}`;
  const runBare = (number: number) =>
    bare
      .transaction(() => {
        const last = bare.prepare('SELECT max(id) FROM changes').pluck().get() as number;
        const step = (bare.prepare('SELECT max(id) FROM steps').pluck().get() as number) + 1;
        let change = last;
        let row = 0;
        for (const { statement, values, sql } of prepared) {
          if (sql.startsWith('INSERT INTO tasters')) {
            row += 1;
            statement.run({ ...(values[0] as object), id: freshId(number, row), name: `Bare ${run} ${number}/${row}` });
          } else if (sql.startsWith('INSERT INTO changes')) {
            change += 1;
            statement.run(change, step, ...values.slice(2, 3), freshId(number, row), ...values.slice(4));
          } else if (statement.reader) statement.all(...values);
          else statement.run(...values);
        }
      })
      .immediate();
  const times: { ours: number[]; bare: number[] } = { ours: [], bare: [] };
  for (let number = 0; number < writes; number += 1) {
    for (const side of ['ours', 'bare'] as const) {
      const start = performance.now();
      if (side === 'ours') add(kitchen, number);
      else runBare(number);
      times[side].push(performance.now() - start);
    }
  }
  const writing = median(times.ours) / median(times.bare);
  const ids = bare.prepare('SELECT id FROM scores ORDER BY id LIMIT ?').pluck().all(reads) as string[];
  const statement = bare.prepare('SELECT * FROM scores WHERE id = ?');
  const readTimes: { ours: number[]; bare: number[] } = { ours: [], bare: [] };
  for (let round = 0; round < 9; round += 1) {
    let start = performance.now();
    for (const id of ids) kitchen.read.row('scores', id);
    readTimes.ours.push(performance.now() - start);
    start = performance.now();
    for (const id of ids) statement.get(id);
    readTimes.bare.push(performance.now() - start);
  }
  const reading = median(readTimes.ours) / median(readTimes.bare);
  console.log(
    `against bare better-sqlite3, the same statements: writing ${rowsEach} rows in a step × ${writing.toFixed(2)} (${median(times.ours).toFixed(1)} ms; aim 1.5: ${writing <= 1.5 ? 'met' : 'missed'}), reading × ${reading.toFixed(2)} (aim 1.3: ${reading <= 1.3 ? 'met' : 'missed'})`,
  );
  kitchen.close();
  bare.close();
}
