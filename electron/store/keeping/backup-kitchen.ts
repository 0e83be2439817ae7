import { createHash } from 'node:crypto';
import { closeSync, createReadStream, existsSync, fsyncSync, openSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '../kitchen.ts';
import { makeFolder, unmakeFolders } from '../make-folder.ts';
import { sqliteFailure } from '../sqlite-failure.ts';
import { assertWhole } from './assert-whole.ts';
import { type BackupKind, backupPlace } from './backup-names.ts';
import { copyGently } from './copy-gently.ts';

export interface Backup {
  readonly file: string;
  readonly bytes: number;
  readonly sha256: string;
}

/** Has the disk keep a new name in its folder; where a folder can't be opened (Windows) the system does that itself. */
function syncFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

async function sha256Of(file: string): Promise<string> {
  const hash = createHash('sha256');
  await pipeline(createReadStream(file), hash);
  return hash.digest('hex');
}

/**
 * Copies the kitchen while it is in use, opens the copy, and only then gives it its name.
 *
 * On a large kitchen that lasts, and belongs into a thread of its own.
 *
 * @param to the new file; by default beside the kitchen in `backups/`
 * @throws Failure `refused` when there is a file of that name, `store-full`, `store-missing`, `store-damaged`
 */
export async function backupKitchen(kitchen: Kitchen, to?: string, kind: BackupKind = 'made'): Promise<Backup> {
  const file = to === undefined ? backupPlace(kitchen.file, kind, kitchen.now()) : resolve(to);
  if (existsSync(file))
    throw new Failure('refused', phrase`There is a file of this name already; a backup never overwrites.`, ['to']);
  const unfinished = `${file}.${process.pid}.unfinished`;
  let made: string[] = [];
  try {
    made = makeFolder(dirname(file));
    await copyGently(kitchen, unfinished);
    assertWhole(
      unfinished,
      phrase`The backup was made but is not whole; it was thrown away. Check the file and the disk.`,
    );
    renameSync(unfinished, file);
    syncFolder(dirname(file));
  } catch (error) {
    for (const left of [unfinished, `${unfinished}-journal`]) if (existsSync(left)) rmSync(left);
    unmakeFolders(made);
    const failure = sqliteFailure(error);
    if (failure instanceof Failure) throw failure;
    throw new Failure(
      'store-missing',
      phrase`The backup could not be written there: the folder is missing, full or protected.`,
      ['to'],
    );
  }
  return { file, bytes: statSync(file).size, sha256: await sha256Of(file) };
}
