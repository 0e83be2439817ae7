import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { KeptPicture } from '#shared/picture-kind.ts';
import type { Kitchen } from '../kitchen.ts';
import { photoState } from '../photo-files.ts';
import type { Row } from '../tables.ts';

type Photo = ValueOf<'photos:ofJar'>['photos'][number];

function photoOf(kitchen: Kitchen, row: Row<'photos'>): Photo {
  return {
    id: row.id,
    takenAt: row.taken_at,
    sha256: row.sha256,
    format: row.format as KeptPicture,
    width: row.width,
    height: row.height,
    bytes: row.bytes,
    note: row.note,
    file: photoState(kitchen.file, row),
  };
}

/** The photos of one jar or base, the oldest first. */
export function photosOf(kitchen: Kitchen, owner: 'jar_id' | 'base_id', id: string): Photo[] {
  return kitchen.read
    .all<Row<'photos'>>(`SELECT * FROM photos WHERE ${owner} = ? ORDER BY taken_at, id`, id)
    .map((row) => photoOf(kitchen, row));
}

/** The photos of all jars of a trial, the oldest first. */
export function photosOfTrial(kitchen: Kitchen, trial: string): (Photo & { jar: string })[] {
  return kitchen.read
    .all<Row<'photos'>>(
      'SELECT p.* FROM jars AS j JOIN photos AS p ON p.jar_id = j.id WHERE j.trial_id = ? ORDER BY p.taken_at, p.id',
      trial,
    )
    .map((row) => ({ ...photoOf(kitchen, row), jar: row.jar_id ?? '' }));
}

/** What is wrong with the photos' files: their names and sizes are looked at; the bytes are, when one is shown. */
export function photoProblems({ db, file }: Kitchen): string[] {
  const rows = db.prepare('SELECT * FROM photos').iterate() as IterableIterator<Row<'photos'>>;
  const problems: string[] = [];
  for (const row of rows) {
    const state = photoState(file, row);
    if (state === 'missing') problems.push(phrase`The file of a photo of ${row.taken_at} is missing (${row.sha256}).`);
    if (state === 'altered') problems.push(phrase`The file of a photo of ${row.taken_at} was altered (${row.sha256}).`);
  }
  return problems;
}
