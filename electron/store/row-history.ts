import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { erasedText } from './change-log.ts';
import type { Reader } from './reader.ts';
import type { Value } from './statements.ts';
import type { TableName } from './tables.ts';

type StoredRow = Readonly<Record<string, Value>>;

export interface RowEntry {
  readonly step: number;
  readonly at: string;
  readonly summary: string;
  readonly kind: 'do' | 'undo' | 'redo';
  readonly before: StoredRow | null;
  readonly after: StoredRow | null;
  readonly isErased: boolean;
  /** Whether the step was undone, and not done again since. */
  readonly isUndone: boolean;
}

const blindTables: readonly TableName[] = ['tastings', 'samples', 'servings', 'discriminations', 'presentations'];

/** While a tasting or test is open, its rows' past would tell which jar is behind a code. */
function assertRevealed(read: Reader, table: TableName, id: string, rows: readonly (string | null)[]): void {
  if (!blindTables.includes(table)) return;
  const known = rows.find((text) => text !== null && text !== erasedText) ?? '{}';
  const row = JSON.parse(known) as StoredRow;
  const apart = table === 'discriminations' || table === 'presentations';
  const owner = String((apart ? row.discrimination_id : row.tasting_id) ?? id);
  const sitting = read.row(apart ? 'discriminations' : 'tastings', owner);
  if (sitting === undefined || sitting.closed_at !== null) return;
  throw new Failure(
    'refused',
    phrase`Its history tells which jar is behind which code; it can be read once the tasting is closed.`,
    ['id'],
  );
}

/** Everything that ever happened to one row, the newest first; what was erased for good is said to be. */
export function rowHistory(read: Reader, table: TableName, id: string, limit: number): RowEntry[] {
  const entries = read.all<{
    step: number;
    at: string;
    summary: string;
    kind: RowEntry['kind'];
    before: string | null;
    after: string | null;
    commitment: string | null;
    latest: string | null;
  }>(
    `SELECT s.id AS step, s.at, s.summary, s.kind, c.before, c.after, c.commitment,
       (SELECT kind FROM steps WHERE target = s.id ORDER BY id DESC LIMIT 1) AS latest
     FROM changes AS c JOIN steps AS s ON s.id = c.step_id
     WHERE c.table_name = ? AND c.row_id = ? ORDER BY c.id DESC LIMIT ?`,
    table,
    id,
    limit,
  );
  assertRevealed(
    read,
    table,
    id,
    entries.flatMap(({ after, before }) => [after, before]),
  );
  const rowOf = (text: string | null) =>
    text === null || text === erasedText ? null : (JSON.parse(text) as StoredRow);
  return entries.map(({ before, after, commitment, latest, ...entry }) => ({
    ...entry,
    before: rowOf(before),
    after: rowOf(after),
    isErased: commitment !== null,
    isUndone: latest === 'undo',
  }));
}
