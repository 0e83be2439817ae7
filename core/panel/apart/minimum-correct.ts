import { binomialUpperTail } from '#core/numeric/binomial-tail.ts';
import { type DiscriminationMethod, guessing } from './thurstone.ts';

/**
 * Chance of so many correct answers or more by guessing alone; two-sided for `paired-two-sided`.
 *
 * @param correct 0 to trials; two-sided: the count of the more chosen
 * Accuracy: exact binomial, 1e-12.
 * @example discriminationP('triangle', 15, 30) // 0.0434823
 */
export function discriminationP(method: DiscriminationMethod, correct: number, trials: number): number {
  const tail = binomialUpperTail(correct, trials, guessing(method));
  return method === 'paired-two-sided' ? Math.min(1, 2 * tail) : tail;
}

/**
 * The fewest correct answers that are significant.
 *
 * @param trials at least 1
 * @param alpha above 0, below 1
 * @returns a count, or null when even all correct would not do
 * Accuracy: exact. Source: ISO 4120, ISO 10399 and ISO 5495 tables, recomputed from the binomial.
 * @example minimumCorrect('triangle', 30, 0.05) // 15
 */
export function minimumCorrect(method: DiscriminationMethod, trials: number, alpha: number): number | null {
  let low = 0;
  let high = trials + 1;
  // Probabilities fall as the count rises: bisection. A hair of slack, lest rounding refuse a p of exactly alpha.
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (discriminationP(method, middle, trials) <= alpha * (1 + 1e-12)) high = middle;
    else low = middle;
  }
  return high > trials ? null : high;
}
