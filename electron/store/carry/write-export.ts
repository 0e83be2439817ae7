import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync, writeSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { phrase } from '#core/words/phrase.ts';
import { csvText } from '#shared/csv-text.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '../kitchen.ts';
import type { Value } from '../statements.ts';
import { columnNames, type Row, type TableName } from '../tables.ts';
import { carriedTables, carriedText } from './carried-file.ts';
import { exportPhotos } from './carried-pictures.ts';
import { csvMetadata } from './csv-metadata.ts';

export interface ExportedFile {
  readonly name: string;
  readonly rows: number;
  readonly bytes: number;
}

interface Watch {
  progress(done: number, total: number): void;
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
  try {
    for (const piece of pieces) {
      waiting += piece;
      if (waiting.length < 1 << 16) continue;
      bytes += writeSync(handle, waiting);
      waiting = '';
    }
    bytes += writeSync(handle, waiting);
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
  const files: ExportedFile[] = [];
  const counts = new Map(
    carriedTables.map((table) => [
      table,
      kitchen.read.one<{ n: number }>(`SELECT count(*) AS n FROM ${table}`)?.n ?? 0,
    ]),
  );
  const total = 2 * [...counts.values()].reduce((sum, count) => sum + count, 0);
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
  const add = (name: string, rows: number, pieces: Iterable<string>) => {
    files.push({ name, rows, bytes: writePieces(join(unfinished, name), pieces) });
  };
  try {
    rmSync(unfinished, { recursive: true, force: true });
    mkdirSync(unfinished, { recursive: true });
    kitchen.db.transaction(() => {
      const name = kitchen.read.one<{ name: string }>('SELECT name FROM kitchens')?.name ?? '';
      const written = carriedTables.filter((table) => (counts.get(table) ?? 0) > 0);
      for (const table of written) add(`${table}.csv`, counts.get(table) ?? 0, csvOf(table));
      const about = { from: name, holds: 'kitchen', schema: schemaOf(kitchen) } as const;
      add('kitchen.json', total / 2, carriedText(about, rowsOf));
      const photos = kitchen.read.all<Row<'photos'>>('SELECT * FROM photos ORDER BY id');
      if (photos.length > 0)
        files.push({ name: 'photos', ...exportPhotos(kitchen.file, unfinished, photos, () => watch.assertGoing()) });
      add('csv-metadata.json', written.length, [
        `${JSON.stringify(csvMetadata(kitchen.read, name, written), null, 2)}\n`,
      ]);
    })();
    renameSync(unfinished, folder);
  } catch (error) {
    // A name that no disk takes was not made, and asking to remove it would be the next error.
    if (existsSync(unfinished)) rmSync(unfinished, { recursive: true, force: true });
    throw diskFailure(error);
  }
  return { folder, files };
}
