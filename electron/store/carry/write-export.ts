import { closeSync, existsSync, fsyncSync, openSync, renameSync, rmSync, writeSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { phrase } from '#core/words/phrase.ts';
import type { CountedWork } from '#shared/carriage.ts';
import { csvText } from '#shared/csv-text.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '../kitchen.ts';
import { makeFolder, unmakeFolders } from '../make-folder.ts';
import type { Value } from '../statements.ts';
import { columnNames, type TableName } from '../tables.ts';
import { carriedTables, carriedText } from './carried-file.ts';
import { csvMetadata } from './csv-metadata.ts';
import { copyPhotos, exportedPhotos, nowAndThen, photoFilesOf } from './export-photos.ts';

export interface ExportedFile {
  readonly name: string;
  readonly rows: number;
  readonly bytes: number;
}

interface Watch {
  progress(done: number, total: number, work?: CountedWork): void;
  assertGoing(): void;
}

function placeOf(kitchen: Kitchen, to: string | undefined): string {
  if (to !== undefined) return resolve(to);
  const stamp = kitchen.now().toISOString().replace(/[:.]/g, '-');
  return join(dirname(kitchen.file), 'exports', `${basename(kitchen.file).replace(/\.sidejar$/, '')}-${stamp}`);
}

/** Writes pieces to a file in larger parts; returns its size. */
function writePieces(file: string, pieces: Iterable<string>): number {
  const handle = openSync(file, 'wx');
  let bytes = 0;
  let waiting = '';
  // A disk that is nearly full takes a part and says so by its length alone; only the next write fails.
  const flush = (): void => {
    const part = Buffer.from(waiting);
    for (let written = 0; written < part.length; ) written += writeSync(handle, part, written);
    bytes += part.length;
    waiting = '';
  };
  try {
    for (const piece of pieces) {
      waiting += piece;
      if (waiting.length >= 1 << 16) flush();
    }
    flush();
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
  return bytes;
}

function diskFailure(error: unknown): Failure {
  if (error instanceof Failure) return error;
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code === 'ENOSPC' || code === 'EDQUOT' || code === 'EFBIG') {
    return new Failure(
      'store-full',
      phrase`The disk is full. The half-written export was taken away; make room and try again.`,
      ['to'],
    );
  }
  return new Failure(
    'store-missing',
    phrase`The export could not be written there: the folder is missing or protected.`,
    ['to'],
  );
}

/** The number of the schema's last migration, as the file itself has it. */
export function schemaOf(kitchen: Kitchen): number {
  return Number(kitchen.db.pragma('user_version', { simple: true }));
}

/** Writes all files of an export; photos come last but their description, and are counted while they are copied. */
function writeAll(kitchen: Kitchen, to: string, watch: Watch): ExportedFile[] {
  const files: ExportedFile[] = [];
  const counts = new Map(
    carriedTables.map((table) => [
      table,
      kitchen.read.one<{ n: number }>(`SELECT count(*) AS n FROM ${table}`)?.n ?? 0,
    ]),
  );
  const rows = [...counts.values()].reduce((sum, count) => sum + count, 0);
  const photos = photoFilesOf(kitchen.read, kitchen.file);
  // A kilobyte of a photo is copied about as fast as a row is written.
  const total = 2 * rows + Math.ceil(photos.reduce((sum, { bytes }) => sum + bytes, 0) / 1000);
  let done = 0;
  function* rowsOf(table: TableName): Generator<Record<string, Value>> {
    const statement = kitchen.db.prepare(`SELECT ${columnNames(table).join(', ')} FROM ${table} ORDER BY id`);
    for (const row of statement.iterate() as IterableIterator<Record<string, Value>>) {
      if (done % 2000 === 0) {
        watch.assertGoing();
        watch.progress(done, total);
      }
      done += 1;
      yield row;
    }
  }
  function* csvOf(table: TableName): Generator<string> {
    const names = columnNames(table);
    yield csvText([names]);
    for (const row of rowsOf(table)) yield csvText([names.map((name) => row[name] ?? null)]);
  }
  const add = (name: string, held: number, pieces: Iterable<string>) => {
    files.push({ name, rows: held, bytes: writePieces(join(to, name), pieces) });
  };
  const name = kitchen.read.one<{ name: string }>('SELECT name FROM kitchens')?.name ?? '';
  const written = carriedTables.filter((table) => (counts.get(table) ?? 0) > 0);
  for (const table of written) add(`${table}.csv`, counts.get(table) ?? 0, csvOf(table));
  add('kitchen.json', rows, carriedText({ from: name, holds: 'kitchen', schema: schemaOf(kitchen) }, rowsOf));
  const tell = nowAndThen((work) => watch.progress(2 * rows + Math.floor(work.done_bytes / 1000), total, work));
  const copied = copyPhotos(kitchen.file, to, photos, (work) => {
    watch.assertGoing();
    tell(work);
  });
  if ((counts.get('photos') ?? 0) > 0) files.push({ name: exportedPhotos, ...copied });
  add('csv-metadata.json', written.length, [`${JSON.stringify(csvMetadata(kitchen.read, name, written), null, 2)}\n`]);
  return files;
}

/**
 * Writes everything a kitchen holds into a new folder: a CSV for each table, their description, and one JSON that another kitchen can
 * take in. History and bin stay at home.
 *
 * The folder gets its name only when it is whole; rows are read inside one transaction, so that all files are of one moment.
 *
 * @param to the new folder; by default beside the kitchen in `exports/`
 * @throws Failure `refused` when it exists, `store-full`, `store-missing`, `stopped`
 */
export function writeExport(
  kitchen: Kitchen,
  to: string | undefined,
  watch: Watch,
): { folder: string; files: ExportedFile[] } {
  const folder = placeOf(kitchen, to);
  if (existsSync(folder))
    throw new Failure('refused', phrase`There is a folder of this name already; an export never overwrites.`, ['to']);
  const unfinished = `${folder}.unfinished`;
  let files: ExportedFile[] = [];
  let made: string[] = [];
  try {
    rmSync(unfinished, { recursive: true, force: true });
    made = makeFolder(unfinished);
    files = kitchen.db.transaction(() => writeAll(kitchen, unfinished, watch))();
    renameSync(unfinished, folder);
  } catch (error) {
    // A name that no disk takes was not made, and asking to remove it would be the next error.
    if (existsSync(unfinished)) rmSync(unfinished, { recursive: true, force: true });
    unmakeFolders(made);
    throw diskFailure(error);
  }
  return { folder, files };
}
