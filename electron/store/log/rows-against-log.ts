import { phrase } from '#core/words/phrase.ts';
import { isAsWritten } from '../complete-row.ts';
import type { Kitchen } from '../kitchen.ts';
import type { Value } from '../statements.ts';
import type { TableName } from '../tables.ts';
import { rowText } from './change-log.ts';

const page = 2000;

/** The rows of a statement that takes up after a given id, page by page: neither all in memory nor all at once. */
function* paged<Found extends object>(kitchen: Kitchen, sql: string, key: keyof Found, ...first: Value[]) {
  let last = '';
  for (;;) {
    const rows = kitchen.read.all<Found>(sql, ...first, last, page);
    yield* rows;
    const end = rows.at(-1);
    if (end === undefined || rows.length < page) return;
    last = String(end[key]);
  }
}

/** Every row must read as the log last wrote it, and every row that the log last wrote must be there. */
export function rowsAgainstLog(kitchen: Kitchen, table: TableName): string[] {
  const problems: string[] = [];
  const rows = paged<Record<string, Value>>(kitchen, `SELECT * FROM ${table} WHERE id > ? ORDER BY id LIMIT ?`, 'id');
  const written = paged<{ row_id: string; after: string | null }>(
    kitchen,
    `SELECT g.row_id, c.after FROM
       (SELECT row_id, max(id) AS id FROM changes WHERE table_name = ? AND row_id > ? GROUP BY row_id ORDER BY row_id LIMIT ?) AS g
     JOIN changes AS c ON c.id = g.id ORDER BY g.row_id`,
    'row_id',
    table,
  );
  const differs = (id: string) =>
    problems.push(phrase`A row of ${table} (${id}) differs from what the change log wrote.`);
  let entry = written.next();
  const missing = (): void => {
    if (!entry.done && entry.value.after !== null) {
      problems.push(phrase`A row of ${table} (${entry.value.row_id}) is missing.`);
    }
    entry = written.next();
  };
  for (const row of rows) {
    const id = String(row.id);
    while (!entry.done && entry.value.row_id < id) missing();
    if (entry.done || entry.value.row_id !== id) {
      differs(id);
      continue;
    }
    if (!isAsWritten(kitchen.db, table, rowText(row), entry.value.after)) differs(id);
    entry = written.next();
  }
  while (!entry.done) missing();
  return problems;
}
