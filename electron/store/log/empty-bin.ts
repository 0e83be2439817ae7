import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '../kitchen.ts';
import type { TableName } from '../tables.ts';
import { binEntries } from './bin.ts';
import { emptying } from './change-log.ts';
import { rangesOf } from './entry-ranges.ts';

/** How long the bin keeps what was removed. */
export const binKeeps_days = 90;

interface Gone {
  readonly table_name: TableName;
  readonly row_id: string;
}

function erase(kitchen: Kitchen, steps: readonly number[]): number {
  return kitchen.write(
    { request: emptying, summary: phrase`Empty the bin`, fixedBecause: phrase`what was erased for good is gone.` },
    (writer) => {
      const rows = steps.flatMap((step) =>
        writer.all<Gone>(
          `SELECT table_name, row_id FROM changes AS c WHERE step_id = ? AND after IS NULL AND commitment IS NULL
           AND id = (SELECT max(id) FROM changes WHERE table_name = c.table_name AND row_id = c.row_id)`,
          step,
        ),
      );
      if (rows.length === 0) return 0;
      const entries = rows.flatMap(({ table_name, row_id }) => writer.forget(table_name, row_id, null));
      writer.insert('erasures', { what: 'bin', entries: rangesOf(entries) });
      return rows.length;
    },
  );
}

/**
 * Erases for good what has lain in the bin for longer than it keeps things: the log forgets these rows, and says which of its
 * entries it forgot. Undo passes the emptying by; what was emptied can no longer be brought back.
 *
 * @returns how many rows
 */
export function emptyBin(kitchen: Kitchen): number {
  const since = new Date(kitchen.now().getTime() - binKeeps_days * 86_400_000).toISOString();
  const old = binEntries(kitchen.read).filter(({ at }) => at < since);
  return old.length === 0
    ? 0
    : erase(
        kitchen,
        old.map(({ step }) => step),
      );
}

/** Erases for good what one step removed, when its owner says so. */
export function eraseFromBin(kitchen: Kitchen, step: number): number {
  if (!binEntries(kitchen.read).some((entry) => entry.step === step)) {
    throw new Failure('not-found', phrase`The bin holds nothing from that step.`, ['step']);
  }
  return erase(kitchen, [step]);
}
