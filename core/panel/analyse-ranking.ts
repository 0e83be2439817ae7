import type { Reason } from '#core/reason.ts';
import { phrase } from '#core/words/phrase.ts';
import { compactLetters } from './compare/compact-letters.ts';
import type { RankTest } from './panel-analysis.ts';
import { friedman } from './ranks/friedman.ts';
import { pageTest } from './ranks/page-test.ts';
import { midranks } from './ranks/rank-blocks.ts';
import { criticalRankDifference } from './ranks/rank-sum-differences.ts';
import { RefusedInput } from './refused-input.ts';

/** One taster's place for one sample; equal places are ties. */
export interface GivenRank {
  readonly taster: string;
  readonly sample: string;
  readonly rank: number;
}

/** Page's test on the places, both ways: whether later levels are placed better, or worse. */
export interface OrderedPlaces {
  readonly l: number;
  /** One-sided: later levels placed better. */
  readonly better: number;
  /** One-sided: later levels placed worse. */
  readonly worse: number;
  readonly exact: boolean;
}

export interface RankingAnalysis {
  readonly samples: { readonly sample: string; readonly rankSum: number; readonly letters: string | null }[];
  readonly ranks: RankTest | null;
  /** Rank sums further apart than this differ, all pairs looked at; null when none could. */
  readonly criticalDifference: number | null;
  readonly criticalIsExact: boolean;
  /** Null without levels for every sample, or with fewer than three. */
  readonly page: OrderedPlaces | null;
  readonly reasons: Reason[];
}

type Levels = Readonly<Record<string, number>>;

/** L is taken over places counted from the last, so that it is large where later levels are liked better. */
function orderedPlaces(
  blocks: readonly (readonly number[])[],
  samples: readonly string[],
  levels: Levels,
): OrderedPlaces | null {
  const known = samples.flatMap((sample, place) => {
    const level = levels[sample];
    return level === undefined ? [] : [{ place, level }];
  });
  const distinct = new Set(known.map(({ level }) => level)).size;
  if (known.length < samples.length || distinct < samples.length || samples.length < 3) return null;
  const rising = known.sort((one, other) => one.level - other.level).map(({ place }) => place);
  const placed = blocks.map((block) => rising.map((place) => block[place] ?? 0));
  const better = pageTest(placed.map((block) => block.map((place) => samples.length + 1 - place)));
  return { l: better.l, better: better.p, worse: pageTest(placed).p, exact: better.exact };
}

/**
 * Analyses a tasting in which samples were put in order instead of scored.
 *
 * Method: Friedman's test with ties and Kendall's W on the tasters who ranked every sample; pairs by the critical difference of
 * rank sums. A higher rank sum means a later place.
 *
 * @param given each taster's ranks; within a taster only their order counts
 * @param alpha chance of any false difference, 0 to 1
 * @param levels each sample's number on the factor's line, where it has one: adds Page's test
 * @returns rank sums with letters, the test, the critical difference
 * @throws RefusedInput when a taster ranks the same sample twice or a rank is no finite number
 * Source: ISO 8587:2006, Sensory analysis, ranking (from memory) for the procedure.
 * @example analyseRanking(ranks, 0.05).ranks?.p
 */
export function analyseRanking(given: readonly GivenRank[], alpha: number, levels: Levels = {}): RankingAnalysis {
  const samples = [...new Set(given.map(({ sample }) => sample))];
  const tasters = new Map<string, Map<string, number>>();
  given.forEach(({ taster, sample, rank }, index) => {
    if (!Number.isFinite(rank))
      throw new RefusedInput(phrase`a rank must be a finite number`, ['ranks', index, 'rank']);
    const own = tasters.get(taster) ?? new Map<string, number>();
    if (own.has(sample)) throw new RefusedInput(phrase`${taster} ranked ${sample} twice`, ['ranks', index]);
    own.set(sample, rank);
    tasters.set(taster, own);
  });
  const reasons: Reason[] = [];
  const complete = [...tasters.values()].filter((own) => own.size === samples.length);
  const blocks = complete.map((own) => midranks(samples.map((sample) => own.get(sample) ?? 0)));
  const left = tasters.size - blocks.length;
  if (left > 0)
    reasons.push({
      path: ['ranks'],
      code: 'incomplete-panel',
      needs: phrase`every sample ranked by the ${left} tasters left out`,
    });
  const sums = samples.map((_, place) => blocks.reduce((sum, block) => sum + (block[place] ?? 0), 0));
  if (blocks.length < 2 || samples.length < 2) {
    if (samples.length < 2) reasons.push({ path: ['ranks'], code: 'one-sample', needs: phrase`a second sample` });
    if (blocks.length < 2)
      reasons.push({ path: ['ranks'], code: 'one-taster', needs: phrase`a second taster who ranked every sample` });
    return {
      samples: samples.map((sample, place) => ({ sample, rankSum: sums[place] ?? 0, letters: null })),
      ranks: null,
      criticalDifference: null,
      criticalIsExact: false,
      page: null,
      reasons,
    };
  }
  const ranks = friedman(blocks);
  if (ranks === null)
    reasons.push({
      path: ['ranks'],
      code: 'no-variation',
      needs: phrase`a taster who does not rank all samples equal`,
    });
  const { difference, exact } = criticalRankDifference(blocks.length, samples.length, alpha);
  const different: { a: number; b: number }[] = [];
  for (let a = 0; a < samples.length; a += 1) {
    for (let b = a + 1; b < samples.length; b += 1) {
      if (difference !== null && Math.abs((sums[a] ?? 0) - (sums[b] ?? 0)) >= difference) different.push({ a, b });
    }
  }
  const letters = compactLetters(
    sums.map((sum) => -sum),
    different,
  );
  return {
    samples: samples.map((sample, place) => ({ sample, rankSum: sums[place] ?? 0, letters: letters[place] ?? null })),
    ranks,
    criticalDifference: difference,
    criticalIsExact: exact,
    page: ranks === null ? null : orderedPlaces(blocks, samples, levels),
    reasons,
  };
}
