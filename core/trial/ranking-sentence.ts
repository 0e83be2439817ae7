import type { RankingAnalysis } from '#core/panel/analyse-ranking.ts';
import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Factor } from './factor.ts';
import { oftenWords, surenessOf } from './finding-sureness.ts';
import { capitalised } from './finding-words.ts';

/**
 * What a ranking says, in a sentence a cook understands.
 *
 * Method: the sample with the lowest rank sum leads; it is said to stand apart from the last only when their rank sums differ by the
 * critical difference. Leaves out p-values, and never says that nothing differs.
 *
 * @param tasters how many ranked every sample
 * @returns the sentence, its doubt included
 */
export function rankingSentence(analysis: RankingAnalysis, tasters: number): string {
  const ranked = [...analysis.samples].sort((a, b) => a.rankSum - b.rankSum);
  const [first] = ranked;
  const last = ranked.at(-1);
  if (analysis.ranks === null || first === undefined || last === undefined) {
    const needs = analysis.reasons[0]?.needs ?? phrase`more rankings`;
    return phrase`The rankings can’t be told apart yet; what is needed: ${needs}.`;
  }
  const average = (sum: number) => fixed(sum / tasters, 1);
  const places = phrase`“${first.sample}” came first (place ${average(first.rankSum)} on average) and “${last.sample}” last (${average(last.rankSum)})`;
  const { criticalDifference: critical } = analysis;
  const gap = last.rankSum - first.rankSum;
  if (critical !== null && gap >= critical) {
    const behind = ranked
      .filter(({ rankSum }) => rankSum - first.rankSum >= critical)
      .map(({ sample }) => `“${sample}”`);
    return phrase`${places}; by ${tasters} rankings “${first.sample}” stands clear of ${behind.join(', ')}.`;
  }
  const needed =
    critical === null ? '' : phrase` (their places would have to lie ${fixed(critical / tasters, 1)} apart)`;
  return phrase`${places}, but ${tasters} rankings are not enough to set them apart${needed}.`;
}

const furtherAlong: Readonly<Record<Factor, string>> = {
  get fruit() {
    return phrase`further levels`;
  },
  get amount() {
    return phrase`larger amounts`;
  },
  get days() {
    return phrase`more days`;
  },
  get state() {
    return phrase`further levels`;
  },
  get cover() {
    return phrase`further levels`;
  },
  get temperature() {
    return phrase`warmer jars`;
  },
  get formula() {
    return phrase`further levels`;
  },
};

/**
 * Whether places move with the order of the levels, in a sentence; null where Page's test was not made.
 *
 * Method: both directions are looked at, so the smaller chance counts twice.
 */
export function orderedPlacesSentence({ page }: RankingAnalysis, factor: Factor): string | null {
  if (page === null) return null;
  const chance = Math.min(1, 2 * Math.min(page.better, page.worse));
  const what = capitalised(furtherAlong[factor]);
  const sure = surenessOf(chance);
  if (sure === 'unclear' || sure === 'unknown') {
    return phrase`${what} were placed neither steadily better nor steadily worse, as far as this panel can tell.`;
  }
  const way = page.better < page.worse ? phrase`better` : phrase`worse`;
  return phrase`${what} were placed steadily ${way}: luck alone sets so steady an order in ${oftenWords[sure]} such tastings.`;
}
