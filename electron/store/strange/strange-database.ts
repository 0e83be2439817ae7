import type { DatabaseSync, DatabaseSyncOptions } from 'node:sqlite';
import { sqliteDriver } from '../sqlite-driver.ts';
import type { Value } from '../statements.ts';
import { tableNames } from '../tables.ts';

export type StrangeRow = Readonly<Record<string, Value>>;

/** A file of unknown make, open to be read alone. */
export interface StrangeDatabase {
  rows(sql: string): Iterable<StrangeRow>;
  close(): void;
}

/** Far more than any row of a kitchen, and far less than what a file could make SQLite build of itself. */
const limits = {
  length: 16_000_000,
  sqlLength: 100_000,
  column: 200,
  exprDepth: 100,
  compoundSelect: 10,
  vdbeOp: 100_000,
  functionArg: 10,
  attach: 0,
  likePatternLength: 100,
  variableNumber: 10,
  triggerDepth: 1,
} as const;

const pragmas = ['trusted_schema = OFF', 'cell_size_check = ON', 'mmap_size = 0', 'query_only = ON'];

/** SQLite's primary result codes (sqlite.org/rescode.html) under the names that the other driver gives them. */
const codeNames: Readonly<Record<number, string>> = {
  5: 'SQLITE_BUSY',
  6: 'SQLITE_LOCKED',
  8: 'SQLITE_READONLY',
  10: 'SQLITE_IOERR',
  11: 'SQLITE_CORRUPT',
  13: 'SQLITE_FULL',
  14: 'SQLITE_CANTOPEN',
  18: 'SQLITE_TOOBIG',
  26: 'SQLITE_NOTADB',
};

function named(error: unknown): unknown {
  if (!(error instanceof Error) || !('errcode' in error) || typeof error.errcode !== 'number') return error;
  const code = codeNames[error.errcode & 0xff];
  return code === undefined ? error : Object.assign(error, { code });
}

function plain(row: Readonly<Record<string, unknown>>): StrangeRow {
  return Object.fromEntries(
    Object.entries(row).map(([name, value]) => [name, typeof value === 'bigint' ? Number(value) : value]),
  ) as StrangeRow;
}

function guard(db: DatabaseSync, { constants }: typeof import('node:sqlite')): void {
  const readable = new Set<string | null>(['sqlite_master', ...tableNames]);
  // All that is ever asked of it: which columns its tables have, and what stands in them.
  db.setAuthorizer((action, name, detail) => {
    if (action === constants.SQLITE_SELECT) return constants.SQLITE_OK;
    if (action === constants.SQLITE_READ && readable.has(name)) return constants.SQLITE_OK;
    if (action === constants.SQLITE_PRAGMA && name === 'table_xinfo' && detail !== null) return constants.SQLITE_OK;
    return constants.SQLITE_DENY;
  });
}

function opened(open: () => DatabaseSync): DatabaseSync {
  try {
    return open();
  } catch (error) {
    throw named(error);
  }
}

/** With limits, defensive mode and leave to read alone; null where this Node's SQLite has no limits. */
function limited(file: string): StrangeDatabase | null {
  const sqlite = process.getBuiltinModule('node:sqlite') as typeof import('node:sqlite') | undefined;
  if (sqlite === undefined) return null;
  const db = opened(() => new sqlite.DatabaseSync(file, { limits, defensive: true } as DatabaseSyncOptions));
  try {
    if ((db as { limits?: unknown }).limits === undefined) {
      db.close();
      return null;
    }
    for (const pragma of pragmas) db.exec(`PRAGMA ${pragma}`);
    guard(db, sqlite);
  } catch (error) {
    db.close();
    throw named(error);
  }
  return {
    *rows(sql) {
      try {
        const statement = db.prepare(sql);
        // A number that is too large for one must not end the reading.
        statement.setReadBigInts(true);
        for (const row of statement.iterate()) yield plain(row);
      } catch (error) {
        throw named(error);
      }
    },
    close: () => db.close(),
  };
}

function unlimited(file: string): StrangeDatabase {
  const Database = sqliteDriver();
  const db = new Database(file);
  for (const pragma of pragmas) db.pragma(pragma);
  return {
    rows: (sql) => db.prepare(sql).iterate() as Iterable<StrangeRow>,
    close: () => db.close(),
  };
}

/**
 * Opens a file of unknown make to be read: nothing in its schema is trusted or run, nothing can be written.
 *
 * Method: Node's own SQLite, which takes limits and asks leave for every table that is read; where it has no limits, the store's
 * driver without them. The file must be a copy that nobody else has open: two drivers on one file would undo each other's locks.
 */
export function openStrangeDatabase(copy: string): StrangeDatabase {
  return limited(copy) ?? unlimited(copy);
}
