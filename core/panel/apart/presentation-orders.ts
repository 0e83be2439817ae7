import { seededRandom } from '#core/numeric/seeded-random.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import type { DiscriminationMethod } from './thurstone.ts';

/** Every order in which the two samples A and B can be presented; a duo-trio names its reference first. */
const orders: Record<DiscriminationMethod, readonly string[]> = {
  triangle: ['ABB', 'BAA', 'AAB', 'BBA', 'ABA', 'BAB'],
  'duo-trio': ['A:AB', 'A:BA', 'B:AB', 'B:BA'],
  paired: ['AB', 'BA'],
  'paired-two-sided': ['AB', 'BA'],
};

/**
 * Orders of presentation for a discrimination test, each used as equally often as the number of trials lets.
 *
 * Method: whole sets of orders, the rest drawn without repetition, all shuffled by the seed.
 *
 * @param method the test
 * @param trials at least 1
 * @param seed whole number, 0 to 4294967295
 * @returns one order a trial, such as ABB, or A:BA for a duo-trio with reference A
 * @throws OutOfDomain outside these
 * Source: ISO 4120:2021 section 7 for the triangle's six orders; duo-trio with balanced reference, common practice, no source.
 * @example presentationOrders('paired', 2, 1).toSorted() // ['AB', 'BA']
 */
export function presentationOrders(method: DiscriminationMethod, trials: number, seed: number): string[] {
  if (!Number.isInteger(trials) || trials < 1 || trials > 100_000) {
    throw new OutOfDomain('trials', trials, 'whole numbers from 1 to 100000');
  }
  const random = seededRandom(seed);
  const all = orders[method];
  const drawn: string[] = [];
  while (drawn.length < trials) drawn.push(...random.shuffled(all).slice(0, trials - drawn.length));
  return random.shuffled(drawn);
}
