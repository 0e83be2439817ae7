import { createHash } from 'node:crypto';
import type { Sqlite } from '../sqlite-driver.ts';
import { commitmentOf, entryHash, firstHash, newSalt, type Step, type StoredChange } from './change-log.ts';

type Entry = Omit<StoredChange, 'salt' | 'commitment'>;

/** How an entry was hashed before schema 40: over its rows themselves, which could then never be forgotten. */
function formerHash(entry: Omit<Entry, 'hash'>, step: Step): string {
  return createHash('sha256')
    .update(
      JSON.stringify([
        entry.previous_hash,
        entry.id,
        [step.id, step.at, step.request, step.kind, step.target],
        entry.table_name,
        entry.row_id,
        entry.before,
        entry.after,
      ]),
    )
    .digest('hex');
}

/**
 * Hashes a log by the present rule, once, and seals what the former chain said: where it ended, and where it was broken.
 * A log that did not hold before is not made to look as if it had.
 */
export function rechain(db: Sqlite): void {
  const steps = new Map((db.prepare('SELECT * FROM steps').all() as Step[]).map((step) => [step.id, step]));
  const next = db.prepare<[number]>('SELECT * FROM changes WHERE id > ? ORDER BY id LIMIT 500');
  const update = db.prepare('UPDATE changes SET salt = ?, previous_hash = ?, hash = ? WHERE id = ?');
  let brokenAt: number | null = null;
  let lastId = 0;
  let former = firstHash;
  let previous = firstHash;
  for (;;) {
    const page = next.all(lastId) as Entry[];
    if (page.length === 0) break;
    for (const { hash, ...entry } of page) {
      const step = steps.get(entry.step_id);
      const holds = step !== undefined && entry.previous_hash === former && formerHash(entry, step) === hash;
      if (!holds && brokenAt === null) brokenAt = entry.id;
      former = hash;
      lastId = entry.id;
      const salt = newSalt();
      const commitment = commitmentOf(salt, entry.before, entry.after);
      // Without its step an entry can't be hashed; the check names it.
      const present = step === undefined ? hash : entryHash({ ...entry, previous_hash: previous }, step, commitment);
      update.run(salt, previous, present, entry.id);
      previous = present;
    }
  }
  db.prepare('INSERT INTO seals (last_entry, last_hash, broken_at) VALUES (?, ?, ?)').run(lastId, former, brokenAt);
}
