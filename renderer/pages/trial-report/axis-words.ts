import type { Factor } from '#core/trial/factor.ts';

/** What the horizontal axis of a chart measures, short enough for a small one. */
export const axisWords: Readonly<Record<Factor, string>> = {
  fruit: 'fruit',
  amount: 'added (g)',
  days: 'days',
  state: 'fresh or frozen',
  cover: 'cover',
  temperature: '°C',
  formula: 'formula',
};
