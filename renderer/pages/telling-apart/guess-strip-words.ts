import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { luckWords } from './design-words.ts';
import type { Method } from './words.ts';

type Result = NonNullable<ValueOf<'discriminations:open'>['result']>;

export interface StripWords {
  readonly count: string;
  readonly luck: string;
  readonly beyond: string;
  /** All of it in one sentence, for those who listen. */
  readonly whole: string;
}

/** What the strip's marks say. */
export function stripWords(
  { correct, trials, expectedByGuessing, minimumCorrect }: Result,
  method: Method,
): StripWords {
  const counted =
    method === 'paired-two-sided'
      ? phrase`for the same jar`
      : method === 'paired'
        ? phrase`as expected`
        : phrase`right`;
  const count = `${correct} ${counted}`;
  const luck = phrase`by luck: about ${luckWords(expectedByGuessing)}`;
  const beyond =
    minimumCorrect === null
      ? phrase`more than luck: not to be had with ${trials}`
      : minimumCorrect === trials
        ? phrase`more than luck: all ${trials}`
        : phrase`more than luck: ${minimumCorrect} or more`;
  return { count, luck, beyond, whole: phrase`Of ${trials}: ${count}; ${luck}; ${beyond}.` };
}

/** Where a count stands on the strip, in percent of its width: 0 and all of them keep clear of the ends. */
export function stripPlace(count: number, trials: number): number {
  return 3 + (94 * count) / trials;
}

/** Toward which side a mark's words run, so that they stay inside the strip. */
export function stripAnchor(place: number): 'start' | 'middle' | 'end' {
  if (place < 25) return 'start';
  return place > 75 ? 'end' : 'middle';
}
