import { chiSquareUpperTail } from '#core/numeric/chi-square.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import type { RankTest } from '../panel-analysis.ts';
import { rankSumTail } from './rank-sum-tail.ts';

/**
 * Friedman's test: whether the samples' rank sums differ by more than chance, with Kendall's W.
 *
 * Method: the statistic is corrected for ties. For small panels p counts every possible ranking (each taster's own ties kept);
 * beyond that it is the upper tail of chi-square on k − 1 degrees of freedom, and `exact` is false.
 *
 * @param blocks each taster's ranks of the same samples, ties sharing their mean rank; at least 2 tasters, 2 samples
 * @param budget steps allowed for the exact distribution
 * @returns the test, or null when every taster ranked all samples equal
 * @throws OutOfDomain with fewer tasters or samples
 * Accuracy: exact p to 1e-12.
 * Source: M. Friedman, J. Am. Stat. Assoc. 32 (1937) 675; Hollander & Wolfe, Nonparametric Statistical Methods (1973), p. 140.
 * @example friedman([[1, 2, 3], [1, 2, 3], [1, 2, 3]]).p // 0.02778
 */
export function friedman(blocks: readonly (readonly number[])[], budget?: number): RankTest | null {
  const n = blocks.length;
  const k = blocks[0]?.length ?? 0;
  if (n < 2 || k < 2) throw new OutOfDomain('blocks', `${n} × ${k}`, 'at least 2 tasters and 2 samples');
  // Doubled ranks are whole numbers: everything up to the last division is exact.
  const sums = new Array<number>(k).fill(0);
  let squares = 0;
  for (const block of blocks) {
    block.forEach((rank, sample) => {
      sums[sample] = (sums[sample] ?? 0) + 2 * rank;
      squares += (2 * rank) ** 2;
    });
  }
  const expected = n * (k + 1);
  const spread = squares - n * k * (k + 1) ** 2;
  if (spread === 0) return null;
  const between = (doubled: readonly number[]): number =>
    doubled.reduce((sum, value) => sum + (value - expected) ** 2, 0);
  const seen = between(sums);
  const chiSquare = ((k - 1) * seen) / spread;
  const tail = rankSumTail(blocks, seen, budget);
  const p = tail ?? chiSquareUpperTail(chiSquare, k - 1);
  return {
    chiSquare,
    df: k - 1,
    p: Math.min(1, p),
    exact: tail !== null,
    kendallW: chiSquare / (n * (k - 1)),
    blocks: n,
  };
}
