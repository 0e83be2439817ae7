import { existsSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Kitchen } from '../kitchen.ts';
import { emptyBin } from '../log/empty-bin.ts';
import { type Backup, backupKitchen } from './backup-kitchen.ts';
import { backupFolder } from './backup-names.ts';
import { backupsToKeep } from './backup-schedule.ts';
import { headOfFile, listBackups } from './list-backups.ts';

export interface Tended {
  readonly backup: Backup | null;
  /** Backups of the program's own that its schedule no longer keeps. */
  readonly thinned: number;
  /** Rows that had lain in the bin for longer than it keeps them. */
  readonly emptied: number;
}

const hour_ms = 3_600_000;

/** Whether something changed since the newest backup of any kind. */
export function isBackupDue(kitchen: Kitchen): boolean {
  const newest = listBackups(kitchen.file).find(({ kind }) => kind !== 'before-update');
  if (newest === undefined) return true;
  const head = kitchen.read.one<{ hash: string }>('SELECT hash FROM changes ORDER BY id DESC LIMIT 1')?.hash;
  return headOfFile(newest.file) !== head;
}

/** What a program that was ended in the middle of a backup left behind. Another may be at it right now: the fresh ones stay. */
function clearUnfinished(kitchen: Kitchen): void {
  const folder = backupFolder(kitchen.file);
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder).filter((each) => /\.unfinished(-journal)?$/.test(each))) {
    const found = statSync(join(folder, name), { throwIfNoEntry: false });
    if (found !== undefined && Date.now() - found.mtimeMs > hour_ms) rmSync(join(folder, name), { force: true });
  }
}

/** Throws away what the schedule no longer keeps, only of the program's own backups, and only while a newer whole one stands. */
function thin(kitchen: Kitchen): number {
  const own = listBackups(kitchen.file).filter(({ kind }) => kind === 'kept');
  const kept = backupsToKeep(own.map(({ at }) => at));
  const old = own.filter(({ at }) => !kept.has(at));
  for (const { file } of old) rmSync(file, { force: true });
  return old.length;
}

/**
 * What is done at each start and once a day without being asked: a backup when something changed since the last, fewer of the old
 * ones, and the bin rid of what lay in it for 90 days. The backup comes first: what the bin forgets is in it once more.
 */
export async function tendKitchen(kitchen: Kitchen): Promise<Tended> {
  if (kitchen.readOnly) return { backup: null, thinned: 0, emptied: 0 };
  clearUnfinished(kitchen);
  const backup = isBackupDue(kitchen) ? await backupKitchen(kitchen, undefined, 'kept') : null;
  const thinned = backup === null ? 0 : thin(kitchen);
  return { backup, thinned, emptied: emptyBin(kitchen) };
}
