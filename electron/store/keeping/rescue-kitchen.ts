import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '../kitchen.ts';
import { sharePhotos } from '../photo-files.ts';
import { newFileBeside } from './new-file-beside.ts';
import { readableRows } from './readable-rows.ts';
import { saveRows } from './save-rows.ts';

export interface Rescued {
  readonly file: string;
  /** Rows that stand in the new kitchen. */
  readonly rows: number;
  /** Of them, those that could only be read from the change log, or read there as they were last written. */
  readonly fromLog: number;
  /** Rows that are known to have been there and could not be saved. */
  readonly lost: number;
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
  const summary = phrase`Save what could be read of a damaged kitchen`;
  const saved = await saveRows({ file, found, summary, request: 'store:rescue', now: kitchen.now });
  sharePhotos(kitchen.file, file);
  return {
    file,
    rows: saved.rows,
    fromLog: found.filter(({ isFromLog }) => isFromLog).length,
    lost: unreadable + saved.lost,
  };
}
