import type { Calendar } from '#core/trial/plan-input.ts';

export const words = {
  jars: 'The jars',
  jarTable: 'The jars as a table',
  jarWork: 'What to do with each jar',
  held: 'Held equal',
  level: 'Level',
  nothingAdded: 'nothing added',
  jarTitle: (label: string, level: string) => `${label}: ${level}`,
  toStart: (at: string) => `starts ${at}`,
  toPull: (at: string) => `standing, pull ${at}`,
  pulled: (at: string) => `pulled ${at}`,
  strained: (at: string) => `strained ${at}`,
  discarded: (at: string, why: string) => `discarded ${at}${why === '' ? '' : `: ${why}`}`,
  writeDown: 'Write down…',
  writeDownFor: (label: string) => `Write down what jar ${label} shows`,
  notesOf: (label: string, level: string) => `Jar ${label}: ${level}`,
  fillOrder: (order: string) => `Fill the jars in this order, so that first and last pour favour no level: ${order}.`,
  pullDue: (labels: string) => `Pull what is due: ${labels}`,
  course: 'The jars’ course',
  sheets: 'What the jars hold and may become',
  sheetsTable: 'What each level’s jar holds, and the most it may become',
  sheetsNote:
    'Alcohol as if all sugar became alcohol: a bound, not a forecast. Each jar’s own page tells how it is reckoned.',
  notKnown: 'not known',
  cautions: 'The usual cautions',
  printLabels: 'Print labels',
  again: 'Plan again like this',
  gone: {
    title: 'This trial is not here',
    line: 'It was taken out or its planning was undone. What was removed can be brought back under Data.',
    back: 'To the trials',
  },
} as const;

export const calendarWords: Readonly<Record<Calendar, string>> = {
  'staggered-start': 'started one after the other, pulled together',
  'staggered-pull': 'started together, pulled one after the other',
};
