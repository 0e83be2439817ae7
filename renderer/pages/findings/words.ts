import type { Factor } from '#core/trial/factor.ts';

export const words = {
  findings: 'What the panel found',
  noTasting: 'No tasting of this trial is closed yet. Findings appear once the codes are revealed.',
  noScores: 'A tasting is closed, but it holds no scores.',
  level: 'Level',
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
