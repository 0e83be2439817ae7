import { seededRandom } from '#core/numeric/seeded-random.ts';

/**
 * The order in which to fill the jars, so that first and last pour favour no level.
 *
 * @param seed the trial's own; the same seed gives the same order
 * @param labels of all jars, in the order of the plan
 * @example fillOrder(7, ['A', 'B', 'C'])
 */
export function fillOrder(seed: number, labels: readonly string[]): readonly string[] {
  return seededRandom(seed).shuffled(labels);
}
