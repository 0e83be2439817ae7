import type { Calendar } from '#core/trial/plan-input.ts';

export const words = {
  jars: 'The jars',
  jarTable: 'The jars as a table',
  held: 'Held equal',
  level: 'Level',
  nothingAdded: 'nothing added',
} as const;

export const calendarWords: Readonly<Record<Calendar, string>> = {
  'staggered-start': 'started one after the other, pulled together',
  'staggered-pull': 'started together, pulled one after the other',
};
