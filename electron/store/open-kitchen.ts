import {
  accessSync,
  chmodSync,
  closeSync,
  constants,
  copyFileSync,
  existsSync,
  mkdtempSync,
  openSync,
  readSync,
  statSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { listBackups } from './keeping/list-backups.ts';
import { type Kitchen, kitchenOf } from './kitchen.ts';
import { beginning } from './log/change-log.ts';
import { makeFolder } from './make-folder.ts';
import { migrate } from './migrate.ts';
import { allMigrations } from './migrations/all-migrations.ts';
import type { Migration } from './migrations/migration.ts';
import { type Sqlite, sqliteDriver } from './sqlite-driver.ts';
import { sqliteFailure } from './sqlite-failure.ts';
import { strangeSchema } from './strange/expected-schema.ts';

/** "SDJR" in SQLite's application_id: how a kitchen is told from other databases. */
export const applicationId = 0x53_44_4a_52;

export interface OpenOptions {
  readonly clock?: () => Date;
  /** How long to wait for another writer before `store-locked`. */
  readonly patience_ms?: number;
  readonly migrations?: readonly Migration[];
  /** False: a file that does not exist is `store-missing`, not a new kitchen. */
  readonly mayMake?: boolean;
}

interface Header {
  readonly applicationId: number;
  readonly schema: number;
}

/** Reads application_id and user_version from the file's first 100 bytes, without SQLite touching the file. */
function readHeader(file: string): Header | null {
  const bytes = Buffer.alloc(100);
  const handle = openSync(file, 'r');
  try {
    const length = readSync(handle, bytes, 0, 100, 0);
    if (length === 0) return null;
    if (length < 100 || bytes.toString('latin1', 0, 16) !== 'SQLite format 3\0') {
      throw new Failure(
        'store-not-a-kitchen',
        phrase`This file is not a kitchen: it is no SQLite database. It was left as it is.`,
      );
    }
    // Pages with room kept back, a schema format that SQLite has not made, texts in UTF-16: no kitchen was ever written so.
    const [reserved = 0, format, encoding] = [bytes[20], bytes.readUInt32BE(44), bytes.readUInt32BE(56)];
    if (reserved !== 0 || format > 4 || encoding > 1) {
      throw new Failure(
        'store-damaged',
        phrase`The head of this file is not one that a kitchen has. It was left as it is.`,
      );
    }
    return { applicationId: bytes.readUInt32BE(68), schema: bytes.readUInt32BE(60) };
  } finally {
    closeSync(handle);
  }
}

function refuseForeign(header: Header, newest: number): void {
  if (header.applicationId !== applicationId && !(header.applicationId === 0 && header.schema === 0)) {
    throw notOurs();
  }
  if (header.schema > newest) {
    throw new Failure(
      'store-newer',
      phrase`This kitchen was last opened by a newer version of the program (its schema is ${header.schema}, this program knows ${newest}). It was left untouched; update the program to open it.`,
    );
  }
}

/** As the owner marked it: a file without any write bit is only read, even by an administrator. */
function isWriteProtected(path: string): boolean {
  if ((statSync(path).mode & 0o222) === 0) return true;
  try {
    accessSync(path, constants.W_OK);
    return false;
  } catch {
    return true;
  }
}

/**
 * Connects to a kitchen that is only read. SQLite wants to put side files beside it, even to read; where the folder does not
 * let it, a copy is read.
 */
function connectToRead(file: string, patience_ms: number): Sqlite {
  try {
    return connect(file, true, patience_ms);
  } catch (error) {
    const failure = sqliteFailure(error);
    if (!(failure instanceof Failure) || !['store-missing', 'store-read-only'].includes(failure.code)) throw error;
    const copy = join(mkdtempSync(join(tmpdir(), 'sidejar-read-')), 'kitchen.sidejar');
    copyFileSync(file, copy);
    if (existsSync(`${file}-wal`)) copyFileSync(`${file}-wal`, `${copy}-wal`);
    chmodSync(copy, 0o600);
    return connect(copy, true, patience_ms);
  }
}

function connect(file: string, readOnly: boolean, patience_ms: number): Sqlite {
  const Database = sqliteDriver();
  const db = new Database(file, { readonly: readOnly, fileMustExist: readOnly, timeout: patience_ms });
  try {
    db.pragma('trusted_schema = OFF');
    db.pragma('foreign_keys = ON');
    db.pragma('synchronous = FULL');
    // Cells of a page are checked before they are read, and pages are read, never mapped: a file that shrinks meanwhile is an error.
    db.pragma('cell_size_check = ON');
    db.pragma('mmap_size = 0');
    db.prepare('SELECT count(*) FROM sqlite_schema').get();
    return db;
  } catch (error) {
    db.close();
    throw error;
  }
}

/** The schema's number as SQLite sees it: the header on disk may trail a write-ahead log. */
function schemaOf(db: Sqlite, newest: number): number {
  const header: Header = {
    applicationId: Number(db.pragma('application_id', { simple: true })),
    schema: Number(db.pragma('user_version', { simple: true })),
  };
  refuseForeign(header, newest);
  if (header.applicationId === 0 && Number(db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get()) > 0) {
    throw notOurs();
  }
  return header.schema;
}

/** A file that calls itself a kitchen but is built otherwise is not read any further. */
function refuseStrange(db: Sqlite, migrations: readonly Migration[], schema: number): void {
  const strange = schema === 0 ? null : strangeSchema(db, migrations, schema);
  if (strange === null) return;
  throw new Failure(
    'store-not-a-kitchen',
    phrase`This file calls itself a kitchen, but ${strange}. Nothing in it was read or changed. On Data of a kitchen of yours, what can be read of it can be copied into a new one.`,
  );
}

/** A file that claims far more room than it takes was not filled by a kitchen. */
export function refuseHollow(file: string): void {
  const { size, blocks } = statSync(file);
  const taken = blocks * 512;
  if (size > 2 ** 30 && taken > 0 && taken * 100 < size) {
    throw new Failure(
      'store-damaged',
      phrase`This file claims ${Math.round(size / 2 ** 30)} GB and holds hardly anything: it is damaged, or made to fill your disk. It was left as it is.`,
    );
  }
}

function notOurs(): Failure {
  return new Failure(
    'store-not-a-kitchen',
    phrase`This file is a database, but not a kitchen of this program. It was left as it is.`,
  );
}

/** A new file becomes a kitchen with a name, through the change log like everything else. */
function nameOnce(kitchen: Kitchen): void {
  // One with a past that has lost its name is damaged, and is not written to.
  const isNamed = () =>
    kitchen.read.one('SELECT id FROM kitchens UNION ALL SELECT id FROM steps LIMIT 1') !== undefined;
  if (isNamed()) return;
  const note = {
    request: beginning,
    summary: phrase`Begin a new kitchen`,
    fixedBecause: phrase`A kitchen begins only once.`,
  };
  kitchen.write(note, (writer) => {
    if (writer.one('SELECT id FROM kitchens') === undefined)
      writer.insert('kitchens', { name: phrase`Home kitchen`, measures: 'metric', currency: null });
  });
}

/** A kitchen too damaged to be opened at all: says where its newest backup lies. */
function withBackup(error: unknown, file: string): unknown {
  if (!(error instanceof Failure) || error.code !== 'store-damaged') return error;
  const newest = listBackups(file)[0]?.file;
  const way =
    newest === undefined
      ? phrase`No backup of it lies in the folder “backups” beside it.`
      : phrase`Its newest backup is ${newest}: copy that under a new name and open the copy.`;
  return new Failure('store-damaged', phrase`Part of this kitchen’s file is damaged. It was left as it is. ${way}`);
}

/**
 * Opens a kitchen, makes it when the file does not exist or is empty, and brings an older one up to date.
 *
 * @param path the `.sidejar` file
 * @throws Failure `store-not-a-kitchen`, `store-newer` (both leave the file's bytes as they are), `store-locked`,
 *   `store-missing`, `store-read-only`, `store-damaged`, `node-too-old`
 */
export async function openKitchen(path: string, options: OpenOptions = {}): Promise<Kitchen> {
  const file = resolve(path);
  const migrations = options.migrations ?? allMigrations;
  const newest = migrations.at(-1)?.number ?? 0;
  const clock = options.clock ?? (() => new Date());
  const exists = existsSync(file);
  let header: Header | null = null;
  try {
    if (!exists && options.mayMake === false) {
      throw new Failure(
        'store-missing',
        phrase`There is no kitchen at ${file}. Check the name; only a request that writes makes a new one.`,
      );
    }
    if (exists && statSync(file).isDirectory()) {
      throw new Failure(
        'store-not-a-kitchen',
        phrase`This is a folder, not a kitchen. Name a file that ends in .sidejar.`,
      );
    }
    if (exists && !statSync(file).isFile()) {
      throw new Failure('store-not-a-kitchen', phrase`This is a device or a pipe, not a kitchen. It was left alone.`);
    }
    if (exists) {
      header = readHeader(file);
      refuseHollow(file);
    } else makeFolder(dirname(file));
  } catch (error) {
    if (error instanceof Failure) throw error;
    throw new Failure(
      'store-missing',
      phrase`This kitchen’s file cannot be opened: the folder is missing, or it is not permitted.`,
    );
  }
  if (header !== null) refuseForeign(header, newest);
  const folder = dirname(file);
  const readOnly = exists && (isWriteProtected(file) || isWriteProtected(folder));
  if (!exists && isWriteProtected(folder)) {
    throw new Failure('store-read-only', phrase`A new kitchen cannot be made here: the folder is write-protected.`);
  }
  const patience_ms = options.patience_ms ?? 3000;
  let db: Sqlite;
  try {
    db = readOnly ? connectToRead(file, patience_ms) : connect(file, false, patience_ms);
  } catch (error) {
    throw withBackup(sqliteFailure(error), file);
  }
  try {
    // One read of one moment: another program may be bringing this very file up to date.
    const schema = db.transaction(() => {
      const number = schemaOf(db, newest);
      refuseStrange(db, migrations, number);
      return number;
    })();
    // Only now: turning to WAL writes into the file, and a stranger's file stays as it is.
    if (!readOnly) db.pragma('journal_mode = WAL');
    if (schema < newest) {
      if (readOnly) {
        throw new Failure(
          'store-read-only',
          phrase`This kitchen is of an older version and must be brought up to date once, but it is write-protected.`,
        );
      }
      await migrate(db, { file, from: schema, migrations, applicationId, now: clock() });
    }
    const kitchen = kitchenOf({ db, file, readOnly, clock });
    if (!readOnly) nameOnce(kitchen);
    return kitchen;
  } catch (error) {
    db.close();
    throw withBackup(sqliteFailure(error), file);
  }
}
