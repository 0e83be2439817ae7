import { basename, dirname, join } from 'node:path';

// Where copies of a kitchen lie, and how their names tell what they are:
//   backups/<kitchen>-kept-<moment>.sidejar   made by the program, thinned by its schedule
//   backups/<kitchen>-<moment>.sidejar        made by a person, never thinned
//   <kitchen>.sidejar.before-<schema>-<moment>.sidejar   made before a migration, never thinned

export type BackupKind = 'kept' | 'made' | 'before-update';

const moment = '(\\d{4}-\\d\\d-\\d\\dT\\d\\d-\\d\\d-\\d\\d-\\d{3}Z)';

function stem(kitchen: string): string {
  return basename(kitchen).replace(/\.sidejar$/, '');
}

function stampOf(now: Date): string {
  return now.toISOString().replace(/[:.]/g, '-');
}

function momentOf(stamp: string): Date {
  return new Date(stamp.replace(/T(\d\d)-(\d\d)-(\d\d)-(\d{3})Z$/, 'T$1:$2:$3.$4Z'));
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

export function backupFolder(kitchen: string): string {
  return join(dirname(kitchen), 'backups');
}

/** The file of a new backup. */
export function backupPlace(kitchen: string, kind: 'kept' | 'made' | BackupKind, now: Date): string {
  return join(backupFolder(kitchen), `${stem(kitchen)}-${kind === 'kept' ? 'kept-' : ''}${stampOf(now)}.sidejar`);
}

/** What a file of the kitchen's folder or of its backup folder is, by its name; null when it is no backup of this kitchen. */
export function readBackupName(kitchen: string, name: string): { kind: BackupKind; at: Date } | null {
  const inFolder = new RegExp(`^${escaped(stem(kitchen))}-(kept-)?${moment}\\.sidejar$`).exec(name);
  if (inFolder !== null) return { kind: inFolder[1] === undefined ? 'made' : 'kept', at: momentOf(inFolder[2] ?? '') };
  const before = new RegExp(`^${escaped(basename(kitchen))}\\.before-\\d+-${moment}\\.sidejar$`).exec(name);
  return before === null ? null : { kind: 'before-update', at: momentOf(before[1] ?? '') };
}

/** Whether a file beside the kitchen looks like another edition of it that a cloud folder or a file manager put there. */
export function isStrayCopy(kitchen: string, name: string): boolean {
  if (name === basename(kitchen) || readBackupName(kitchen, name) !== null) return false;
  const rest = name.startsWith(stem(kitchen)) ? name.slice(stem(kitchen).length) : null;
  return rest !== null && /\.sidejar$/i.test(rest) && /conflict|\((\d+|.*copy.*)\)|[ -]copy\b/i.test(rest);
}
