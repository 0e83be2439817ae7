import type { Calendar } from '#core/trial/plan-input.ts';
import { phrase } from '#core/words/phrase.ts';

export const words = {
  jars: phrase`The jars`,
  jarTable: phrase`The jars as a table`,
  jarWork: phrase`What to do with each jar`,
  held: phrase`Held equal`,
  level: phrase`Level`,
  nothingAdded: phrase`nothing added`,
  jarTitle: (label: string, level: string) => `${label}: ${level}`,
  toStart: (at: string) => phrase`starts ${at}`,
  toPull: (at: string) => phrase`standing, pull ${at}`,
  pulled: (at: string) => phrase`pulled ${at}`,
  strained: (at: string) => phrase`strained ${at}`,
  discarded: (at: string, why: string) => phrase`discarded ${at}${why === '' ? '' : `: ${why}`}`,
  writeDown: phrase`Write down…`,
  writeDownFor: (label: string) => phrase`Write down what jar ${label} shows`,
  notesOf: (label: string, level: string) => phrase`Jar ${label}: ${level}`,
  fillOrder: (order: string) =>
    phrase`Fill the jars in this order, so that first and last pour favour no level: ${order}.`,
  pullDue: (labels: string) => phrase`Pull what is due: ${labels}`,
  timeline: phrase`When it was`,
  allLanes: (jars: number) => phrase`Show the lanes of ${jars} jars`,
  course: phrase`The jars’ course`,
  sheets: phrase`What the jars hold and may become`,
  sheetsTable: phrase`What each level’s jar holds, and the most it may become`,
  sheetsNote: phrase`Alcohol as if all sugar became alcohol: a bound, not a forecast. Each jar’s own page tells how it is reckoned.`,
  notKnown: phrase`not known`,
  cautions: phrase`The usual cautions`,
  printLabels: phrase`Print labels`,
  again: phrase`Plan again like this`,
  gone: {
    title: phrase`This trial is not here`,
    line: phrase`It was taken out or its planning was undone. What was removed can be brought back under Data.`,
    back: phrase`To the trials`,
  },
} as const;

export const calendarWords: Readonly<Record<Calendar, string>> = {
  'staggered-start': phrase`started one after the other, pulled together`,
  'staggered-pull': phrase`started together, pulled one after the other`,
};
