import { phrase } from '#core/words/phrase.ts';
import type { Kitchen } from '../kitchen.ts';
import { openKitchen } from '../open-kitchen.ts';
import { sqliteFailure } from '../sqlite-failure.ts';
import type { Value } from '../statements.ts';
import { type TableName, tableNames } from '../tables.ts';
import type { Writer } from '../writer.ts';
import type { ReadableRow } from './readable-rows.ts';

/** Rows whose owner could not be saved can't stand: takes them away until every reference holds. */
function dropOrphans(kitchen: Kitchen, writer: Writer): number {
  let dropped = 0;
  for (;;) {
    const orphans = kitchen.db.pragma('foreign_key_check') as { table: TableName; rowid: number }[];
    if (orphans.length === 0) return dropped;
    for (const { table, rowid } of orphans) {
      const id = kitchen.db.prepare(`SELECT id FROM ${table} WHERE rowid = ?`).pluck().get(rowid) as string | undefined;
      if (id === undefined) continue;
      writer.put(table, id, null);
      dropped += 1;
    }
  }
}

interface RowsToSave {
  /** A new file. */
  readonly file: string;
  readonly found: readonly ReadableRow[];
  readonly request: string;
  readonly summary: string;
  now(): Date;
}

/** Puts rows into a new kitchen, each that its tables take; the others, and whose owner is not among them, are counted as lost. */
export async function saveRows({
  file,
  found,
  request,
  summary,
  now,
}: RowsToSave): Promise<{ rows: number; lost: number }> {
  const fresh = await openKitchen(file, { clock: now });
  try {
    let [rows, lost] = [0, 0];
    const fixedBecause = phrase`it is where this kitchen begins.`;
    fresh.write({ request, summary, fixedBecause }, (writer) => {
      if (found.some(({ table }) => table === 'kitchens')) {
        for (const { id } of writer.all<{ id: string }>('SELECT id FROM kitchens')) writer.put('kitchens', id, null);
      }
      for (const table of tableNames) {
        for (const row of found.filter((each) => each.table === table)) {
          try {
            writer.put(table, String(row.row.id), row.row as Record<string, Value>);
            rows += 1;
          } catch (error) {
            if (sqliteFailure(error) === error && !(error instanceof RangeError)) throw error;
            lost += 1;
          }
        }
      }
      const dropped = dropOrphans(fresh, writer);
      lost += dropped;
      rows -= dropped;
    });
    return { rows, lost };
  } finally {
    fresh.close();
  }
}
