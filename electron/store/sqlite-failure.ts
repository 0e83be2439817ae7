import { phrase } from '#core/words/phrase.ts';
import { Failure, type FailureCode } from '#shared/failure.ts';

interface Translation {
  readonly starts: string;
  readonly code: FailureCode;
  readonly sentence: string;
}

// The one place where SQLite's error codes become sentences. First match wins.
const translations: readonly Translation[] = [
  {
    starts: 'SQLITE_READONLY',
    code: 'store-read-only',
    get sentence() {
      return phrase`This kitchen can only be read: its file or folder is write-protected. Nothing was changed.`;
    },
  },
  {
    starts: 'SQLITE_BUSY',
    code: 'store-locked',
    get sentence() {
      return phrase`Another program is writing to this kitchen and did not finish in time. Nothing was changed; try again.`;
    },
  },
  {
    starts: 'SQLITE_LOCKED',
    code: 'store-locked',
    get sentence() {
      return phrase`This kitchen is locked by another program. Nothing was changed; try again.`;
    },
  },
  {
    starts: 'SQLITE_NOTADB',
    code: 'store-not-a-kitchen',
    get sentence() {
      return phrase`This file is not a kitchen: it is no SQLite database. It was left as it is.`;
    },
  },
  {
    starts: 'SQLITE_FULL',
    code: 'store-full',
    get sentence() {
      return phrase`The disk is full. Nothing was changed; make room and try again.`;
    },
  },
  {
    starts: 'SQLITE_CORRUPT',
    code: 'store-damaged',
    get sentence() {
      return phrase`Part of this kitchen’s file is damaged. Nothing was changed; restore a backup into a new file.`;
    },
  },
  {
    starts: 'SQLITE_IOERR',
    code: 'store-damaged',
    get sentence() {
      return phrase`The disk did not answer as it should while reading or writing this kitchen. Nothing was changed.`;
    },
  },
  {
    starts: 'SQLITE_CANTOPEN',
    code: 'store-missing',
    get sentence() {
      return phrase`This kitchen’s file cannot be opened: the folder is missing, or reading it is not permitted.`;
    },
  },
  {
    starts: 'SQLITE_CONSTRAINT_UNIQUE',
    code: 'refused',
    get sentence() {
      return phrase`There is one of this name or place already. Nothing was changed.`;
    },
  },
  {
    starts: 'SQLITE_CONSTRAINT_FOREIGNKEY',
    code: 'refused',
    get sentence() {
      return phrase`Something else in this kitchen still refers to it, or what it refers to is gone. Nothing was changed.`;
    },
  },
  {
    starts: 'SQLITE_CONSTRAINT',
    code: 'refused',
    get sentence() {
      return phrase`A value is outside what the kitchen can hold. Nothing was changed.`;
    },
  },
];

/** Turns an error of SQLite into a failure with a plain sentence; passes every other error through unchanged. */
export function sqliteFailure(error: unknown): unknown {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (typeof code !== 'string' || !code.startsWith('SQLITE_')) return error;
  const found = translations.find((entry) => code.startsWith(entry.starts));
  return found ? new Failure(found.code, found.sentence) : error;
}

/** Runs `work`, translating what SQLite throws. */
export function translatingSqlite<Result>(work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    throw sqliteFailure(error);
  }
}
