import type { Reader } from '../reader.ts';
import type { Value } from '../statements.ts';
import type { TableName } from '../tables.ts';
import { erasedText } from './change-log.ts';

export type StoredRow = Readonly<Record<string, Value>>;

/** A row from the log's text; null where there was none or where it was erased for good. */
export function rowOfText(text: string | null): StoredRow | null {
  return text === null || text === erasedText ? null : (JSON.parse(text) as StoredRow);
}

export interface Known {
  /** Null when all that the log knew was erased. */
  readonly row: StoredRow | null;
  readonly isHere: boolean;
}

/** A row as it stands, or as it was last before it was removed; undefined when there never was one. */
export function lastKnown(read: Reader, table: TableName, id: string): Known | undefined {
  const row = read.row(table, id);
  if (row !== undefined) return { row: row as unknown as StoredRow, isHere: true };
  const last = read.one<{ before: string | null; after: string | null }>(
    'SELECT before, after FROM changes WHERE table_name = ? AND row_id = ? ORDER BY id DESC LIMIT 1',
    table,
    id,
  );
  return last === undefined ? undefined : { row: rowOfText(last.after) ?? rowOfText(last.before), isHere: false };
}
