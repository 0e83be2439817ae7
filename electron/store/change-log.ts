import { createHash } from 'node:crypto';
import type { Reader } from './reader.ts';
import type { Statements, Value } from './statements.ts';
import type { TableName } from './tables.ts';

/** One act of a person: what undo takes back as a whole. */
export interface Step {
  readonly id: number;
  readonly at: string;
  readonly request: string;
  readonly summary: string;
  readonly kind: 'do' | 'undo' | 'redo';
  readonly target: number | null;
  readonly fixed_because: string | null;
}

export interface StoredChange {
  readonly id: number;
  readonly step_id: number;
  readonly table_name: TableName;
  readonly row_id: string;
  readonly before: string | null;
  readonly after: string | null;
  readonly previous_hash: string;
  readonly hash: string;
}

/** The request's name in the log's first step, which makes the kitchen. */
export const beginning = 'kitchen:begin';

export const firstHash = '0'.repeat(64);

/** An edition number that this row never had: a window that saw any earlier one must notice. */
export function nextRevision(
  read: Reader,
  { table_name, row_id }: Pick<StoredChange, 'table_name' | 'row_id'>,
): number {
  const found = read.one<{ n: number | null }>(
    `SELECT max(max(coalesce(json_extract(before, '$.revision'), 0), coalesce(json_extract(after, '$.revision'), 0))) AS n
     FROM changes WHERE table_name = ? AND row_id = ?`,
    table_name,
    row_id,
  );
  return (found?.n ?? 0) + 1;
}

/** The text of a row as the log keeps it: JSON with its columns in alphabetical order. */
export function rowText(row: Readonly<Record<string, Value>>): string {
  return JSON.stringify(row, Object.keys(row).sort());
}

/**
 * Two texts of a row for comparing: a column that came after the older one was written is absent there and null here,
 * which is the same.
 */
export function comparableRow(text: string | null, leaveOut?: string): string | null {
  if (text === null) return null;
  const row = JSON.parse(text) as Record<string, Value>;
  return rowText(
    Object.fromEntries(Object.entries(row).filter(([name, value]) => value !== null && name !== leaveOut)),
  );
}

/** The hash of an entry covers its step, its row before and after, and the entry before it: no entry can be changed alone. */
export function entryHash(
  entry: Omit<StoredChange, 'hash'>,
  step: Pick<Step, 'id' | 'at' | 'request' | 'kind' | 'target'>,
): string {
  return createHash('sha256')
    .update(
      JSON.stringify([
        entry.previous_hash,
        entry.id,
        [step.id, step.at, step.request, step.kind, step.target],
        entry.table_name,
        entry.row_id,
        entry.before,
        entry.after,
      ]),
    )
    .digest('hex');
}

export type NewStep = Omit<Step, 'id'>;

export interface ChangeLog {
  add(table: TableName, id: string, before: string | null, after: string | null): void;
  readonly stepId: number;
}

/** Opens a step of the log inside the running transaction; its entries continue the chain. */
export function openStep(statement: Statements, read: Reader, step: NewStep): ChangeLog {
  const stepId = Number(
    statement('INSERT INTO steps (at, request, summary, kind, target, fixed_because) VALUES (?, ?, ?, ?, ?, ?)').run(
      step.at,
      step.request,
      step.summary,
      step.kind,
      step.target,
      step.fixed_because,
    ).lastInsertRowid,
  );
  const last = read.one<{ id: number; hash: string }>('SELECT id, hash FROM changes ORDER BY id DESC LIMIT 1');
  let nextId = (last?.id ?? 0) + 1;
  let previous = last?.hash ?? firstHash;
  const insert = statement(
    'INSERT INTO changes (id, step_id, table_name, row_id, before, after, previous_hash, hash) VALUES (?, ?, ?, ?, ?, ?, ?, ?)',
  );
  return {
    stepId,
    add(table, id, before, after) {
      const entry = {
        id: nextId,
        step_id: stepId,
        table_name: table,
        row_id: id,
        before,
        after,
        previous_hash: previous,
      };
      const hash = entryHash(entry, { ...step, id: stepId });
      insert.run(nextId, stepId, table, id, before, after, previous, hash);
      nextId += 1;
      previous = hash;
    },
  };
}
