import { Failure } from '#shared/failure.ts';
import type { Step, StoredChange } from './change-log.ts';
import type { Kitchen } from './kitchen.ts';
import type { Reader } from './reader.ts';
import type { Value } from './statements.ts';

/** A step that removed something which is still gone. */
export interface BinEntry {
  readonly step: number;
  readonly at: string;
  readonly summary: string;
  readonly rows: number;
}

const removedAndGone = `
  SELECT step_id AS step, count(*) AS rows FROM changes AS c
  WHERE after IS NULL AND id = (SELECT max(id) FROM changes WHERE table_name = c.table_name AND row_id = c.row_id)
  GROUP BY step_id`;

/** What was removed and can be brought back, newest first. Undoing a making leaves nothing in the bin. */
export function binEntries(read: Reader): BinEntry[] {
  return read.all<BinEntry>(
    `SELECT s.id AS step, s.at, s.summary, g.rows FROM (${removedAndGone}) AS g JOIN steps AS s ON s.id = g.step
     WHERE s.kind <> 'undo' ORDER BY s.id DESC`,
  );
}

/**
 * Brings back everything that a step removed and that is still gone.
 *
 * @throws Failure `not-found` when that step has nothing in the bin
 */
export function restoreFromBin(kitchen: Kitchen, stepId: number): { rows: number } {
  const step = kitchen.read.one<Step>('SELECT * FROM steps WHERE id = ?', stepId);
  const removed = kitchen.read.all<StoredChange>(
    'SELECT * FROM changes WHERE step_id = ? AND after IS NULL ORDER BY id DESC',
    stepId,
  );
  if (step === undefined || removed.length === 0) {
    throw new Failure('not-found', 'The bin holds nothing from that step.', ['step']);
  }
  return kitchen.write({ request: 'bin:restore', summary: `Bring back: ${step.summary}` }, (writer) => {
    let rows = 0;
    for (const change of removed) {
      if (change.before === null || writer.row(change.table_name, change.row_id) !== undefined) continue;
      const row = JSON.parse(change.before) as Record<string, Value>;
      writer.put(change.table_name, change.row_id, { ...row, revision: Number(row.revision) + 1 });
      rows += 1;
    }
    return { rows };
  });
}
