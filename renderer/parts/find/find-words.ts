import { factorWords } from '#core/trial/factor.ts';
import { phrase } from '#core/words/phrase.ts';
import { dateWords } from '#renderer/format/moments.ts';
import { ingredientKindWords } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

export type Found = ValueOf<'kitchen:find'>['found'][number];

export const findWords = {
  open: phrase`Find`,
  title: phrase`Find in this kitchen`,
  label: phrase`A jar, trial, taster, recipe, or something to do`,
  results: phrase`What was found`,
  none: phrase`Nothing answers to these words.`,
  more: (count: number) => phrase`and ${count} more: write another word`,
  count: (count: number) => (count === 1 ? phrase`one found` : phrase`${count} found`),
  failed: phrase`The kitchen could not be asked.`,
} as const;

export const kindWords: Readonly<Record<Found['kind'], string>> = {
  trial: phrase`Trial`,
  jar: phrase`Jar`,
  tasting: phrase`Tasting`,
  taster: phrase`Taster`,
  'house-recipe': phrase`House recipe`,
  base: phrase`Base`,
  culture: phrase`Culture`,
  ingredient: phrase`Pantry`,
};

const places: Readonly<Record<Found['kind'], (id: string) => string>> = {
  trial: (id) => `/trials/${id}`,
  jar: (id) => `/jars/${id}`,
  tasting: (id) => `/tastings/${id}`,
  taster: () => '/tasters',
  'house-recipe': (id) => `/house-recipes/${id}`,
  base: (id) => `/bases/${id}`,
  culture: (id) => `/cultures/${id}`,
  ingredient: () => '/pantry',
};

/** Where a found thing is shown. */
export function placeOf({ kind, id }: Found): string {
  return places[kind](id ?? '');
}

/** What is said of a found thing beside its name: days as this window writes them, questions in words. */
export function factsOf({ kind, facts }: Found): string {
  if (kind === 'trial') return Object.entries(factorWords).find(([factor]) => factor === facts)?.[1] ?? facts;
  if (kind === 'ingredient') return Object.entries(ingredientKindWords).find(([own]) => own === facts)?.[1] ?? facts;
  return kind === 'tasting' || kind === 'base' ? dateWords(facts) : facts;
}

export interface Act {
  readonly name: string;
  readonly to: string;
  /** Other words it answers to. */
  readonly also: string;
}

/** Things to do, found by their words. */
export const acts: readonly Act[] = [
  { name: phrase`Plan a trial`, to: '/trials/new', also: phrase`new start question jars` },
  { name: phrase`Look at today`, to: '/', also: phrase`due stir pull` },
  { name: phrase`Look at the sips`, to: '/sips', also: phrase`own taste` },
  { name: phrase`Look at bases and cultures`, to: '/bases', also: phrase`first ferment strain feed` },
  { name: phrase`Look at the pantry`, to: '/pantry', also: phrase`ingredients prices fruit` },
  { name: phrase`Look at tasters`, to: '/tasters', also: phrase`panel people` },
  { name: phrase`Back up the kitchen`, to: '/data', also: phrase`data copy check history bin export` },
  { name: phrase`Take in a file`, to: '/data', also: phrase`import trial kitchen data` },
];

function plain(words: string): string {
  return words.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
}

/** The acts that answer to every word. */
export function actsFor(words: string): Act[] {
  const wanted = plain(words).split(/\s+/).filter(Boolean);
  return wanted.length === 0
    ? [...acts]
    : acts.filter(({ name, also }) => wanted.every((word) => plain(`${name} ${also}`).includes(word)));
}
