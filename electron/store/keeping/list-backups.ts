import { existsSync, readdirSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { sqliteDriver } from '../sqlite-driver.ts';
import { type BackupKind, backupFolder, isStrayCopy, readBackupName } from './backup-names.ts';

export interface KeptBackup {
  readonly name: string;
  readonly file: string;
  readonly kind: BackupKind;
  readonly at: Date;
  readonly bytes: number;
}

function namesIn(folder: string): string[] {
  return existsSync(folder) ? readdirSync(folder) : [];
}

/** Every backup of this kitchen that lies where the program puts them, the newest first. */
export function listBackups(kitchen: string): KeptBackup[] {
  return [backupFolder(kitchen), dirname(kitchen)]
    .flatMap((folder) =>
      namesIn(folder).flatMap((name) => {
        const read = readBackupName(kitchen, name);
        const found = read === null ? undefined : statSync(join(folder, name), { throwIfNoEntry: false });
        return read === null || found === undefined
          ? []
          : [{ name, file: join(folder, name), ...read, bytes: found.size }];
      }),
    )
    .sort((a, b) => b.at.getTime() - a.at.getTime() || a.name.localeCompare(b.name));
}

/** Files beside the kitchen that look like a second edition of it, as cloud folders leave them. */
export function strayCopies(kitchen: string): string[] {
  return namesIn(dirname(kitchen)).filter((name) => name !== basename(kitchen) && isStrayCopy(kitchen, name));
}

/** The newest entry of a kitchen file's log, by its hash; null when it can't be read. */
export function headOfFile(file: string): string | null {
  const Database = sqliteDriver();
  try {
    const db = new Database(file, { readonly: true, fileMustExist: true });
    try {
      return (
        (db.prepare('SELECT hash FROM changes ORDER BY id DESC LIMIT 1').pluck().get() as string | undefined) ?? null
      );
    } finally {
      db.close();
    }
  } catch {
    // Not readable is not the same as the present state: a new backup is made.
    return null;
  }
}
