import { existsSync, unlinkSync } from 'node:fs';
import { Failure } from '#shared/failure.ts';
import type { Migration } from './migrations/migration.ts';
import { type Sqlite, sqliteDriver } from './sqlite-driver.ts';

interface MigrateOptions {
  readonly file: string;
  readonly from: number;
  readonly migrations: readonly Migration[];
  readonly applicationId: number;
  readonly now: Date;
}

/** Copies the kitchen as it is before its schema changes, and opens the copy to see that it is whole. */
async function copyBefore(db: Sqlite, file: string, from: number, now: Date): Promise<void> {
  const copy = `${file}.before-${from}-${now.toISOString().replace(/[:.]/g, '-')}.sidejar`;
  if (existsSync(copy))
    throw new Failure('refused', 'A copy of this kitchen of the same moment exists already; try again.');
  await db.backup(copy);
  const Database = sqliteDriver();
  const check = new Database(copy, { readonly: true });
  try {
    if (check.pragma('integrity_check', { simple: true }) !== 'ok') {
      throw new Failure(
        'store-damaged',
        'The copy made before bringing this kitchen up to date is not whole. Nothing was changed.',
      );
    }
  } catch (error) {
    check.close();
    unlinkSync(copy);
    throw error;
  }
  check.close();
}

/**
 * Brings the schema up to date: each migration and its number in one transaction.
 *
 * An existing kitchen is copied first, beside itself, and the copy is opened and checked.
 */
export async function migrate(db: Sqlite, options: MigrateOptions): Promise<void> {
  const { file, from, migrations, now } = options;
  if (from > 0) await copyBefore(db, file, from, now);
  for (const migration of migrations) {
    if (migration.number <= from) continue;
    db.transaction(() => {
      // Two programs may start on a new file at once: the second finds the work done.
      if (Number(db.pragma('user_version', { simple: true })) >= migration.number) return;
      migration.apply(db);
      db.pragma(`user_version = ${migration.number}`);
      db.pragma(`application_id = ${options.applicationId}`);
    }).immediate();
  }
}
