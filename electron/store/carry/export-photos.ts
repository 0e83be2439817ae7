import { copyFileSync, mkdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { CountedWork } from '#shared/carriage.ts';
import { photoFileName, photoFolder } from '../photo-files.ts';
import type { Reader } from '../reader.ts';
import type { Row } from '../tables.ts';

/** The folder of an export's photos, beside its rows. */
export const exportedPhotos = 'photos';

export interface PhotoFile {
  readonly name: string;
  readonly bytes: number;
}

/** The photos' files that are there to be copied, each once. Missing ones stay missing: `store:check` names them. */
export function photoFilesOf(read: Reader, kitchen: string): PhotoFile[] {
  const photos = read.all<Pick<Row<'photos'>, 'sha256' | 'format'>>('SELECT sha256, format FROM photos ORDER BY id');
  return [...new Set(photos.map(photoFileName))].flatMap((name) => {
    const found = statSync(join(photoFolder(kitchen), name), { throwIfNoEntry: false });
    return found?.isFile() === true ? [{ name, bytes: found.size }] : [];
  });
}

/** How often it is told how far the copying is: the eye needs no more. */
const toldEvery_ms = 50;

/**
 * Copies photos' files into an export's folder, one after the other.
 *
 * @param told asked between two files; throws where the copying is to stop
 */
export function copyPhotos(
  kitchen: string,
  to: string,
  files: readonly PhotoFile[],
  told: (work: CountedWork) => void,
): { rows: number; bytes: number } {
  const total_bytes = files.reduce((sum, { bytes }) => sum + bytes, 0);
  if (files.length > 0) mkdirSync(join(to, exportedPhotos));
  let rows = 0;
  let copied = 0;
  let done_bytes = 0;
  for (const [done, { name, bytes }] of files.entries()) {
    told({ what: 'photos', done, total: files.length, done_bytes, total_bytes });
    const target = join(to, exportedPhotos, name);
    try {
      copyFileSync(join(photoFolder(kitchen), name), target);
      copied += statSync(target).size;
      rows += 1;
    } catch (error) {
      // Taken away since it was counted: it stays missing, like those that were missing before.
      if (!(error instanceof Error && 'code' in error && error.code === 'ENOENT')) throw error;
      rmSync(target, { force: true });
    }
    done_bytes += bytes;
  }
  told({ what: 'photos', done: files.length, total: files.length, done_bytes, total_bytes });
  return { rows, bytes: copied };
}

/** Lets word through at most every so often, and always the last. */
export function nowAndThen(tell: (work: CountedWork) => void): (work: CountedWork) => void {
  let last = Number.NEGATIVE_INFINITY;
  return (work) => {
    const now = performance.now();
    if (work.done < work.total && now - last < toldEvery_ms) return;
    last = now;
    tell(work);
  };
}
