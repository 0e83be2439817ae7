import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { completeRow } from '../complete-row.ts';
import type { Kitchen } from '../kitchen.ts';
import type { Reader } from '../reader.ts';
import type { Value } from '../statements.ts';
import type { TableName } from '../tables.ts';
import { nextRevision, type Step, type StoredChange } from './change-log.ts';

/** A step that removed something which is still gone. */
export interface BinEntry {
  readonly step: number;
  readonly at: string;
  readonly summary: string;
  readonly rows: number;
}

const removedAndGone = `
  SELECT step_id AS step, count(*) AS rows FROM changes AS c
  WHERE after IS NULL AND commitment IS NULL AND id = (SELECT max(id) FROM changes WHERE table_name = c.table_name AND row_id = c.row_id)
  GROUP BY step_id`;

/** What was removed and can be brought back, newest first. Undoing a making leaves nothing in the bin. */
export function binEntries(read: Reader): BinEntry[] {
  return read.all<BinEntry>(
    `SELECT s.id AS step, s.at, s.summary, g.rows FROM (${removedAndGone}) AS g JOIN steps AS s ON s.id = g.step
     WHERE s.kind <> 'undo' AND s.request GLOB '*:remove*' ORDER BY s.id DESC`,
  );
}

/** Where an answer belongs to a sitting that was closed: what was seen can't be changed afterwards. */
function closedOwner(read: Reader, table: TableName, row: Readonly<Record<string, Value>>): string | undefined {
  const id = String(row.tasting_id ?? row.discrimination_id ?? '');
  if (table === 'scores' || table === 'remarks') return read.row('tastings', id)?.closed_at ?? undefined;
  if (table === 'presentations') return read.row('discriminations', id)?.closed_at ?? undefined;
  return undefined;
}

/** The bases that restored trials and jars take from. */
function basesOf(read: Reader, restored: readonly StoredChange[]): string[] {
  const trials = restored.flatMap(({ table_name, row_id, before }) => {
    if (table_name === 'trials') return [row_id];
    return table_name === 'jars' ? [String((JSON.parse(before ?? '{}') as { trial_id?: string }).trial_id)] : [];
  });
  return [...new Set(trials)].flatMap((id) => read.row('trials', id)?.base_id ?? []);
}

function assertBasesHold(read: Reader, restored: readonly StoredChange[]): void {
  for (const base of basesOf(read, restored)) {
    const over = read.one<{ name: string }>(
      `SELECT name FROM bases AS b WHERE id = ? AND volume_mL + 1e-6 <
         (SELECT sum(j.base_mL) FROM trials AS t JOIN jars AS j ON j.trial_id = t.id WHERE t.base_id = b.id)`,
      base,
    );
    if (over === undefined) continue;
    throw new Failure(
      'refused',
      phrase`Meanwhile “${over.name}” was given to other jars; there is not enough of it left for these.`,
      ['step'],
    );
  }
}

/**
 * Brings back everything that a step removed and that is still gone, each row as it was last.
 *
 * @throws Failure `not-found` when that step has nothing in the bin; `refused` when it would change a closed tasting or over-allot a base
 */
export function restoreFromBin(kitchen: Kitchen, stepId: number): { rows: number } {
  const step = kitchen.read.one<Step>("SELECT * FROM steps WHERE id = ? AND kind <> 'undo'", stepId);
  const removed = kitchen.read.all<StoredChange>(
    `SELECT * FROM changes AS c WHERE step_id = ? AND after IS NULL AND commitment IS NULL
     AND id = (SELECT max(id) FROM changes WHERE table_name = c.table_name AND row_id = c.row_id) ORDER BY id DESC`,
    stepId,
  );
  if (step === undefined || removed.length === 0) {
    throw new Failure('not-found', phrase`The bin holds nothing from that step.`, ['step']);
  }
  return kitchen.write({ request: 'bin:restore', summary: phrase`Bring back: ${step.summary}` }, (writer) => {
    for (const change of removed) {
      const row = completeRow(kitchen.db, change.table_name, change.before ?? '{}');
      if (closedOwner(writer, change.table_name, row) !== undefined) {
        throw new Failure(
          'refused',
          phrase`The tasting was closed meanwhile: its codes have been seen, so nothing can be put into it.`,
          ['step'],
        );
      }
      writer.put(change.table_name, change.row_id, { ...row, revision: nextRevision(writer, change) });
    }
    assertBasesHold(writer, removed);
    return { rows: removed.length };
  });
}
