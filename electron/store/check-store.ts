import { comparableRow, entryHash, firstHash, rowText, type Step, type StoredChange } from './change-log.ts';
import type { Kitchen } from './kitchen.ts';
import type { Value } from './statements.ts';
import { type Row, type TableName, tableNames } from './tables.ts';

function chainProblems(kitchen: Kitchen): string[] {
  const problems: string[] = [];
  const steps = new Map(kitchen.read.all<Step>('SELECT * FROM steps').map((step) => [step.id, step]));
  let previous = firstHash;
  const entries = kitchen.db.prepare('SELECT * FROM changes ORDER BY id').iterate() as IterableIterator<StoredChange>;
  for (const { hash, ...entry } of entries) {
    const step = steps.get(entry.step_id);
    if (step === undefined || entry.previous_hash !== previous || entryHash(entry, step) !== hash) {
      problems.push(`The change log is broken at entry ${entry.id} (${entry.table_name}).`);
      return problems;
    }
    previous = hash;
  }
  return problems;
}

/** Every row must read as the log last wrote it, and every row that the log last wrote must be there. */
function rowProblems(kitchen: Kitchen, table: TableName): string[] {
  const problems: string[] = [];
  const latest = new Map<string, string | null>();
  const written = kitchen.db
    .prepare(
      `SELECT row_id, after FROM changes WHERE id IN (SELECT max(id) FROM changes WHERE table_name = ? GROUP BY row_id)`,
    )
    .iterate(table) as IterableIterator<{ row_id: string; after: string | null }>;
  for (const { row_id, after } of written) latest.set(row_id, after);
  const rows = kitchen.db.prepare(`SELECT * FROM ${table}`).iterate() as IterableIterator<Row<TableName>>;
  for (const row of rows) {
    const expected = latest.get(row.id);
    latest.delete(row.id);
    if (
      expected === undefined ||
      comparableRow(expected) !== comparableRow(rowText(row as unknown as Record<string, Value>))
    ) {
      problems.push(`A row of ${table} (${row.id}) differs from what the change log wrote.`);
    }
  }
  for (const [id, after] of latest) if (after !== null) problems.push(`A row of ${table} (${id}) is missing.`);
  return problems;
}

/** Looks through the whole kitchen: SQLite's own checks, the change log's chain, and each row against the log. */
export function checkStore(kitchen: Kitchen, tick: (done: number, total: number) => void): string[] {
  const total = tableNames.length + 2;
  const problems: string[] = [];
  const integrity = kitchen.db.pragma('integrity_check') as { integrity_check: string }[];
  for (const { integrity_check: found } of integrity) if (found !== 'ok') problems.push(`SQLite reports: ${found}`);
  const orphans = kitchen.db.pragma('foreign_key_check') as { table: string; parent: string }[];
  for (const orphan of orphans) problems.push(`A row of ${orphan.table} refers to a missing row of ${orphan.parent}.`);
  tick(1, total);
  problems.push(...chainProblems(kitchen));
  tick(2, total);
  tableNames.forEach((table, position) => {
    problems.push(...rowProblems(kitchen, table));
    tick(position + 3, total);
  });
  return problems;
}
