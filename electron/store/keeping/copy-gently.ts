import { closeSync, fdatasyncSync, openSync } from 'node:fs';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '../kitchen.ts';
import { type Sqlite, sqliteDriver } from '../sqlite-driver.ts';

/** Pages copied between two pauses: 1 MB of the usual 4 KiB. */
const pagesEach = 256;
/** Steps after which the disk is asked to keep what was copied: what piles up unkept, every writer beside it would wait for. */
const stepsEachSync = 4;
const pause_ms = 2;

const nobody = new Int32Array(new SharedArrayBuffer(4));

/** A connection of its own that holds one moment of the kitchen open; null where the file is no longer there, or can't be opened twice. */
function ownConnection(kitchen: Kitchen): Sqlite | null {
  let source: Sqlite | null = null;
  try {
    kitchen.assertThere();
    const Database = sqliteDriver();
    source = new Database(kitchen.file, { readonly: true, fileMustExist: true });
    source.exec('BEGIN');
    source.prepare('SELECT count(*) FROM sqlite_schema').get();
    kitchen.assertThere();
    return source;
  } catch (error) {
    source?.close();
    const isOfDisk = error instanceof Failure || (error instanceof Error && 'code' in error);
    if (!isOfDisk) throw error;
    return null;
  }
}

/**
 * Copies the kitchen into a new file, as it is at one moment, a little at a time: whoever writes to it meanwhile hardly waits.
 *
 * Method: SQLite's own backup, over a connection of its own that holds one moment open, so that no writer beside it makes it begin
 * anew. Where the file was taken away under the program, what is still open is copied in one piece.
 * It blocks its thread between its steps: on a large kitchen it belongs into a thread of its own.
 */
export async function copyGently(kitchen: Kitchen, to: string): Promise<void> {
  const source = ownConnection(kitchen);
  if (source === null) {
    await kitchen.db.backup(to, { progress: () => 0x7fff_ffff });
    return;
  }
  let handle: number | null = null;
  let steps = 0;
  try {
    await source.backup(to, {
      progress: () => {
        steps += 1;
        if (steps % stepsEachSync === 0) {
          handle ??= openSync(to, 'r+');
          fdatasyncSync(handle);
        }
        Atomics.wait(nobody, 0, 0, pause_ms);
        return pagesEach;
      },
    });
  } finally {
    if (handle !== null) closeSync(handle);
    source.close();
  }
}
