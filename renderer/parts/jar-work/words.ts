import type { sightingKinds } from '#shared/contract/jars.ts';

export type JarAct = 'start' | 'pull' | 'strain';

export const actWords: Readonly<
  Record<JarAct, { one: string; all: (count: number) => string; done: (jars: string) => string }>
> = {
  start: { one: 'Start', all: (count) => `Start all ${count}`, done: (jars) => `Started ${jars}.` },
  pull: { one: 'Pull', all: (count) => `Pull all ${count}`, done: (jars) => `Pulled ${jars}.` },
  strain: { one: 'Strain', all: (count) => `Strain all ${count}`, done: (jars) => `Strained ${jars}.` },
};

export const words = {
  discard: 'Discard…',
  discardTitle: (label: string) => `Discard jar ${label}`,
  reason: 'Why?',
  reasonHint: 'It stays in the trial’s history, and out of tastings.',
  reasons: ['smells off', 'broken glass', 'mixed up', 'spilled'],
  discardIt: 'Discard it',
  discarded: (label: string) => `Jar ${label} is discarded.`,
  reading: 'Reading',
  readingHint: '4.2 brix, pH 3.4, 21 c',
  readBack: 'Understood:',
  log: 'Log it',
  logged: (label: string) => `Logged a reading of jar ${label}.`,
  seen: 'What do you see?',
  seenNote: 'In your own words',
  noteIt: 'Note it',
  noted: (label: string) => `Noted for jar ${label}.`,
  mould: 'Mould: discard the jar',
  mouldLine: 'Anything fuzzy or coloured on top: throw the whole jar away, also what looks clean below.',
  moulded: (label: string) => `Mould noted: jar ${label} is discarded.`,
} as const;

/** Sightings to tap, in the order they mostly come. */
export const sightingWords: Readonly<Record<(typeof sightingKinds)[number], string>> = {
  'first-bubbles': 'first bubbles',
  'steady-bubbles': 'steady bubbles',
  'bubbles-slowing': 'bubbles slowing',
  froth: 'froth',
  'fruit-risen': 'fruit risen',
  'fruit-sunk': 'fruit sunk',
  'colour-taken': 'colour taken on',
  'colour-fading': 'fruit paler',
  cloudy: 'cloudy',
  clear: 'clear',
  film: 'a film on top',
  smell: 'a new smell',
  mould: 'mould',
  other: 'other',
};
