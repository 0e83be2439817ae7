import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from './kitchen.ts';
import { newFileBeside } from './new-file-beside.ts';
import { openKitchen } from './open-kitchen.ts';
import { sharePhotos } from './photo-files.ts';
import { readableRows } from './readable-rows.ts';
import { sqliteFailure } from './sqlite-failure.ts';
import type { Value } from './statements.ts';
import { type TableName, tableNames } from './tables.ts';
import type { Writer } from './writer.ts';

export interface Rescued {
  readonly file: string;
  /** Rows that stand in the new kitchen. */
  readonly rows: number;
  /** Of them, those that could only be read from the change log, or read there as they were last written. */
  readonly fromLog: number;
  /** Rows that are known to have been there and could not be saved. */
  readonly lost: number;
}

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

/**
 * Saves from a damaged kitchen whatever can still be read, into a new file. The damaged one is only read.
 *
 * Method: each row is read from its table and from the change log, which is a second copy of it; where both can be read and differ,
 * the log counts if its entry still has the hash it was written with.
 * Leaves out: history, undo and the bin of the old file, and half-made drafts.
 */
export async function rescueKitchen(kitchen: Kitchen, to?: string): Promise<Rescued> {
  const file = to === undefined ? newFileBeside(kitchen.file, 'rescued', kitchen.now()) : resolve(to);
  if (existsSync(file))
    throw new Failure('refused', phrase`There is a file of this name already; it stays as it is.`, ['to']);
  const { found, unreadable } = readableRows(kitchen);
  const fresh = await openKitchen(file, { clock: kitchen.now });
  try {
    let lost = unreadable;
    let rows = 0;
    fresh.write(
      {
        request: 'store:rescue',
        summary: phrase`Save what could be read of a damaged kitchen`,
        fixedBecause: phrase`it is where this kitchen begins.`,
      },
      (writer) => {
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
      },
    );
    sharePhotos(kitchen.file, file);
    return { file, rows, fromLog: found.filter(({ isFromLog }) => isFromLog).length, lost };
  } finally {
    fresh.close();
  }
}
