import type { Reader } from './reader.ts';
import type { Sqlite } from './sqlite-driver.ts';
import type { TableName } from './tables.ts';

/** What windows are told after a commit. */
export interface ChangeEvent {
  readonly step: number;
  readonly tables: readonly TableName[];
}

export interface OtherWriters {
  /** Told of our own steps, which are no news. */
  wrote(step: number): void;
  /** What others wrote since the last look; null when nothing. */
  look(): ChangeEvent | null;
}

/**
 * Notices what other programs and windows write to the same file. SQLite's `data_version` changes when, and only when, another
 * connection has committed; which tables it was stands in the change log.
 */
export function watchOthers(db: Sqlite, read: Reader): OtherWriters {
  const newest = () => read.one<{ id: number | null }>('SELECT max(id) AS id FROM steps')?.id ?? 0;
  const versionNow = db.prepare('PRAGMA data_version').pluck();
  let version: unknown = null;
  let seen: number | null = null;
  return {
    wrote(step) {
      // A gap is somebody else's step, which the next look will tell of.
      if (seen !== null && step === seen + 1) seen = step;
    },
    look() {
      const present = versionNow.get();
      if (version === null || seen === null) {
        version = present;
        seen = newest();
        return null;
      }
      if (present === version) return null;
      const before = seen;
      version = present;
      seen = newest();
      // "+": by the new steps; for the tables' order alone SQLite would go through all changes ever.
      const tables = read.all<{ table_name: TableName }>(
        'SELECT DISTINCT +table_name AS table_name FROM changes WHERE step_id > ?',
        before,
      );
      return { step: seen, tables: tables.map(({ table_name }) => table_name) };
    },
  };
}
