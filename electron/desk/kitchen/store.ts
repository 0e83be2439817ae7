import { statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';
import { findDraft, keepDraft } from '#store/drafts.ts';
import { backupKitchen } from '#store/keeping/backup-kitchen.ts';
import { backupFolder } from '#store/keeping/backup-names.ts';
import { checkStore } from '#store/keeping/check-store.ts';
import { listBackups, strayCopies } from '#store/keeping/list-backups.ts';
import { rescueKitchen } from '#store/keeping/rescue-kitchen.ts';
import { restoreBackup } from '#store/keeping/restore-backup.ts';
import { isBackupDue, tendKitchen } from '#store/keeping/tend-kitchen.ts';
import { binEntries, restoreFromBin } from '#store/log/bin.ts';
import { eraseFromBin } from '#store/log/empty-bin.ts';
import { eraseTaster } from '#store/log/erase-taster.ts';
import { travel, undoState } from '#store/log/undo.ts';
import { copyStrange } from '#store/strange/copy-strange.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';

export const storeHandlers: Handlers<
  | 'drafts:open'
  | 'drafts:keep'
  | 'store:check'
  | 'store:backup'
  | 'store:tend'
  | 'store:rescue'
  | 'store:copyStrange'
  | 'backups:list'
  | 'backups:restore'
  | 'kitchen:openBeside'
  | 'tasters:erase'
  | 'bin:empty'
  | 'undo:state'
  | 'undo:last'
  | 'redo:last'
  | 'bin:list'
  | 'bin:restore'
> = {
  'drafts:open': (kitchen, { name }) => ({ draft: findDraft(kitchen, name) as ValueOf<'drafts:open'>['draft'] }),
  'drafts:keep'(kitchen, { name, body }) {
    keepDraft(kitchen, name, body);
    return { kept: body !== null };
  },
  'store:check'(kitchen, _input, watch) {
    const problems = checkStore(kitchen, (done, total) => {
      watch.assertGoing();
      watch.progress(done, total);
    });
    return { ok: problems.length === 0, problems };
  },
  'store:backup': (kitchen, { to }) => backupKitchen(kitchen, to),
  'store:tend': (kitchen) => tendKitchen(kitchen),
  'store:rescue': (kitchen, { to }) => rescueKitchen(kitchen, to),
  'store:copyStrange': (kitchen, { file }) => copyStrange(kitchen, file),
  'backups:list': (kitchen) => ({
    folder: backupFolder(kitchen.file),
    due: isBackupDue(kitchen),
    copies: strayCopies(kitchen.file),
    backups: listBackups(kitchen.file).map(({ name, kind, at, bytes }) => ({
      name,
      kind,
      at: at.toISOString(),
      bytes,
    })),
  }),
  'backups:restore': (kitchen, { name }) => restoreBackup(kitchen, name),
  // The host, which has the windows, does the rest.
  'kitchen:openBeside'(kitchen, { name }) {
    const file = join(dirname(kitchen.file), name);
    if (statSync(file, { throwIfNoEntry: false })?.isFile() === true) return { file };
    throw new Failure('store-missing', phrase`There is no kitchen called “${name}” beside this one.`, ['name']);
  },
  'tasters:erase'(kitchen, { taster }) {
    const row = found(kitchen.read.row('tasters', taster), 'taster', 'taster');
    const backups = listBackups(kitchen.file).length;
    return { taster, ...eraseTaster(kitchen, row), backups };
  },
  'undo:state': (kitchen) => undoState(kitchen.read),
  'undo:last': (kitchen, { step }) => travel(kitchen, 'undo', step),
  'redo:last': (kitchen) => travel(kitchen, 'redo'),
  'bin:list': (kitchen) => ({ entries: binEntries(kitchen.read) }),
  'bin:empty': (kitchen, { step }) => ({ rows: eraseFromBin(kitchen, step) }),
  'bin:restore': (kitchen, { step }) => restoreFromBin(kitchen, step),
};
