import { counting } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';

// How many of something. Each is a phrase of its own, since other languages have more forms than one and many.

/** @param n the count as shown */
export type CountWords = (isOne: boolean, n: string) => string;

const things = {
  answer: (isOne, n) => (isOne ? phrase`${n} answer` : phrase`${n} answers`),
  'closed tasting': (isOne, n) => (isOne ? phrase`${n} closed tasting` : phrase`${n} closed tastings`),
  cup: (isOne, n) => (isOne ? phrase`${n} cup` : phrase`${n} cups`),
  day: (isOne, n) => (isOne ? phrase`${n} day` : phrase`${n} days`),
  file: (isOne, n) => (isOne ? phrase`${n} file` : phrase`${n} files`),
  hour: (isOne, n) => (isOne ? phrase`${n} hour` : phrase`${n} hours`),
  jar: (isOne, n) => (isOne ? phrase`${n} jar` : phrase`${n} jars`),
  minute: (isOne, n) => (isOne ? phrase`${n} minute` : phrase`${n} minutes`),
  place: (isOne, n) => (isOne ? phrase`${n} place` : phrase`${n} places`),
  reading: (isOne, n) => (isOne ? phrase`${n} reading` : phrase`${n} readings`),
  row: (isOne, n) => (isOne ? phrase`${n} row` : phrase`${n} rows`),
  sample: (isOne, n) => (isOne ? phrase`${n} sample` : phrase`${n} samples`),
  score: (isOne, n) => (isOne ? phrase`${n} score` : phrase`${n} scores`),
  sticker: (isOne, n) => (isOne ? phrase`${n} sticker` : phrase`${n} stickers`),
  'sugar reading': (isOne, n) => (isOne ? phrase`${n} sugar reading` : phrase`${n} sugar readings`),
  taster: (isOne, n) => (isOne ? phrase`${n} taster` : phrase`${n} tasters`),
  tasting: (isOne, n) => (isOne ? phrase`${n} tasting` : phrase`${n} tastings`),
  version: (isOne, n) => (isOne ? phrase`${n} version` : phrase`${n} versions`),
} satisfies Readonly<Record<string, CountWords>>;

export type Countable = keyof typeof things;

/** @example counted(3, 'jar') // '3 jars' */
export function counted(count: number, thing: Countable): string {
  return things[thing](count === 1, counting(count));
}
