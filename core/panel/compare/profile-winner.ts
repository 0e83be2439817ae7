import { seededRandom } from '#core/numeric/seeded-random.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { type AttributeGoal, profileDesirability } from './desirability.ts';

export interface ProfileQuestion {
  /** `profiles[taster][sample][attribute]`: a taster's mean score, null where there is none. */
  readonly profiles: readonly (readonly (readonly (number | null)[])[])[];
  /** One an attribute. */
  readonly goals: readonly AttributeGoal[];
  readonly draws: number;
  readonly seed: number;
  /** Told how many draws are done; returning false stops. */
  readonly onProgress?: ((done: number, of: number) => boolean) | undefined;
}

export interface ProfileAnswer {
  /** Each sample's desirability, 0 to 1; null where an attribute has no score at all. */
  readonly desirability: (number | null)[];
  /** The most desirable sample; null when none is acceptable. */
  readonly winner: number | null;
  /** Share of redrawn panels in which each sample won; ties are shared. */
  readonly winShare: number[];
  /** Middle 95 % of each sample's desirability over the redrawn panels. */
  readonly low: (number | null)[];
  readonly high: (number | null)[];
  readonly draws: number;
  readonly stopped: boolean;
}

/** Mean over the drawn tasters, then desirability, sample by sample. */
function judge(question: ProfileQuestion, drawn: readonly number[]): (number | null)[] {
  const samples = question.profiles[0]?.length ?? 0;
  return Array.from({ length: samples }, (_, sample) => {
    const means: number[] = [];
    for (let attribute = 0; attribute < question.goals.length; attribute += 1) {
      let sum = 0;
      let n = 0;
      for (const taster of drawn) {
        const score = question.profiles[taster]?.[sample]?.[attribute] ?? null;
        if (score === null) continue;
        sum += score;
        n += 1;
      }
      if (n === 0) return null;
      means.push(sum / n);
    }
    return profileDesirability(means, question.goals);
  });
}

function winners(values: readonly (number | null)[]): number[] {
  const best = Math.max(0, ...values.map((value) => value ?? 0));
  return best === 0
    ? []
    : values.flatMap((value, sample) => (value !== null && value >= best * (1 - 1e-12) ? [sample] : []));
}

function quantile(sorted: readonly number[], part: number): number | null {
  if (sorted.length === 0) return null;
  const place = part * (sorted.length - 1);
  const below = sorted[Math.floor(place)] ?? 0;
  return below + (place - Math.floor(place)) * ((sorted[Math.ceil(place)] ?? below) - below);
}

/**
 * Which sample's whole profile comes closest to what is wanted, and how sure that is.
 *
 * Method: desirability of the samples' means; doubt by a bootstrap that redraws whole tasters (clusters), because scores of one
 * taster belong together. Leaves out: the doubt about the jars, which only replicate jars could tell.
 *
 * @param question two tasters or more, one sample or more, draws 1 to 100000
 * @returns desirabilities, winner, share of redrawn panels won, intervals by percentiles
 * @throws OutOfDomain outside these
 * Accuracy: shares move by about 0.5/√draws from seed to seed; the same seed repeats exactly.
 * Source: Efron & Tibshirani, An Introduction to the Bootstrap (1993), section 13.3 (from memory).
 */
export function profileWinner(question: ProfileQuestion): ProfileAnswer {
  const { profiles, draws, onProgress } = question;
  if (profiles.length < 2) throw new OutOfDomain('profiles', profiles.length, 'at least 2 tasters');
  if (!Number.isInteger(draws) || draws < 1 || draws > 100_000) throw new OutOfDomain('draws', draws, '1 to 100000');
  const random = seededRandom(question.seed);
  const seen = judge(question, [...profiles.keys()]);
  const wins = seen.map(() => 0);
  const spread: number[][] = seen.map(() => []);
  let done = 0;
  let stopped = false;
  while (done < draws && !stopped) {
    const values = judge(
      question,
      profiles.map(() => random.below(profiles.length)),
    );
    const first = winners(values);
    for (const sample of first) wins[sample] = (wins[sample] ?? 0) + 1 / first.length;
    values.forEach((value, sample) => {
      if (value !== null) spread[sample]?.push(value);
    });
    done += 1;
    if (onProgress !== undefined && done % 100 === 0) stopped = !onProgress(done, draws);
  }
  for (const values of spread) values.sort((one, other) => one - other);
  return {
    desirability: seen,
    winner: winners(seen)[0] ?? null,
    winShare: wins.map((count) => count / done),
    low: spread.map((values) => quantile(values, 0.025)),
    high: spread.map((values) => quantile(values, 0.975)),
    draws: done,
    stopped,
  };
}
