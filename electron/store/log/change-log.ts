import { hash as hashOf, randomFillSync } from 'node:crypto';
import type { Reader } from '../reader.ts';
import type { Statements, Value } from '../statements.ts';
import type { TableName } from '../tables.ts';

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
  /** Chance that keeps a forgotten row from being guessed by its hash; null once the row is forgotten. */
  readonly salt: string | null;
  /** The hash of salt and rows, kept in their place when they are forgotten; null while they stand. */
  readonly commitment: string | null;
}

/** What stands in the log where a row was erased for good. */
export const erasedText = '{"erased":true}';

/** The request of the step that empties the bin of what is old. */
export const emptying = 'bin:empty';

/** Steps that the program takes by itself: nobody's act, so undo passes them by. */
export const nobodysActs = `('kitchen:begin', '${emptying}')`;

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
  let text = '';
  // Written out by hand: JSON.stringify with a list of keys takes five times as long.
  for (const name of Object.keys(row).sort()) {
    const value = row[name];
    if (value !== undefined) text += `${text === '' ? '' : ','}${JSON.stringify(name)}:${JSON.stringify(value)}`;
  }
  return `{${text}}`;
}

const saltBytes = 16;
const chance = Buffer.alloc(saltBytes * 256);
let used = chance.length;

/** Sixteen bytes of chance, drawn from the system many at a time and each used once. */
export function newSalt(): string {
  if (used === chance.length) {
    randomFillSync(chance);
    used = 0;
  }
  used += saltBytes;
  const salt = chance.toString('hex', used - saltBytes, used);
  // Thrown away means thrown away: a salt that was erased must not be left in memory.
  chance.fill(0, used - saltBytes, used);
  return salt;
}

/** What an entry says of its row, as one hash. With the salt thrown away nobody can find the rows by trying. */
export function commitmentOf(salt: string, before: string | null, after: string | null): string {
  return hashOf('sha256', JSON.stringify([salt, before, after]));
}

type Linked = Pick<StoredChange, 'id' | 'table_name' | 'row_id' | 'previous_hash'>;

/**
 * The hash of an entry covers its step, its row before and after, and the entry before it: no entry can be changed alone.
 * The rows come in by their commitment, so that a row can be erased for good and the chain still holds.
 */
export function entryHash(
  entry: Linked,
  step: Pick<Step, 'id' | 'at' | 'request' | 'kind' | 'target'>,
  commitment: string,
): string {
  return hashOf(
    'sha256',
    JSON.stringify([
      entry.previous_hash,
      entry.id,
      [step.id, step.at, step.request, step.kind, step.target],
      entry.table_name,
      entry.row_id,
      commitment,
    ]),
  );
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
    'INSERT INTO changes (id, step_id, table_name, row_id, before, after, previous_hash, hash, salt) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)',
  );
  return {
    stepId,
    add(table, id, before, after) {
      const salt = newSalt();
      const entry = { id: nextId, table_name: table, row_id: id, previous_hash: previous };
      const hash = entryHash(entry, { ...step, id: stepId }, commitmentOf(salt, before, after));
      insert.run(nextId, stepId, table, id, before, after, previous, hash, salt);
      nextId += 1;
      previous = hash;
    },
  };
}
