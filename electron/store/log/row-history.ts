import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';
import type { Reader } from '../reader.ts';
import type { TableName } from '../tables.ts';
import { rowOfText } from './last-known.ts';
import { isOfOpenSitting, isVeiled, withoutWhose } from './veil.ts';

export type RowEntry = ValueOf<'history:row'>['entries'][number];

interface StoredEntry extends Omit<RowEntry, 'before' | 'after' | 'isErased' | 'isUndone'> {
  readonly before: string | null;
  readonly after: string | null;
  readonly commitment: string | null;
  readonly latest: string | null;
}

/** Everything that ever happened to one row, the newest first; what was erased for good is said to be. */
export function rowHistory(read: Reader, table: TableName, id: string, limit: number): RowEntry[] {
  const entries = read.all<StoredEntry>(
    `SELECT s.id AS step, s.at, s.summary, s.kind, c.before, c.after, c.commitment,
       (SELECT kind FROM steps WHERE target = s.id ORDER BY id DESC LIMIT 1) AS latest
     FROM changes AS c JOIN steps AS s ON s.id = c.step_id
     WHERE c.table_name = ? AND c.row_id = ? ORDER BY c.id DESC LIMIT ?`,
    table,
    id,
    limit,
  );
  const known = entries.map(({ after, before }) => rowOfText(after) ?? rowOfText(before)).find((row) => row !== null);
  if (known != null && isVeiled(read, table, known)) {
    throw new Failure(
      'refused',
      phrase`Its history tells which jar is behind which code; it can be read once the tasting is closed.`,
      ['id'],
    );
  }
  const isOpen = known != null && isOfOpenSitting(read, table, known);
  return entries.map(({ before, after, commitment, latest, ...entry }) => ({
    ...entry,
    before: withoutWhose(rowOfText(before), isOpen),
    after: withoutWhose(rowOfText(after), isOpen),
    isErased: commitment !== null,
    isUndone: latest === 'undo',
  }));
}
