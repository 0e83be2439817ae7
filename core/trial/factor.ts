import { phrase } from '#core/words/phrase.ts';

// The seven things a trial can vary, one at a time.

export const factors = ['fruit', 'amount', 'days', 'state', 'cover', 'temperature', 'formula'] as const;
export type Factor = (typeof factors)[number];

/** Factors whose levels are numbers on a line, so that a curve through them means something. */
export const orderedFactors: readonly Factor[] = ['amount', 'days', 'temperature'];

export function isOrdered(factor: Factor): boolean {
  return orderedFactors.includes(factor);
}

/** The unit of an ordered factor's value, as written on an axis. */
export const factorUnits: Readonly<Record<Factor, string | null>> = {
  fruit: null,
  amount: 'g',
  days: 'days',
  state: null,
  cover: null,
  temperature: '°C',
  formula: null,
};

/** What a person is asked to vary, in plain words. */
export const factorWords: Readonly<Record<Factor, string>> = {
  get fruit() {
    return phrase`Which fruit`;
  },
  get amount() {
    return phrase`How much`;
  },
  get days() {
    return phrase`How many days`;
  },
  get state() {
    return phrase`Fresh or frozen`;
  },
  get cover() {
    return phrase`Which cover`;
  },
  get temperature() {
    return phrase`How warm`;
  },
  get formula() {
    return phrase`Whole formula`;
  },
};
