import type { ValueOf } from '#shared/contract/all-requests.ts';

export type Found = ValueOf<'kitchen:find'>['found'][number];

export const finderWords = {
  open: 'Find',
  title: 'Find in this kitchen',
  label: 'A jar, trial, taster, recipe, or something to do',
  results: 'What was found',
  none: 'Nothing answers to these words.',
  more: (count: number) => `and ${count} more: write another word`,
  count: (count: number) => (count === 1 ? 'one found' : `${count} found`),
  failed: 'The kitchen could not be asked.',
} as const;

export const kindWords: Readonly<Record<Found['kind'], string>> = {
  trial: 'Trial',
  jar: 'Jar',
  tasting: 'Tasting',
  taster: 'Taster',
  'house-recipe': 'House recipe',
  base: 'Base',
  culture: 'Culture',
  ingredient: 'Pantry',
};

const places: Readonly<Record<Found['kind'], (id: string) => string>> = {
  trial: (id) => `/trials/${id}`,
  jar: (id) => `/jars/${id}`,
  tasting: (id) => `/tastings/${id}`,
  taster: () => '/tasters',
  'house-recipe': (id) => `/house-recipes/${id}`,
  base: () => '/bases',
  culture: () => '/bases',
  ingredient: () => '/pantry',
};

/** Where a found thing is shown. */
export function placeOf({ kind, id }: Found): string {
  return places[kind](id ?? '');
}

export interface Act {
  readonly name: string;
  readonly to: string;
  /** Other words it answers to. */
  readonly also: string;
}

/** Things to do, found by their words. */
export const acts: readonly Act[] = [
  { name: 'Plan a trial', to: '/trials/new', also: 'new start question jars' },
  { name: 'Look at today', to: '/', also: 'due stir pull' },
  { name: 'Look at the sips', to: '/sips', also: 'own taste' },
  { name: 'Look at bases and cultures', to: '/bases', also: 'first ferment strain feed' },
  { name: 'Look at the pantry', to: '/pantry', also: 'ingredients prices fruit' },
  { name: 'Look at tasters', to: '/tasters', also: 'panel people' },
  { name: 'Back up the kitchen', to: '/data', also: 'data copy check history bin export' },
  { name: 'Take in a file', to: '/data', also: 'import trial kitchen data' },
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
