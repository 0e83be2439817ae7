import { constants, copyFileSync, renameSync, rmSync, statSync } from 'node:fs';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '../kitchen.ts';
import { sharePhotos } from '../photo-files.ts';
import { assertWhole } from './assert-whole.ts';
import { listBackups } from './list-backups.ts';
import { newFileBeside } from './new-file-beside.ts';

/**
 * Makes a kitchen of its own from a backup: a new file beside the present kitchen, which stays as it is, and so does the backup.
 *
 * @param name one that `listBackups` told
 * @throws Failure `not-found`; `store-damaged` when the backup is not whole; `store-missing` when it can't be written there
 */
export function restoreBackup(kitchen: Kitchen, name: string): { file: string; bytes: number } {
  const backup = listBackups(kitchen.file).find((each) => each.name === name);
  if (backup === undefined) throw new Failure('not-found', phrase`There is no backup of this name.`, ['name']);
  const file = newFileBeside(
    kitchen.file,
    phrase`from ${backup.at.toISOString().slice(0, 10)}, restored`,
    kitchen.now(),
  );
  const unfinished = `${file}.${process.pid}.unfinished`;
  try {
    copyFileSync(backup.file, unfinished, constants.COPYFILE_EXCL);
    assertWhole(unfinished, phrase`This backup is not whole: choose another. Nothing was restored.`);
    sharePhotos(kitchen.file, file);
    renameSync(unfinished, file);
  } catch (error) {
    if (error instanceof Failure) throw error;
    throw new Failure(
      'store-missing',
      phrase`A new kitchen could not be written beside this one: the folder is full or protected.`,
    );
  } finally {
    rmSync(unfinished, { force: true });
  }
  return { file, bytes: statSync(file).size };
}
