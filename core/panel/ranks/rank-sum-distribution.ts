import { rankSumWalk } from './rank-sum-walk.ts';

/** Rank sums that can come about, each as twice the sums in rising order, with its chance. */
export interface RankSumState {
  /** Twice the rank sums, so that shared ranks stay whole numbers. */
  readonly doubled: readonly number[];
  readonly chance: number;
}

/** Steps of work after which an exact distribution is not worth its time. */
const mostSteps = 300_000;

/**
 * Every set of rank sums that can come about when each taster ranks at random, with its chance.
 *
 * Method: convolution, taster by taster; only the sorted sums are kept. Where only the distance between all sums matters,
 * `rankSumTail` is quicker.
 *
 * @param blocks each taster's ranks
 * @param budget steps of work allowed; the default keeps it under a tenth of a second
 * @returns the distribution, or null when it would take more steps
 * Accuracy: chances sum to 1 within 1e-12.
 */
export function rankSumDistribution(blocks: readonly (readonly number[])[], budget = mostSteps): RankSumState[] | null {
  const size = blocks[0]?.length ?? 0;
  // A last taster who ranks everything first has one order only, and adds nothing to the sums.
  const walked = rankSumWalk([...blocks, new Array<number>(size).fill(1)], budget);
  if (walked === null) return null;
  const states: RankSumState[] = [];
  walked.forEachMeeting(({ before, chance }) => {
    states.push({
      doubled: Array.from(before, (sum) => (2 / walked.scale) * sum + 2 * blocks.length),
      chance,
    });
  });
  return states;
}
