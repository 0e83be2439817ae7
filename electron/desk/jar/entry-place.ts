import { hoursBetween } from '#core/trial/moment.ts';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { findJar, type Jar } from '#store/rows/jars.ts';
import { storedMoment } from '#store/stored-moment.ts';
import { found } from '../found.ts';
import { momentWords } from '../tongue/moment-words.ts';

/** Where an entry belongs: its columns, and the words for it. */
export interface EntryPlace {
  readonly columns: { jar_id: string | null; base_id: string | null };
  readonly words: string;
  readonly jar: Jar | null;
}

/**
 * The jar or base that an entry belongs to; an entry lies in its lifetime.
 *
 * @throws Failure `not-found`, or `refused` when it lies before the jar was started or the base was made
 */
export function entryPlace(
  kitchen: Kitchen,
  input: { jar?: string | undefined; base?: string | undefined },
  at: string,
): EntryPlace {
  if (input.jar !== undefined) {
    const jar = found(findJar(kitchen.read, input.jar), 'jar', 'jar');
    if (jar.startedAt === null) {
      throw new Failure('refused', phrase`Jar ${jar.label} has not been started; start it first.`, ['jar']);
    }
    if (hoursBetween(jar.startedAt, at) < 0) {
      throw new Failure(
        'refused',
        phrase`This lies before jar ${jar.label} was started (${momentWords(jar.startedAt)}).`,
        ['at'],
      );
    }
    return { columns: { jar_id: jar.id, base_id: null }, words: phrase`jar ${jar.label}`, jar };
  }
  const base = found(kitchen.read.row('bases', input.base ?? ''), 'base', 'base');
  if (at < base.made_at)
    throw new Failure('refused', phrase`This lies before ${base.name} was made (${momentWords(base.made_at)}).`, [
      'at',
    ]);
  return { columns: { jar_id: null, base_id: base.id }, words: phrase`base ${base.name}`, jar: null };
}

/** Clocks and zones may differ by a day; nobody has looked at a jar next week. */
export function isStillToCome(at: string, now: Date): boolean {
  return hoursBetween(now.toISOString(), at) > 24;
}

/**
 * The moment that was given, or now.
 *
 * @throws Failure `refused` when it is still to come: Today would ask for no look until then
 */
export function entryTime(kitchen: Kitchen, at: string | undefined): string {
  if (at === undefined) return kitchen.now().toISOString();
  if (isStillToCome(at, kitchen.now())) {
    throw new Failure('refused', phrase`This moment is still to come; write down what has been.`, ['at']);
  }
  return storedMoment(at);
}
