import { completeRow, isAsWritten } from '../complete-row.ts';
import type { Kitchen } from '../kitchen.ts';
import { commitmentOf, entryHash, rowText, type Step, type StoredChange } from '../log/change-log.ts';
import { sqliteFailure } from '../sqlite-failure.ts';
import type { Value } from '../statements.ts';
import { type TableName, tableNames } from '../tables.ts';

type StoredRow = Readonly<Record<string, Value>>;

export interface ReadableRow {
  readonly table: TableName;
  readonly row: StoredRow;
  readonly isFromLog: boolean;
}

/** Reads, or says that it can't be read. */
function tried<Found>(read: () => Found): Found | undefined {
  try {
    return read();
  } catch (error) {
    if (sqliteFailure(error) === error && !(error instanceof SyntaxError)) throw error;
    return undefined;
  }
}

/** Whatever a statement yields before it meets a damaged page. */
function untilDamage<Found>(kitchen: Kitchen, sql: string, ...values: Value[]): Found[] {
  const rows: Found[] = [];
  tried(() => {
    for (const row of kitchen.db.prepare(sql).iterate(...values)) rows.push(row as Found);
  });
  return rows;
}

/** Every id of a table that some part of the file still tells: from both ends of the table and of its index, and from the log. */
function idsOf(kitchen: Kitchen, table: TableName): Set<string> {
  const ways = ['rowid', 'rowid DESC', 'id', 'id DESC'].map((order) => `SELECT id FROM ${table} ORDER BY ${order}`);
  const ids = new Set(ways.flatMap((sql) => untilDamage<{ id: string }>(kitchen, sql).map(({ id }) => id)));
  for (const order of ['', 'DESC']) {
    const logged = untilDamage<{ row_id: string }>(
      kitchen,
      `SELECT DISTINCT row_id FROM changes WHERE table_name = ? ORDER BY row_id ${order}`,
      table,
    );
    for (const { row_id } of logged) ids.add(row_id);
  }
  return ids;
}

/** What the log last wrote of a row, where that entry still has its hash: text, null for removed; undefined when it can't be told. */
function writtenLast({ read }: Kitchen, table: TableName, id: string): string | null | undefined {
  const entry = tried(() =>
    read.one<StoredChange>(
      'SELECT * FROM changes WHERE table_name = ? AND row_id = ? ORDER BY id DESC LIMIT 1',
      table,
      id,
    ),
  );
  if (entry === undefined || entry.commitment !== null)
    return entry === undefined || entry.after !== null ? undefined : null;
  const step = tried(() => read.one<Step>('SELECT * FROM steps WHERE id = ?', entry.step_id));
  const commitment = commitmentOf(entry.salt ?? '', entry.before, entry.after);
  return step !== undefined && entryHash(entry, step, commitment) === entry.hash ? entry.after : undefined;
}

/** Every row that can still be read, each as it was last written as far as that can be told, and how many are known but gone. */
export function readableRows(kitchen: Kitchen): { found: ReadableRow[]; unreadable: number } {
  const found: ReadableRow[] = [];
  let unreadable = 0;
  for (const table of tableNames) {
    for (const id of idsOf(kitchen, table)) {
      const standing = tried(() => kitchen.read.row(table, id)) as StoredRow | undefined;
      const written = writtenLast(kitchen, table, id);
      if (written === null) continue;
      if (written === undefined) {
        if (standing === undefined) unreadable += 1;
        else found.push({ table, row: standing, isFromLog: false });
        continue;
      }
      const agrees = standing !== undefined && isAsWritten(kitchen.db, table, rowText(standing), written);
      found.push({ table, row: agrees ? standing : completeRow(kitchen.db, table, written), isFromLog: !agrees });
    }
  }
  return { found, unreadable };
}
