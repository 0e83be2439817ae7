import type { ValueOf } from '#shared/contract/all-requests.ts';
import { backupKitchen } from '#store/backup-kitchen.ts';
import { binEntries, restoreFromBin } from '#store/bin.ts';
import { checkStore } from '#store/check-store.ts';
import { findDraft, keepDraft } from '#store/drafts.ts';
import { travel, undoState } from '#store/undo.ts';
import type { Handlers } from './handler.ts';

export const storeHandlers: Handlers<
  | 'drafts:open'
  | 'drafts:keep'
  | 'store:check'
  | 'store:backup'
  | 'history:read'
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
  'history:read': (kitchen, { limit, before }) => ({
    steps: kitchen.read.all(
      `SELECT s.id AS step, s.at, s.request, s.summary, s.kind, count(c.id) AS rows
       FROM steps AS s LEFT JOIN changes AS c ON c.step_id = s.id
       WHERE s.id < ? GROUP BY s.id ORDER BY s.id DESC LIMIT ?`,
      before ?? Number.MAX_SAFE_INTEGER,
      limit,
    ),
  }),
  'undo:state': (kitchen) => undoState(kitchen.read),
  'undo:last': (kitchen) => travel(kitchen, 'undo'),
  'redo:last': (kitchen) => travel(kitchen, 'redo'),
  'bin:list': (kitchen) => ({ entries: binEntries(kitchen.read) }),
  'bin:restore': (kitchen, { step }) => restoreFromBin(kitchen, step),
};
