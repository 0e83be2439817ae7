import type { Factor } from '#core/trial/factor.ts';
import { phrase } from '#core/words/phrase.ts';

/** What the horizontal axis of a chart measures, short enough for a small one. */
export const axisWords: Readonly<Record<Factor, string>> = {
  fruit: phrase`fruit`,
  amount: phrase`added (g)`,
  days: phrase`days`,
  state: phrase`fresh or frozen`,
  cover: phrase`cover`,
  temperature: phrase`°C`,
  formula: phrase`formula`,
};
