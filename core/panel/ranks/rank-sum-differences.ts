import { studentizedRange } from '#core/numeric/studentized-range.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { rankSumDistribution } from './rank-sum-distribution.ts';

interface CriticalDifference {
  readonly difference: number | null;
  readonly exact: boolean;
}

/** Already worked out: a kitchen has panels of a few sizes, and asks for the same one with each attribute. */
const known = new Map<string, CriticalDifference>();
const mostKnown = 1000;

/**
 * The smallest difference between two rank sums that is significant when all pairs are looked at.
 *
 * Method: for small panels from every possible ranking, the smallest whole range reached with a chance of at most alpha; beyond
 * that q·√(n·k·(k+1)/12) with the studentized range on endless degrees of freedom. Supposes no ties.
 *
 * @param tasters at least 2
 * @param samples at least 2
 * @param alpha above 0, below 1
 * @returns the difference (null when even the largest possible one is not significant) and whether it is exact
 * @throws OutOfDomain outside these
 * Source: Newell & MacFarlane, Journal of Food Science 52 (1987) 1721 for the idea; G. E. Basker, Food Technology 42(9) (1988) 158
 * for the limit (from memory).
 * @example criticalRankDifference(10, 3, 0.05) // { difference: 11, exact: true }
 */
export function criticalRankDifference(tasters: number, samples: number, alpha: number): CriticalDifference {
  if (!(tasters >= 2 && samples >= 2)) throw new OutOfDomain('panel', `${tasters} × ${samples}`, 'at least 2 × 2');
  const key = [tasters, samples, alpha].join();
  const found = known.get(key) ?? worked(tasters, samples, alpha);
  if (known.size < mostKnown) known.set(key, found);
  return found;
}

function worked(tasters: number, samples: number, alpha: number): CriticalDifference {
  const block = Array.from({ length: samples }, (_, place) => place + 1);
  const states = rankSumDistribution(new Array<number[]>(tasters).fill(block));
  if (states === null) {
    const q = studentizedRange(samples).critical(alpha, Number.POSITIVE_INFINITY);
    return { difference: q * Math.sqrt((tasters * samples * (samples + 1)) / 12), exact: false };
  }
  const largest = tasters * (samples - 1);
  const chances = new Array<number>(largest + 1).fill(0);
  for (const { doubled, chance } of states) {
    const range = ((doubled[samples - 1] ?? 0) - (doubled[0] ?? 0)) / 2;
    chances[range] = (chances[range] ?? 0) + chance;
  }
  let tail = 0;
  let difference: number | null = null;
  for (let range = largest; range >= 0; range -= 1) {
    tail += chances[range] ?? 0;
    if (tail > alpha * (1 + 1e-12)) break;
    difference = range;
  }
  return { difference, exact: true };
}
