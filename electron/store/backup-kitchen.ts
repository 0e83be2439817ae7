import { createHash } from 'node:crypto';
import { createReadStream, existsSync, mkdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from './kitchen.ts';
import { sqliteDriver } from './sqlite-driver.ts';
import { sqliteFailure } from './sqlite-failure.ts';

export interface Backup {
  readonly file: string;
  readonly bytes: number;
  readonly sha256: string;
}

function defaultPlace(kitchen: Kitchen): string {
  const stamp = kitchen.now().toISOString().replace(/[:.]/g, '-');
  const name = basename(kitchen.file).replace(/\.sidejar$/, '');
  return join(dirname(kitchen.file), 'backups', `${name}-${stamp}.sidejar`);
}

function assertWhole(copy: string): void {
  const Database = sqliteDriver();
  const check = new Database(copy);
  try {
    // A copy that stands alone needs no log beside it.
    check.pragma('journal_mode = DELETE');
    if (check.pragma('integrity_check', { simple: true }) !== 'ok') {
      throw new Failure('store-damaged', 'The backup was made but is not whole; it was thrown away. Check the disk.');
    }
  } finally {
    check.close();
  }
}

/**
 * Copies the kitchen while it is in use, opens the copy, and only then gives it its name.
 *
 * @param to the new file; by default beside the kitchen in `backups/`
 * @throws Failure `refused` when there is a file of that name, `store-full`, `store-missing`
 */
export async function backupKitchen(kitchen: Kitchen, to?: string): Promise<Backup> {
  const file = to === undefined ? defaultPlace(kitchen) : resolve(to);
  if (existsSync(file))
    throw new Failure('refused', 'There is a file of this name already; a backup never overwrites.', ['to']);
  const unfinished = `${file}.unfinished`;
  try {
    mkdirSync(dirname(file), { recursive: true });
    await kitchen.db.backup(unfinished);
    assertWhole(unfinished);
    renameSync(unfinished, file);
  } catch (error) {
    if (existsSync(unfinished)) rmSync(unfinished);
    const failure = sqliteFailure(error);
    if (failure instanceof Failure) throw failure;
    throw new Failure(
      'store-missing',
      'The backup could not be written there: the folder is missing, full or protected.',
      ['to'],
    );
  }
  const hash = createHash('sha256');
  await pipeline(createReadStream(file), hash);
  return { file, bytes: statSync(file).size, sha256: hash.digest('hex') };
}
