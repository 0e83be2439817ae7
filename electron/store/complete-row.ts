import { rowText } from './log/change-log.ts';
import type { Sqlite } from './sqlite-driver.ts';
import type { Value } from './statements.ts';
import type { TableName } from './tables.ts';

type StoredRow = Readonly<Record<string, Value>>;

function defaultOf(written: string | null): Value {
  if (written === null || written.toUpperCase() === 'NULL') return null;
  const text = /^'(.*)'$/s.exec(written)?.[1];
  return text === undefined ? Number(written) : text.replaceAll("''", "'");
}

/**
 * A row as the log wrote it, in the columns the table has today: one that came by a later migration has its default.
 * A column that is gone is left out.
 */
export function completeRow(db: Sqlite, table: TableName, text: string): StoredRow {
  const columns = db.pragma(`table_info(${table})`) as { name: string; dflt_value: string | null }[];
  const written = JSON.parse(text) as StoredRow;
  return Object.fromEntries(
    columns.map(({ name, dflt_value }) => [name, name in written ? (written[name] ?? null) : defaultOf(dflt_value)]),
  );
}

/** Whether a row reads as the log wrote it, columns that came later aside. */
export function isAsWritten(db: Sqlite, table: TableName, row: string | null, written: string | null): boolean {
  if (row === written) return true;
  if (row === null || written === null) return false;
  try {
    return row === rowText(completeRow(db, table, written));
  } catch (error) {
    // A damaged entry is no JSON any more.
    if (error instanceof SyntaxError) return false;
    throw error;
  }
}
