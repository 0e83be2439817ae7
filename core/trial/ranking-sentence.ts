import type { RankingAnalysis } from '#core/panel/analyse-ranking.ts';

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
    const needs = analysis.reasons[0]?.needs ?? 'more rankings';
    return `The rankings can’t be told apart yet; what is needed: ${needs}.`;
  }
  const average = (sum: number) => (sum / tasters).toFixed(1);
  const places = `“${first.sample}” came first (place ${average(first.rankSum)} on average) and “${last.sample}” last (${average(last.rankSum)})`;
  const { criticalDifference: critical } = analysis;
  const gap = last.rankSum - first.rankSum;
  if (critical !== null && gap >= critical) {
    const behind = ranked
      .filter(({ rankSum }) => rankSum - first.rankSum >= critical)
      .map(({ sample }) => `“${sample}”`);
    return `${places}; by ${tasters} rankings “${first.sample}” stands clear of ${behind.join(', ')}.`;
  }
  const needed = critical === null ? '' : ` (their places would have to lie ${(critical / tasters).toFixed(1)} apart)`;
  return `${places}, but ${tasters} rankings are not enough to set them apart${needed}.`;
}
