import type { Kitchen } from './kitchen.ts';
import { translatingSqlite } from './sqlite-failure.ts';

// A half-made plan or sheet. Not yet anybody's data: it stands outside the change log, so that typing leaves no steps to undo.

/** The draft of that name as it was left, or null. */
export function findDraft(kitchen: Kitchen, name: string): { body: unknown; keptAt: string } | null {
  const row = kitchen.read.one<{ body: string; kept_at: string }>(
    'SELECT body, kept_at FROM drafts WHERE name = ?',
    name,
  );
  return row === undefined ? null : { body: JSON.parse(row.body), keptAt: row.kept_at };
}

/** Keeps a draft under its name; null forgets it. */
export function keepDraft(kitchen: Kitchen, name: string, body: unknown): void {
  kitchen.assertThere();
  translatingSqlite(() => {
    if (body === null) {
      kitchen.db.prepare('DELETE FROM drafts WHERE name = ?').run(name);
      return;
    }
    kitchen.db
      .prepare(
        'INSERT INTO drafts (name, body, kept_at) VALUES (?, ?, ?) ON CONFLICT (name) DO UPDATE SET body = excluded.body, kept_at = excluded.kept_at',
      )
      .run(name, JSON.stringify(body), kitchen.now().toISOString());
  });
}
