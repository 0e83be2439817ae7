import { OutOfDomain } from '#core/out-of-domain.ts';

/**
 * What the winner may be expected to score next time: its mean drawn back toward the mean of all samples.
 *
 * Method: positive-part James–Stein factor max(0, 1 − (k − 3)/((k − 1)·F)) about the grand mean. The best of several means is
 * partly the luckiest; the less the samples differ beyond chance, the more of its lead is luck.
 * Leaves out: samples known with different exactness; with fewer than four samples the factor is 1 − 1/F, a moment estimate.
 *
 * @param means one a sample, at least 2
 * @param f the F test between them, at least 0
 * @returns index of the winner, its expected score, and the share of its lead that was kept (0 to 1)
 * @throws OutOfDomain with fewer than two means
 * Source: Efron & Morris, J. Am. Stat. Assoc. 70 (1975) 311.
 * @example shrunkenWinner([6, 4], 4) // { winner: 0, expected: 5.75, kept: 0.75 }
 */
export function shrunkenWinner(
  means: readonly number[],
  f: number,
): { winner: number; expected: number; kept: number } {
  const k = means.length;
  if (k < 2) throw new OutOfDomain('means', k, 'at least 2 means');
  if (!(f >= 0)) throw new OutOfDomain('f', f, 'at least 0');
  const grand = means.reduce((sum, mean) => sum + mean, 0) / k;
  const best = Math.max(...means);
  const discount = k > 3 ? (k - 3) / (k - 1) : 1;
  const kept = f === 0 ? 0 : Math.max(0, 1 - discount / f);
  return { winner: means.indexOf(best), expected: grand + kept * (best - grand), kept };
}
