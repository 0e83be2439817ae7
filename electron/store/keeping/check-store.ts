import { phrase } from '#core/words/phrase.ts';
import type { Kitchen } from '../kitchen.ts';
import { commitmentOf, entryHash, firstHash, type Step, type StoredChange } from '../log/change-log.ts';
import { checkErasures } from '../log/check-erasures.ts';
import { rowsAgainstLog } from '../log/rows-against-log.ts';
import { photoProblems } from '../rows/photos.ts';
import { sqliteFailure } from '../sqlite-failure.ts';
import { tableNames } from '../tables.ts';

type Entry = StoredChange & Omit<Step, 'id' | 'summary' | 'fixed_because'>;

function integrityProblems({ db }: Kitchen): string[] {
  const found = db.pragma('integrity_check') as { integrity_check: string }[];
  return found
    .filter(({ integrity_check: said }) => said !== 'ok')
    .map((row) => phrase`SQLite reports: ${row.integrity_check}`);
}

function orphanProblems({ db }: Kitchen): string[] {
  const orphans = db.pragma('foreign_key_check') as { table: string; parent: string }[];
  return orphans.map(({ table, parent }) => phrase`A row of ${table} refers to a missing row of ${parent}.`);
}

function chainProblems({ db, read }: Kitchen): string[] {
  const sealed = read.one<{ broken_at: number | null }>('SELECT broken_at FROM seals ORDER BY id LIMIT 1');
  const problems =
    sealed?.broken_at == null
      ? []
      : [
          phrase`The change log was broken at entry ${sealed.broken_at} already before the kitchen was brought up to date.`,
        ];
  let previous = firstHash;
  const entries = db
    .prepare(
      'SELECT s.at, s.request, s.kind, s.target, c.* FROM changes AS c LEFT JOIN steps AS s ON s.id = c.step_id ORDER BY c.id',
    )
    .iterate() as IterableIterator<Entry>;
  for (const entry of entries) {
    const commitment = entry.commitment ?? commitmentOf(entry.salt ?? '', entry.before, entry.after);
    const holds =
      entry.request !== null &&
      entry.previous_hash === previous &&
      entryHash(entry, { ...entry, id: entry.step_id }, commitment) === entry.hash;
    if (!holds) return [...problems, phrase`The change log is broken at entry ${entry.id} (${entry.table_name}).`];
    previous = entry.hash;
  }
  return problems;
}

function countProblems({ read }: Kitchen): string[] {
  const kept = read.all<{ table_name: string; total: number; of_sample: number }>('SELECT * FROM row_counts');
  return kept.flatMap(({ table_name, total, of_sample }) => {
    const real = read.one<{ n: number; s: number }>(
      `SELECT count(*) AS n, (SELECT count(*) FROM ${table_name} WHERE is_sample = 1) AS s FROM ${table_name}`,
    );
    return real?.n === total && real.s === of_sample
      ? []
      : [phrase`The number of rows of ${table_name} is noted as ${total}, but there are ${real?.n ?? 0}.`];
  });
}

function tastingCountProblems({ read }: Kitchen): string[] {
  const wrong = read.all<{ id: string }>(
    `SELECT t.id FROM tastings AS t LEFT JOIN tasting_counts AS n ON n.tasting_id = t.id
     WHERE (SELECT count(*) FROM scores WHERE tasting_id = t.id) IS NOT n.scores
     OR (SELECT count(*) FROM servings WHERE tasting_id = t.id) IS NOT n.servings
     OR (SELECT count(DISTINCT taster_id) FROM servings WHERE tasting_id = t.id) IS NOT n.tasters`,
  );
  return wrong.map(({ id }) => phrase`The numbers noted of a tasting (${id}) are not those of its rows.`);
}

function tasterCountProblems({ read }: Kitchen): string[] {
  const wrong = read.all<{ id: string }>(
    `SELECT t.id FROM tasters AS t LEFT JOIN taster_counts AS n ON n.taster_id = t.id
     WHERE (SELECT count(DISTINCT tasting_id) FROM servings WHERE taster_id = t.id) <> coalesce(n.tastings, 0)`,
  );
  return wrong.map(({ id }) => phrase`The number of tastings noted of a taster (${id}) is not that of its rows.`);
}

/**
 * Looks through the whole kitchen, as it is at one moment: SQLite's own checks, the change log's chain, what was erased, each row
 * against the log, and the counts. A part that cannot be read at all is a problem too, and the rest is looked at still.
 */
export function checkStore(kitchen: Kitchen, tick: (done: number, total: number) => void): string[] {
  const parts = [
    integrityProblems,
    orphanProblems,
    chainProblems,
    checkErasures,
    countProblems,
    tastingCountProblems,
    tasterCountProblems,
    photoProblems,
    ...tableNames.map((table) => (from: Kitchen) => rowsAgainstLog(from, table)),
  ];
  const problems: string[] = [];
  const look = (part: (from: Kitchen) => string[]): string[] => {
    try {
      return part(kitchen);
    } catch (error) {
      const known = sqliteFailure(error);
      if (known === error) throw error;
      return [phrase`A part of the file could not be read: ${error instanceof Error ? error.message : String(error)}.`];
    }
  };
  // One read transaction: what others write meanwhile is not half seen. Rolled back, since a damaged file may refuse even an empty commit.
  kitchen.db.exec('BEGIN');
  try {
    parts.forEach((part, position) => {
      problems.push(...look(part));
      tick(position + 1, parts.length);
    });
  } finally {
    if (kitchen.db.inTransaction) kitchen.db.exec('ROLLBACK');
  }
  return [...new Set(problems)];
}
