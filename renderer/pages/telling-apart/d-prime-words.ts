import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Method } from './words.ts';

type Result = NonNullable<ValueOf<'discriminations:open'>['result']>;

/** Right answers in 100 at d′ 1 and 2, by how it was served: Ennis, Journal of Sensory Studies 8 (1993) 353. */
const rightInHundred: Readonly<Record<Method, readonly [number, number]>> = {
  triangle: [42, 60],
  'duo-trio': [58, 75],
  paired: [76, 92],
  'paired-two-sided': [76, 92],
};

function figure(value: number): string {
  return fixed(value, 1);
}

/** d′ with its interval and a plain explanation. An end that the answers do not give is said in words, never left blank. */
export function dPrimeWords(
  { dPrime, dPrimeLow, dPrimeHigh, p, correct, trials, tasters }: Result,
  method: Method,
): { best: string; interval: string; luck: string; explanation: string[] } {
  const [at1, at2] = rightInHundred[method];
  const isPerfect = correct === trials;
  const low = dPrimeLow === null ? '0' : figure(dPrimeLow);
  return {
    best: dPrime === null ? (isPerfect ? phrase`too large to tell` : '–') : figure(dPrime),
    interval: dPrimeHigh === null ? phrase`${low} or more` : phrase`${low} to ${figure(dPrimeHigh)}`,
    luck:
      p === null
        ? '–'
        : p < 0.0001
          ? phrase`less than once in 10,000`
          : phrase`${Number((p * 100).toPrecision(2))} times in 100`,
    explanation: [
      phrase`d′ (say “d prime”) tells how far apart two drinks taste, measured by how much one taster’s impression of one and the same drink wavers from sip to sip. At 0 there is nothing to taste; a taster is right ${at1} times in 100 where it is 1, and ${at2} times where it is 2.`,
      ...(isPerfect ? [phrase`Every answer was right, so these answers set no upper end: a harder test would.`] : []),
      ...(tasters < trials
        ? [
            phrase`Several of these answers come from the same person, so the true interval is probably wider than this one.`,
          ]
        : []),
    ],
  };
}
