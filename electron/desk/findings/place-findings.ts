import { analyseRanking, type GivenRank, type RankingAnalysis } from '#core/panel/analyse-ranking.ts';
import { midranks } from '#core/panel/ranks/rank-blocks.ts';
import { fewTasters, oneJarDoubt } from '#core/trial/finding-doubts.ts';
import { orderedPlacesSentence, rankingSentence } from '#core/trial/ranking-sentence.ts';
import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type GivenPlace, revealedPlaces } from '#store/log/revealed-answers.ts';
import { countedScores, setAsidesOf } from '#store/rows/set-asides.ts';
import { findTrial, type TrialWhole } from '#store/rows/trials.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { levelNumbers } from './level-numbers.ts';

type Ranking = ValueOf<'findings:places'>['rankings'][number];

const alpha = 0.05;

/** Each taster's mean of what they gave a level, over its jars and repeats; means equal but for rounding are ties. */
function byLevel(answers: readonly { taster: string; sample: string; value: number }[]): GivenRank[] {
  const cells = Map.groupBy(answers, ({ taster, sample }) => JSON.stringify([taster, sample]));
  return [...cells.values()].flatMap((cell) => {
    const [first] = cell;
    if (first === undefined) return [];
    const mean = cell.reduce((sum, { value }) => sum + value, 0) / cell.length;
    return [{ taster: first.taster, sample: first.sample, rank: Number(mean.toPrecision(12)) }];
  });
}

function rankSumsOf(analysis: RankingAnalysis) {
  const { samples, ranks, criticalDifference, criticalIsExact, page } = analysis;
  return { samples: [...samples], test: ranks, criticalDifference, criticalIsExact, page };
}

/** How often each level stood in each place, over the tasters who placed every level. */
function placesOf(given: readonly GivenRank[], samples: readonly string[]): Ranking['places'] {
  const blocks = [...Map.groupBy(given, ({ taster }) => taster).values()]
    .filter((own) => own.length === samples.length)
    .map((own) => midranks(samples.map((sample) => own.find((each) => each.sample === sample)?.rank ?? 0)));
  return samples.map((sample, position) => {
    const counts = new Array<number>(samples.length).fill(0);
    let sum = 0;
    for (const block of blocks) {
      const place = block[position] ?? 0;
      const better = block.filter((other) => other < place).length;
      counts[better] = (counts[better] ?? 0) + 1;
      sum += place;
    }
    return { sample, counts, mean: blocks.length === 0 ? 0 : sum / blocks.length };
  });
}

function rankingOf(trial: TrialWhole, answers: readonly GivenPlace[], aside: ReadonlySet<string>): Ranking | null {
  const [first] = answers;
  if (first === undefined) return null;
  const levels = levelNumbers(trial) ?? {};
  const analysed = (counted: readonly GivenPlace[]) => {
    const given = byLevel(counted.map(({ taster, level, place }) => ({ taster, sample: level, value: place })));
    const analysis = analyseRanking(given, alpha, levels);
    const places = placesOf(
      given,
      analysis.samples.map(({ sample }) => sample),
    );
    const blocks = places[0]?.counts.reduce((sum, count) => sum + count, 0) ?? 0;
    return { analysis, places, blocks, sentence: rankingSentence(analysis, blocks) };
  };
  const counted = answers.filter(({ taster }) => !aside.has(taster));
  const { analysis, places, blocks, sentence } = analysed(counted);
  const tasters = new Set(counted.map(({ taster }) => taster)).size;
  return {
    tasting: first.tasting,
    name: first.name,
    tasters,
    counted: blocks,
    ...rankSumsOf(analysis),
    places,
    sentence,
    ordered: orderedPlacesSentence(analysis, trial.factor),
    doubts: [
      ...fewTasters(tasters),
      ...(blocks < tasters
        ? [phrase`${tasters - blocks} of ${tasters} tasters did not place every level; their places can’t be counted.`]
        : []),
      ...(trial.replicates === 1 ? [oneJarDoubt(trial.factor)] : []),
    ],
    withEverybody: counted.length === answers.length ? null : analysed(answers).sentence,
  };
}

export const placeFindingHandlers: Handlers<'findings:places'> = {
  'findings:places'(kitchen, { trial: id }) {
    const trial = found(findTrial(kitchen.read, id), 'trial', 'trial');
    const aside = new Set(setAsidesOf(kitchen.read, id).map(({ name }) => name));
    const tastings = Map.groupBy(revealedPlaces(kitchen.read, id), ({ tasting }) => tasting);
    const attributes = Map.groupBy(countedScores(kitchen.read, id), ({ attribute }) => attribute);
    return {
      rankings: [...tastings.values()].flatMap((answers) => rankingOf(trial, answers, aside) ?? []),
      scored: [...attributes].map(([attribute, scores]) => {
        // The highest score stands first, as the best-liked does in a ranking.
        const given = byLevel(scores.map(({ taster, sample, score }) => ({ taster, sample, value: -score })));
        return { attribute, ...rankSumsOf(analyseRanking(given, alpha, levelNumbers(trial) ?? {})) };
      }),
    };
  },
};
