import type { Factor } from '#core/trial/factor.ts';
import type { Calendar } from '#core/trial/plan-input.ts';

export const words = {
  trials: 'Trials',
  jars: 'The jars',
  jarTable: 'The jars as a table',
  held: 'Held equal',
  findings: 'What the panel found',
  noTasting: 'No tasting of this trial is closed yet. Findings appear once the codes are revealed.',
  noScores: 'A tasting is closed, but it holds no scores.',
  level: 'Level',
  nothingAdded: 'nothing added',
  missing: (count: number) =>
    `${count} ${count === 1 ? 'score is' : 'scores are'} missing; they are left out, not counted as zero.`,
} as const;

/** What the horizontal axis of a factor chart measures. */
export const axisWords: Readonly<Record<Factor, string>> = {
  fruit: 'fruit',
  amount: 'added to each jar (g)',
  days: 'days in the jar',
  state: 'fresh or frozen',
  cover: 'cover',
  temperature: 'temperature (°C)',
  formula: 'formula',
};

export const calendarWords: Readonly<Record<Calendar, string>> = {
  'staggered-start': 'started one after the other, pulled together',
  'staggered-pull': 'started together, pulled one after the other',
};
