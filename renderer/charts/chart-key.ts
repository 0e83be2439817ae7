import { phrase } from '#core/words/phrase.ts';
import type { FactorChartData } from './factor-chart-data.ts';

/** What a mark of a factor chart means. */
export interface KeyEntry {
  readonly mark: 'score' | 'mean' | 'curve' | 'best' | 'sip';
  readonly words: string;
}

/** The marks that these charts draw, each with its meaning; what none of them draws is left out. */
export function chartKey(charts: readonly FactorChartData[]): KeyEntry[] {
  const entries: (KeyEntry & { readonly isDrawn: boolean })[] = [
    {
      mark: 'score',
      words: phrase`every score, each taster in a lane of their own`,
      isDrawn: charts.some(({ scores }) => scores > 0),
    },
    {
      mark: 'mean',
      words: phrase`mean of a level, with its 95 % interval`,
      isDrawn: charts.some(({ means }) => means.some(({ mean }) => mean !== null)),
    },
    {
      mark: 'curve',
      words: phrase`curve through the levels, with its 95 % band`,
      isDrawn: charts.some((one) => one.hasCurve),
    },
    {
      mark: 'best',
      words: phrase`where the curve of liking is highest, with its 95 % interval`,
      isDrawn: charts.some(({ best }) => best !== null),
    },
    {
      mark: 'sip',
      words: phrase`your own sips, not blind and never counted in the means`,
      isDrawn: charts.some(({ areSipsDrawn }) => areSipsDrawn),
    },
  ];
  return entries.filter(({ isDrawn }) => isDrawn).map(({ mark, words }) => ({ mark, words }));
}

const shapes = {
  score: phrase`Dots`,
  mean: phrase`Diamonds`,
  curve: phrase`Line`,
  best: phrase`Dashed line`,
  sip: phrase`Crosses`,
} as const;

/** The key as one line of text, for pictures. */
export function chartKeyWords(charts: readonly FactorChartData[]): string {
  return chartKey(charts)
    .map(({ mark, words }) => `${shapes[mark]}: ${words}.`)
    .join(' ');
}
