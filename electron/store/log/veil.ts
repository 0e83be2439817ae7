import type { Reader } from '../reader.ts';
import type { TableName } from '../tables.ts';
import { lastKnown, type StoredRow } from './last-known.ts';

// While a tasting or a test of two jars is open, the past of its rows would tell which jar is behind which code.

const sittings: Readonly<Partial<Record<TableName, readonly [table: TableName, column: string]>>> = {
  tastings: ['tastings', 'id'],
  samples: ['tastings', 'tasting_id'],
  servings: ['tastings', 'tasting_id'],
  scores: ['tastings', 'tasting_id'],
  remarks: ['tastings', 'tasting_id'],
  discriminations: ['discriminations', 'id'],
  presentations: ['discriminations', 'discrimination_id'],
};

const answers: readonly TableName[] = ['scores', 'remarks'];
const telling: ReadonlySet<string> = new Set(['taster_id', 'sample_id']);

/** Whether the row belongs to a tasting or test that is not revealed; one that was removed while open still is not. */
export function isOfOpenSitting(read: Reader, table: TableName, row: StoredRow): boolean {
  const sitting = sittings[table];
  if (sitting === undefined) return false;
  const known = lastKnown(read, sitting[0], String(row[sitting[1]]))?.row;
  return known != null && known.closed_at === null;
}

/** Whether nothing of the row may be told yet. */
export function isVeiled(read: Reader, table: TableName, row: StoredRow): boolean {
  return !answers.includes(table) && isOfOpenSitting(read, table, row);
}

/** A score or remark of an open tasting without whose it is and of which sample. */
export function withoutWhose(row: StoredRow | null, isOpen: boolean): StoredRow | null {
  if (row === null || !isOpen) return row;
  return Object.fromEntries(Object.entries(row).filter(([column]) => !telling.has(column)));
}
