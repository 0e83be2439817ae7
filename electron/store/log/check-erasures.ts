import { phrase } from '#core/words/phrase.ts';
import type { Kitchen } from '../kitchen.ts';
import { erasedText } from './change-log.ts';
import { entriesOf } from './entry-ranges.ts';

/** What was erased must be what an erasure, itself in the log, says was erased: no more, and nothing readable left of it. */
export function checkErasures({ db, read }: Kitchen): string[] {
  const declared = new Set(
    read.all<{ entries: string }>('SELECT entries FROM erasures').flatMap(({ entries }) => entriesOf(entries)),
  );
  const problems: string[] = [];
  const erased = db
    .prepare('SELECT id, before, after, salt FROM changes WHERE commitment IS NOT NULL ORDER BY id')
    .iterate() as IterableIterator<{ id: number; before: string | null; after: string | null; salt: string | null }>;
  for (const { id, before, after, salt } of erased) {
    if (!declared.delete(id)) problems.push(phrase`Entry ${id} of the change log is blank, and no erasure says why.`);
    if (salt !== null || [before, after].some((text) => text !== null && text !== erasedText)) {
      problems.push(phrase`Entry ${id} of the change log should be blank, but is not.`);
    }
  }
  for (const id of declared) problems.push(phrase`Entry ${id} of the change log should be blank, but is not.`);
  return problems;
}
