import { binomialUpperTail } from '#core/numeric/binomial-tail.ts';
import { minimumCorrect } from './minimum-correct.ts';
import { chanceCorrect, type DiscriminationMethod } from './thurstone.ts';

/**
 * Chance that a discrimination test finds a difference of d′.
 *
 * Method: binomial tail from the fewest significant correct answers on; two-sided both tails.
 *
 * @param method the test
 * @param dPrime true difference, at least 0
 * @param trials at least 1
 * @param alpha above 0, below 1
 * @returns 0 to 1; 0 when no count would be significant
 * Accuracy: 1e-11.
 * @example discriminationPower('triangle', 0, 30, 0.05) // 0.0435, the chance of a false find
 */
export function discriminationPower(
  method: DiscriminationMethod,
  dPrime: number,
  trials: number,
  alpha: number,
): number {
  const fewest = minimumCorrect(method, trials, alpha);
  if (fewest === null) return 0;
  const chance = chanceCorrect(method, dPrime);
  const upper = binomialUpperTail(fewest, trials, Math.min(1, chance));
  return method === 'paired-two-sided' ? upper + binomialUpperTail(fewest, trials, Math.max(0, 1 - chance)) : upper;
}

/**
 * The fewest trials from which on the test finds the difference with the wanted power.
 *
 * The power of a test that counts goes up in a sawtooth; this is the first number of trials after whose reach it never falls
 * short again within the next two dozen.
 *
 * @param power above 0, below 1
 * @param most the largest test worth answering
 * @returns a count, or null when more than `most` would be needed
 * @example trialsNeeded('triangle', 1.5, 0.05, 0.8, 1000)
 */
export function trialsNeeded(
  method: DiscriminationMethod,
  dPrime: number,
  alpha: number,
  power: number,
  most: number,
): number | null {
  let candidate: number | null = null;
  for (let trials = 2; trials <= most + 24; trials += 1) {
    if (discriminationPower(method, dPrime, trials, alpha) < power) candidate = null;
    else candidate ??= trials;
    if (candidate !== null && trials - candidate >= 24) break;
  }
  return candidate !== null && candidate <= most ? candidate : null;
}
