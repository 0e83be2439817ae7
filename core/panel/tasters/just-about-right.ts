import { tBothTails, tCritical } from '#core/numeric/t-distribution.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';

/** One answer: how far from just about right (0; negative is too little, positive too much), and the liking beside it. */
export interface RightnessAnswer {
  readonly position: number;
  readonly liking: number;
}

/** Those who found too little, or too much. */
export interface PenaltyGroup {
  readonly n: number;
  /** Of all answers, 0 to 1. */
  readonly share: number;
  readonly liking: number | null;
  /** Mean liking of the just-about-right group less this group's. */
  readonly drop: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly p: number | null;
  /** Share times drop: what the whole panel loses by it. */
  readonly penalty: number | null;
  /** At least a fifth of the answers, and a drop of one point or more. */
  readonly attend: boolean;
}

export interface PenaltyAnalysis {
  readonly right: { readonly n: number; readonly share: number; readonly liking: number | null };
  readonly tooLittle: PenaltyGroup;
  readonly tooMuch: PenaltyGroup;
}

function moments(values: readonly number[]): { n: number; mean: number; variance: number } {
  const n = values.length;
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  return { n, mean, variance: values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1) };
}

function penaltyGroup(group: readonly number[], right: readonly number[], all: number, alpha: number): PenaltyGroup {
  const share = group.length / all;
  const own = moments(group);
  const reference = moments(right);
  const empty = { n: own.n, share, low: null, high: null, p: null };
  if (own.n === 0) return { ...empty, liking: null, drop: null, penalty: null, attend: false };
  if (reference.n === 0) return { ...empty, liking: own.mean, drop: null, penalty: null, attend: false };
  const drop = reference.mean - own.mean;
  const found = { liking: own.mean, drop, penalty: share * drop, attend: share >= 0.2 && drop >= 1 };
  const a = own.variance / own.n;
  const b = reference.variance / reference.n;
  if (own.n < 2 || reference.n < 2 || !(a + b > 0)) return { ...empty, ...found };
  const df = (a + b) ** 2 / (a ** 2 / (own.n - 1) + b ** 2 / (reference.n - 1));
  const reach = tCritical(alpha, df) * Math.sqrt(a + b);
  return { ...empty, ...found, low: drop - reach, high: drop + reach, p: tBothTails(drop / Math.sqrt(a + b), df) };
}

/**
 * Penalty analysis of a just-about-right scale: what liking loses where there is too little or too much.
 *
 * Method: mean liking of the just-about-right group less that of the others, with Welch's t. The just-about-right mean is the
 * reference, not the mean of all. Leaves out: that one taster may answer for several samples, which makes p a little too small.
 *
 * @param answers at least one; all numbers finite
 * @param alpha 1 − confidence of the intervals, 0 to 1
 * @returns the three groups; null where a group is empty or too small
 * @throws OutOfDomain without answers
 * Source: ASTM MNL63 (2009) for the method and for "a fifth and one point" (from memory).
 * @example justAboutRight([{ position: 0, liking: 7 }, { position: 1, liking: 5 }], 0.05).tooMuch.drop // 2
 */
export function justAboutRight(answers: readonly RightnessAnswer[], alpha: number): PenaltyAnalysis {
  if (answers.length === 0) throw new OutOfDomain('answers', 0, 'at least one answer');
  const likings = (chosen: (position: number) => boolean) =>
    answers.filter(({ position }) => chosen(position)).map(({ liking }) => liking);
  const right = likings((position) => position === 0);
  return {
    right: {
      n: right.length,
      share: right.length / answers.length,
      liking: right.length === 0 ? null : moments(right).mean,
    },
    tooLittle: penaltyGroup(
      likings((position) => position < 0),
      right,
      answers.length,
      alpha,
    ),
    tooMuch: penaltyGroup(
      likings((position) => position > 0),
      right,
      answers.length,
      alpha,
    ),
  };
}
