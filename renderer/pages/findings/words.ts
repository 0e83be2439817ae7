import type { Factor } from '#core/trial/factor.ts';

export const words = {
  answer: 'The answer',
  sure: 'How sure',
  doubts: 'Its doubts',
  alsoShown: 'What did show',
  howWorked: 'How this was worked out',
  sample: 'What the panel found',
  sips: 'What you sipped',
  sipsOnly: 'Your own sips so far',
  sipsNote:
    'Your own sips: one mouth, open labels, a day at a time. They show which way a jar is going; they can’t say what others will find.',
  noTasting: 'No tasting of this trial is closed yet',
  noTastingLine: 'Findings appear once a tasting is closed and its codes are revealed.',
  openTasting: (name: string, scores: number, expected: number) =>
    `“${name}” is open: ${scores} of ${expected} scores are in. Nothing is shown before it is closed, so that nobody tastes with a hint.`,
  toTaste: 'Go to the tasting',
  noScores: 'A tasting is closed, but it holds no scores.',
  promote: 'Make it a house recipe',
  promoteAny: 'Choose a level for a house recipe',
  details: 'For those who want the figures: pairs, letters, tests',
  saveAll: 'Save every figure (CSV)',
  savedAll: (file: string) => `${file} was handed to your downloads.`,
  pairs: (attribute: string) => `${attribute}: each level against each other`,
  control: (attribute: string, control: string) => `${attribute}: each level against “${control}”`,
  tests: 'The tests behind the sentences',
  letters:
    'Alike: levels that share a letter were not told apart. Pairs: Tukey–Kramer; against the control: Dunnett; both with 95 % intervals that hold for all pairs at once.',
  testsNote:
    'F: how much further the levels lie apart than luck alone would set them. Chance: how often luck alone would give at least this F; adjusted: with the number of attributes allowed for (Holm). A large chance says that this panel could not tell, not that the jars are alike.',
  level: 'Level',
  tasters: 'The tasters',
  tastersMore: 'How each taster is doing',
  setAside: 'Set aside',
  setAsideWho: (name: string) => `Set aside ${name}`,
  isAside: (name: string) => `${name} is set aside; the finding says so.`,
  whyAside: (name: string) => `Why should ${name} not count in this trial?`,
  whyAsideHint: 'A reason of the day, such as a cold. A taste that differs is none.',
  keep: 'Keep counting',
  count: 'Count again',
  countWho: (name: string) => `Count again: ${name}`,
  countsAgain: (name: string) => `${name} counts again.`,
  asideBecause: (reason: string) => `Not counted here: ${reason}.`,
  withEverybody: (sentence: string) =>
    `Somebody is set aside, so the finding above leaves them out. With everybody counted: ${sentence}`,
} as const;

/** What the horizontal axis of a factor chart measures. */
export const axisWords: Readonly<Record<Factor, string>> = {
  fruit: 'fruit',
  amount: 'added to each jar (g)',
  days: 'days in the jar',
  state: 'fresh or frozen',
  cover: 'cover',
  temperature: 'temperature (°C)',
  formula: 'formula',
};
