import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { completeRow } from '../complete-row.ts';
import type { Kitchen } from '../kitchen.ts';
import type { Reader } from '../reader.ts';
import type { Value } from '../statements.ts';
import type { TableName } from '../tables.ts';
import { nextRevision, nobodysActs, rowText, type Step, type StoredChange } from './change-log.ts';

type Direction = 'undo' | 'redo';

const latestOf = 'SELECT kind FROM steps WHERE target = s.id ORDER BY id DESC LIMIT 1';

/** The step that undo would take back next: the newest one that stands. */
function nextToUndo(read: Reader): Step | undefined {
  return read.one<Step>(
    `SELECT * FROM steps AS s WHERE kind = 'do' AND request NOT IN ${nobodysActs} AND coalesce((${latestOf}), 'redo') = 'redo' ORDER BY id DESC LIMIT 1`,
  );
}

/** The step that redo would bring back: the one undone last, as long as nothing new was done since. */
function nextToRedo(read: Reader): Step | undefined {
  return read.one<Step>(
    `SELECT s.* FROM steps AS s JOIN steps AS u ON u.target = s.id AND u.kind = 'undo'
     WHERE (${latestOf}) = 'undo' AND u.id > (SELECT coalesce(max(id), 0) FROM steps WHERE kind = 'do' AND request NOT IN ${nobodysActs})
     ORDER BY u.id DESC LIMIT 1`,
  );
}

/** A row without its edition, in the columns of today. */
function withoutRevision(kitchen: Kitchen, table: TableName, text: string | null): string | null {
  if (text === null) return null;
  const { revision: _, ...row } = completeRow(kitchen.db, table, text);
  return rowText(row);
}

interface Crossing {
  readonly from: string | null;
  readonly to: string | null;
}

function crossing(change: StoredChange, direction: Direction): Crossing {
  return direction === 'undo' ? { from: change.after, to: change.before } : { from: change.before, to: change.after };
}

export interface UndoState {
  readonly undo: string | null;
  readonly undoRefused: string | null;
  readonly undoStep: { readonly step: number; readonly request: string } | null;
  readonly redo: string | null;
}

/** What undo and redo would do now, in the words of the steps. */
export function undoState(read: Reader): UndoState {
  const undo = nextToUndo(read);
  return {
    undo: undo?.summary ?? null,
    undoRefused: undo?.fixed_because ?? null,
    undoStep: undo === undefined ? null : { step: undo.id, request: undo.request },
    redo: nextToRedo(read)?.summary ?? null,
  };
}

/**
 * Takes the newest standing step back, or brings the last undone one forward again, as one new step of the log.
 *
 * @param only the step it is meant for
 * @throws Failure `nothing-to-undo`, or `refused` with the reason: it is another step's turn, the step can't be taken back, or a row it
 * wrote has changed since
 */
export function travel(kitchen: Kitchen, direction: Direction, only?: number): { step: number; summary: string } {
  const { read } = kitchen;
  const step = direction === 'undo' ? nextToUndo(read) : nextToRedo(read);
  if (step === undefined) {
    throw new Failure(
      'nothing-to-undo',
      direction === 'undo' ? phrase`There is nothing to undo.` : phrase`There is nothing to redo.`,
    );
  }
  if (only !== undefined && step.id !== only) {
    throw new Failure('refused', phrase`Something else was done since. The undo button takes back the latest step.`);
  }
  if (step.fixed_because !== null) throw new Failure('refused', `“${step.summary}” stays: ${step.fixed_because}`);
  const order = direction === 'undo' ? 'DESC' : 'ASC';
  const changes = read.all<StoredChange>(`SELECT * FROM changes WHERE step_id = ? ORDER BY id ${order}`, step.id);
  const verb = direction === 'undo' ? phrase`Undo` : phrase`Redo`;
  return kitchen.write(
    { request: `${direction}:last`, summary: `${verb}: ${step.summary}`, kind: direction, target: step.id },
    (writer) => {
      for (const change of changes) {
        if (change.commitment !== null) {
          throw new Failure('refused', phrase`“${step.summary}” stays: what it wrote was since erased for good.`);
        }
        const { from, to } = crossing(change, direction);
        const now = writer.row(change.table_name, change.row_id);
        const present = now === undefined ? null : rowText(now as unknown as Record<string, Value>);
        const [standing, expected] = [present, from].map((text) => withoutRevision(kitchen, change.table_name, text));
        if (standing !== expected) {
          throw new Failure(
            'refused',
            direction === 'undo'
              ? phrase`“${step.summary}” can’t be undone: something it wrote (in ${change.table_name}) has changed since.`
              : phrase`“${step.summary}” can’t be redone: something it wrote (in ${change.table_name}) has changed since.`,
          );
        }
        if (to === null) {
          writer.put(change.table_name, change.row_id, null);
        } else {
          const row = completeRow(kitchen.db, change.table_name, to);
          // A taken-back row is still a newer edition: a window that saw the old one must notice.
          writer.put(change.table_name, change.row_id, { ...row, revision: nextRevision(writer, change) });
        }
      }
      return { step: step.id, summary: step.summary };
    },
  );
}
