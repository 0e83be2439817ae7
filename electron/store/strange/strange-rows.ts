import { copyFileSync, existsSync, mkdtempSync, rmSync, type Stats, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { carriedTables } from '../carry/carried-file.ts';
import { rowProblem, wholeRow } from '../carry/row-problem.ts';
import type { ReadableRow } from '../keeping/readable-rows.ts';
import { refuseHollow } from '../open-kitchen.ts';
import { sqliteFailure } from '../sqlite-failure.ts';
import { columnNames, type TableName } from '../tables.ts';
import { openStrangeDatabase, type StrangeDatabase, type StrangeRow } from './strange-database.ts';

export interface StrangeRows {
  readonly found: ReadableRow[];
  /** Rows that can't stand in a kitchen. */
  readonly refused: number;
}

/** No text of a kitchen is longer; its own CHECKs are stricter still. */
const longest = 1_000_000;

/** The columns of a real table that a kitchen knows too, as they stand in it: none that is computed or hidden. */
function plainColumns(db: StrangeDatabase, table: TableName): string[] {
  const [entry] = db.rows(`SELECT sql FROM sqlite_schema WHERE name = '${table}' AND type = 'table'`);
  if (entry === undefined || !/^CREATE TABLE\b/.test(String(entry.sql ?? ''))) return [];
  const known = new Set(columnNames(table));
  return [...db.rows(`PRAGMA table_xinfo("${table}")`)].flatMap(({ name, hidden }) =>
    hidden === 0 && known.has(String(name)) ? [String(name)] : [],
  );
}

/** The rows of a table as far as they can be read: what lies behind a damaged page, or in a row beyond all limits, is not. */
function* rowsOf(db: StrangeDatabase, table: TableName): Generator<StrangeRow> {
  const columns = plainColumns(db, table);
  if (columns.length === 0) return;
  const list = columns.map((column) => `"${column}"`).join(', ');
  try {
    yield* db.rows(`SELECT ${list} FROM "${table}"`);
  } catch (error) {
    const isTooBig = error instanceof Error && 'code' in error && error.code === 'SQLITE_TOOBIG';
    if (!isTooBig && sqliteFailure(error) === error) throw error;
  }
}

/** What stands at a place; null where nothing does, or where no name such as this can stand. */
function entryAt(file: string): Stats | null {
  try {
    return statSync(file);
  } catch {
    return null;
  }
}

/** Copies a kitchen's file with its log. */
function copyWhole(file: string, copy: string): void {
  try {
    copyFileSync(file, copy);
    if (existsSync(`${file}-wal`)) copyFileSync(`${file}-wal`, `${copy}-wal`);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOSPC') {
      throw new Failure('store-full', phrase`The disk is full: the file could not be copied to be looked at.`, [
        'file',
      ]);
    }
    throw new Failure('store-missing', phrase`This file may not be read.`, ['file']);
  }
}

/**
 * Reads from a file that calls itself a kitchen, and is built otherwise, the rows that could stand in one.
 *
 * Method: a copy of the file is opened to be read alone, its schema not trusted: nothing that it says should run is run. Of views,
 * virtual tables and computed columns nothing is read. Each row goes through the same door as one from a carried file.
 *
 * @throws Failure `store-not-a-kitchen` when it is no SQLite database, `store-missing`
 */
export function strangeRows(file: string): StrangeRows {
  const folder = mkdtempSync(join(tmpdir(), 'sidejar-strange-'));
  const copy = join(folder, 'k.sidejar');
  let db: StrangeDatabase | null = null;
  try {
    const entry = entryAt(file);
    if (entry === null) throw new Failure('store-missing', phrase`There is no file at ${file}.`, ['file']);
    if (!entry.isFile()) {
      throw new Failure('store-not-a-kitchen', phrase`This is a folder, a device or a pipe. It was left alone.`, [
        'file',
      ]);
    }
    refuseHollow(file);
    copyWhole(file, copy);
    db = openStrangeDatabase(copy);
    const found: ReadableRow[] = [];
    let refused = 0;
    for (const table of carriedTables) {
      for (const row of rowsOf(db, table)) {
        const isLong = Object.values(row).some((value) => typeof value === 'string' && value.length > longest);
        if (isLong || rowProblem(table, row) !== null) refused += 1;
        else found.push({ table, row: wholeRow(table, row), isFromLog: false });
      }
    }
    return { found, refused };
  } catch (error) {
    throw sqliteFailure(error);
  } finally {
    db?.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
