import { phrase } from '#core/words/phrase.ts';

/** The usual risk of a false alarm. */
const alpha = 0.05;

/**
 * The chance that tasters who only guess all give one order.
 *
 * Method: counting; the first taster's order is any, each further one is one of n! equally likely ones.
 *
 * @example chanceOfOneOrder(3, 3) // 1 / 36
 */
export function chanceOfOneOrder(samples: number, tasters: number): number {
  let orders = 1;
  for (let each = 2; each <= samples; each += 1) orders *= each;
  return orders ** (1 - tasters);
}

/** The fewest tasters whose full agreement is hardly luck. @example fewestTasters(3) // 3 */
export function fewestTasters(samples: number): number {
  let tasters = 2;
  while (chanceOfOneOrder(samples, tasters) > alpha) tasters += 1;
  return tasters;
}

/** What a panel that ranks will be able to tell, in a cook's words; two samples and two tasters or more. */
export function rankingSightWords({
  samples,
  tasters,
}: {
  readonly samples: number;
  readonly tasters: number;
}): string[] {
  const odds = 1 / chanceOfOneOrder(samples, tasters);
  const luck = odds > 1000 ? phrase`less than once in 1,000 times` : phrase`once in ${Math.round(odds)} times`;
  const fewest = fewestTasters(samples);
  const all =
    tasters === 2
      ? phrase`If both tasters put the ${samples} samples in one and the same order, guessing alone would do that ${luck}`
      : phrase`If all ${tasters} tasters put the ${samples} samples in one and the same order, guessing alone would do that ${luck}`;
  return [
    tasters < fewest
      ? phrase`${all}: too often to build on. It takes at least ${fewest} tasters.`
      : phrase`${all}. The less they agree, the less the order says.`,
    phrase`A ranking tells which jar comes before which. It can’t tell by how much: the first two may be a hair apart or worlds.`,
  ];
}
