import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '../reader.ts';
import { ownedTables, type TableName } from '../tables.ts';
import { type Known, lastKnown, type StoredRow } from './last-known.ts';
import { recordedRow } from './recorded-row.ts';
import { isVeiled } from './veil.ts';

/** Ids are hexadecimal: each stands before it. */
const behindAll = 'g';

type About = ValueOf<'history:about'>;

/** Whether the rows of a table tell which jar is behind a code of the open tasting or test they are part of. */
function isPartVeiled(read: Reader, part: TableName, column: string, owner: string): boolean {
  return isVeiled(read, part, { [column]: owner });
}

function partsOf(read: Reader, table: TableName, id: string): About['parts'] {
  return ownedTables(table).flatMap(({ table: part, column }) => {
    if (isPartVeiled(read, part, column, id)) return [];
    // A table may name its owner in more than one column; each of its rows fills one.
    const rows = read.one<{ n: number }>(`SELECT count(*) AS n FROM ${part} WHERE ${column} = ?`, id)?.n ?? 0;
    return rows === 0 ? [] : [{ table: part, rows }];
  });
}

/** What a row is, and what is part of it now. */
export function aboutRow(read: Reader, table: TableName, id: string): About {
  const known: Known | undefined = lastKnown(read, table, id);
  if (known === undefined) return { row: null, isVeiled: false, parts: [] };
  return {
    row: recordedRow(read, table, id, known),
    isVeiled: known.row !== null && isVeiled(read, table, known.row),
    parts: partsOf(read, table, id),
  };
}

/** The rows of one table that are part of a row, the newest first. */
export function rowParts(
  read: Reader,
  { table, id, part }: { readonly table: TableName; readonly id: string; readonly part: TableName },
  { limit, after }: { readonly limit: number; readonly after?: string | undefined },
): ValueOf<'history:parts'> {
  const column = ownedTables(table).find((owned) => owned.table === part)?.column;
  if (column === undefined || isPartVeiled(read, part, column, id)) return { rows: [], more: false };
  // The plus keeps SQLite from walking through all ids there are instead of the few rows that are part of this one.
  const found = read.all<StoredRow & { id: string }>(
    `SELECT * FROM ${part} WHERE ${column} = ? AND +id < ? ORDER BY +id DESC LIMIT ?`,
    id,
    after ?? behindAll,
    limit + 1,
  );
  const rows = found.slice(0, limit).map((row) => recordedRow(read, part, row.id, { row, isHere: true }));
  return { rows, more: found.length > limit };
}
