import { existsSync, renameSync, rmSync } from 'node:fs';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { assertWhole } from './keeping/assert-whole.ts';
import type { Migration } from './migrations/migration.ts';
import type { Sqlite } from './sqlite-driver.ts';

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
    throw new Failure('refused', phrase`A copy of this kitchen of the same moment exists already; try again.`);
  // Two programs may start at once, and one may end half way: only a whole copy gets the name.
  const unfinished = `${copy}.${process.pid}.unfinished`;
  try {
    await db.backup(unfinished);
    assertWhole(
      unfinished,
      phrase`The copy made before bringing this kitchen up to date is not whole. Nothing was changed.`,
    );
    renameSync(unfinished, copy);
  } finally {
    for (const left of [unfinished, `${unfinished}-journal`]) if (existsSync(left)) rmSync(left);
  }
}

/** A migration stands in history, and undo stops at it: the rows before it had another form. */
function noteMigration(db: Sqlite, migration: Migration, now: Date): void {
  db.prepare(
    "INSERT INTO steps (at, request, summary, kind, fixed_because) VALUES (?, 'kitchen:migrate', ?, 'do', ?)",
  ).run(
    now.toISOString(),
    phrase`Bring the kitchen up to date: ${migration.title}`,
    phrase`the program brought the kitchen up to date, and what is older has another form. The copy made before stands beside the kitchen.`,
  );
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
      if (from > 0) noteMigration(db, migration, now);
      db.pragma(`user_version = ${migration.number}`);
      db.pragma(`application_id = ${options.applicationId}`);
    }).immediate();
  }
}
