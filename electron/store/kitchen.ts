import { Failure } from '#shared/failure.ts';
import { openStep } from './change-log.ts';
import { type Reader, readerOf } from './reader.ts';
import type { Sqlite } from './sqlite-driver.ts';
import { translatingSqlite } from './sqlite-failure.ts';
import { statementsOf } from './statements.ts';
import type { TableName } from './tables.ts';
import { type Writer, writerOf } from './writer.ts';

/** What a person did, as history and undo tell it. */
export interface StepNote {
  readonly request: string;
  /** One line in plain words, such as "Start jar B". */
  readonly summary: string;
  readonly kind?: 'do' | 'undo' | 'redo';
  readonly target?: number;
  /** Set when this can't be taken back, with the reason. */
  readonly fixedBecause?: string;
  /** Everything inserted belongs to the sample kitchen. */
  readonly asSample?: boolean;
}

/** What other windows are told after a commit. */
export interface ChangeEvent {
  readonly step: number;
  readonly tables: readonly TableName[];
}

/** One open kitchen. Reads are free; every write is one transaction, one step of the change log. */
export interface Kitchen {
  readonly file: string;
  readonly readOnly: boolean;
  readonly db: Sqlite;
  readonly read: Reader;
  now(): Date;
  write<Result>(note: StepNote, work: (writer: Writer) => Result): Result;
  onChange(listener: (event: ChangeEvent) => void): () => void;
  close(): void;
}

export interface KitchenParts {
  readonly db: Sqlite;
  readonly file: string;
  readonly readOnly: boolean;
  readonly clock: () => Date;
}

export function kitchenOf({ db, file, readOnly, clock }: KitchenParts): Kitchen {
  const statement = statementsOf(db);
  const read = readerOf(statement);
  const listeners = new Set<(event: ChangeEvent) => void>();

  function write<Result>(note: StepNote, work: (writer: Writer) => Result): Result {
    if (readOnly) {
      throw new Failure(
        'store-read-only',
        'This kitchen can only be read: its file or folder is write-protected. Nothing was changed.',
      );
    }
    const touched = new Map<TableName, Set<string>>();
    const now = clock();
    let stepId = 0;
    const result = translatingSqlite(() =>
      db
        .transaction(() => {
          // A removed trial takes its jars and its tasting with it in any order: references are checked at the end.
          db.pragma('defer_foreign_keys = ON');
          const log = openStep(statement, read, {
            at: now.toISOString(),
            request: note.request,
            summary: note.summary,
            kind: note.kind ?? 'do',
            target: note.target ?? null,
            fixed_because: note.fixedBecause ?? null,
          });
          stepId = log.stepId;
          const done = work(writerOf({ statement, read, log, now, markAsSample: note.asSample ?? false, touched }));
          // Nothing was changed after all: nothing to undo either.
          if (touched.size === 0) statement('DELETE FROM steps WHERE id = ?').run(stepId);
          return done;
        })
        .immediate(),
    );
    const event: ChangeEvent = { step: stepId, tables: [...touched.keys()] };
    for (const listener of listeners) listener(event);
    return result;
  }

  return {
    file,
    readOnly,
    db,
    read,
    now: clock,
    write,
    onChange(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close() {
      listeners.clear();
      db.close();
    },
  };
}
