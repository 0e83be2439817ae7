import { rankSumWalk } from './rank-sum-walk.ts';

/** Steps of work after which an exact distribution is not worth its time. */
const mostSteps = 300_000;

/**
 * The chance that rank sums lie as far apart as those seen, or further, when each taster ranks at random.
 *
 * Method: convolution, taster by taster. Which sample has which sum does not matter to a test between all of them, so only the
 * sorted sums are kept, and of the last taster's only how far apart they lie. Ties are taken as they stand: each taster's own
 * ranks in every order.
 *
 * @param blocks each taster's ranks
 * @param seen the sum of the squared distances of the doubled rank sums from their mean
 * @param budget steps of work allowed; the default keeps it well under a twentieth of a second
 * @returns the chance, or null when it would take more steps
 * Accuracy: 1e-12.
 */
export function rankSumTail(blocks: readonly (readonly number[])[], seen: number, budget = mostSteps): number | null {
  const walked = rankSumWalk(blocks, budget);
  if (walked === null) return null;
  const size = blocks[0]?.length ?? 0;
  const times = 2 / walked.scale;
  // Doubled sums count from twice the number of tasters; their mean is that number times one more than the samples.
  const middle = blocks.length * (size + 1) - 2 * blocks.length;
  let tail = 0;
  walked.forEachMeeting(({ before, orders, chance }) => {
    let count = 0;
    for (let order = 0; order < orders.length; order += size) {
      let between = 0;
      for (let place = 0; place < size; place += 1) {
        const distance = times * ((before[place] as number) + (orders[order + place] as number)) - middle;
        between += distance * distance;
      }
      if (between >= seen) count += 1;
    }
    tail += count * chance;
  });
  return tail;
}
