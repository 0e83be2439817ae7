import { findRoot } from '#core/numeric/find-root.ts';
import { normalQuantile } from '#core/numeric/normal-distribution.ts';
import type { Reason } from '#core/reason.ts';
import { phrase } from '#core/words/phrase.ts';
import { RefusedInput } from '../refused-input.ts';
import { discriminationP, minimumCorrect } from './minimum-correct.ts';
import { type DiscriminationMethod, dPrimeAt, guessing } from './thurstone.ts';

export interface DiscriminationInput {
  readonly method: DiscriminationMethod;
  /** Correct answers; for `paired-two-sided` the count of the more chosen. */
  readonly correct: number;
  readonly trials: number;
  readonly alpha?: number | undefined;
}

export interface Discrimination {
  readonly p: number;
  readonly minimumCorrect: number | null;
  readonly significant: boolean;
  readonly dPrime: number | null;
  readonly dPrimeLow: number | null;
  readonly dPrimeHigh: number | null;
  readonly reasons: Reason[];
}

/** ln of the likelihood, the binomial coefficient left out. */
function logLikelihood(correct: number, trials: number, chance: number): number {
  const hits = correct === 0 ? 0 : correct * Math.log(chance);
  return hits + (trials === correct ? 0 : (trials - correct) * Math.log1p(-chance));
}

/**
 * Judges a discrimination test: could so many correct answers be guessing, and how large is the difference?
 *
 * Method: exact binomial p; d′ by maximum likelihood, never below 0; its interval holds every d′ whose likelihood lies within the
 * chi-square limit of the best (profile likelihood, 1 − alpha).
 * Leaves out: tasters who answer several times and differ among themselves (overdispersion).
 *
 * @param input correct from 0 to trials; trials at least 1; alpha 0.05 unless given
 * @returns p, the fewest correct answers that are significant, d′ and its interval; what has no end is null with its reason
 * @throws RefusedInput when there are more correct answers than trials, or a two-sided count is not that of the more chosen
 * Accuracy: p exact to 1e-12, d′ to 1e-9.
 * Source: Brockhoff & Christensen, Food Quality and Preference 21 (2010) 330 for the likelihood of d′.
 * @example discriminate({ method: 'triangle', correct: 15, trials: 30 }).significant // true
 */
export function discriminate(input: DiscriminationInput): Discrimination {
  const { method, correct, trials } = input;
  const alpha = input.alpha ?? 0.05;
  if (correct > trials) throw new RefusedInput(phrase`more correct answers than trials`, ['correct']);
  if (method === 'paired-two-sided' && 2 * correct < trials) {
    throw new RefusedInput(phrase`give the count of the sample chosen more often`, ['correct']);
  }
  const reasons: Reason[] = [];
  const fewest = minimumCorrect(method, trials, alpha);
  if (fewest === null) {
    reasons.push({
      path: ['minimumCorrect'],
      code: 'too-few-scores',
      needs: phrase`more trials: not even all correct would be significant`,
    });
  }
  const guess = guessing(method);
  const share = correct / trials;
  if (share < guess - 1e-12) {
    reasons.push({
      path: ['dPrime'],
      code: 'below-chance',
      needs: phrase`nothing: fewer correct than guessing gives, taken as no difference`,
    });
  }
  const perfect = correct === trials;
  if (perfect) {
    const needs = phrase`more trials: with every answer correct the difference has no upper end`;
    for (const at of ['dPrime', 'dPrimeHigh']) reasons.push({ path: [at], code: 'perfect-score', needs });
  }
  const best = logLikelihood(correct, trials, Math.max(share, guess));
  const limit = normalQuantile(1 - alpha / 2) ** 2 / 2;
  const short = (chance: number) => best - logLikelihood(correct, trials, chance) - limit;
  const nearOne = 1 - 1e-15;
  const lowChance = share > guess && short(guess) > 0 ? findRoot(short, guess, share, 1e-15) : guess;
  const highChance = perfect ? null : findRoot(short, Math.max(share, guess), nearOne, 1e-15);
  const p = discriminationP(method, correct, trials);
  return {
    p,
    minimumCorrect: fewest,
    significant: fewest !== null && correct >= fewest,
    dPrime: perfect ? null : dPrimeAt(method, share),
    dPrimeLow: dPrimeAt(method, Math.min(lowChance, nearOne)),
    dPrimeHigh: highChance === null ? null : dPrimeAt(method, highChance),
    reasons,
  };
}
