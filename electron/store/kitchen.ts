import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { fileKeeperOf } from './file-keeper.ts';
import { openStep } from './log/change-log.ts';
import { type Reader, readerOf } from './reader.ts';
import type { Sqlite } from './sqlite-driver.ts';
import { translatingSqlite } from './sqlite-failure.ts';
import { statementsOf } from './statements.ts';
import type { TableName } from './tables.ts';
import { type ChangeEvent, watchOthers } from './watch-others.ts';
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

/** One open kitchen. Reads are free; every write is one transaction, one step of the change log. */
export interface Kitchen {
  readonly file: string;
  readonly readOnly: boolean;
  readonly db: Sqlite;
  readonly read: Reader;
  now(): Date;
  /** @throws Failure `store-missing` when the file is no longer the one that was opened */
  assertThere(): void;
  write<Result>(note: StepNote, work: (writer: Writer) => Result): Result;
  onChange(listener: (event: ChangeEvent) => void): () => void;
  /** Looks whether another program or window wrote to the file, and tells the listeners what. */
  lookForOthers(): void;
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
  const keeper = fileKeeperOf(file);
  const others = watchOthers(db, read);
  others.look();

  function write<Result>(note: StepNote, work: (writer: Writer) => Result): Result {
    if (readOnly) {
      throw new Failure(
        'store-read-only',
        phrase`This kitchen can only be read: its file or folder is write-protected. Nothing was changed.`,
      );
    }
    keeper.assertThere();
    const touched = new Map<TableName, Set<string>>();
    const now = clock();
    let stepId = 0;
    const result = translatingSqlite(() =>
      db
        .transaction(() => {
          const log = openStep(statement, read, {
            at: now.toISOString(),
            request: note.request,
            summary: note.summary,
            kind: note.kind ?? 'do',
            target: note.target ?? null,
            fixed_because: note.fixedBecause ?? null,
          });
          stepId = log.stepId;
          let isDeferred = false;
          const deferReferences = (): void => {
            // Asked for only where rows may go or come in any order: the pragma has every kept statement compiled anew.
            if (!isDeferred) db.pragma('defer_foreign_keys = ON');
            isDeferred = true;
          };
          const markAsSample = note.asSample ?? false;
          const done = work(writerOf({ statement, read, log, now, markAsSample, touched, deferReferences }));
          // Nothing was changed after all: nothing to undo either.
          if (touched.size === 0) statement('DELETE FROM steps WHERE id = ?').run(stepId);
          keeper.assertThere();
          return done;
        })
        .immediate(),
    );
    const event: ChangeEvent = { step: stepId, tables: [...touched.keys()] };
    if (touched.size > 0) others.wrote(stepId);
    for (const listener of listeners) listener(event);
    return result;
  }

  return {
    file,
    readOnly,
    db,
    read,
    now: clock,
    assertThere: keeper.assertThere,
    write,
    onChange(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    lookForOthers() {
      const event = others.look();
      if (event !== null) for (const listener of listeners) listener(event);
    },
    close() {
      listeners.clear();
      db.close();
    },
  };
}
