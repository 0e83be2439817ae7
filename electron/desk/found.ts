import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';

/** Passes what was found; an absent one settles as `not-found` at the field that named it. */
export function found<Value>(value: Value | undefined, what: string, field: string): Value {
  if (value === undefined) throw new Failure('not-found', phrase`There is no such ${what} in this kitchen.`, [field]);
  return value;
}
