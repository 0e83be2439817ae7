import type { Factor } from '#core/trial/factor.ts';
import { figureWords } from '#renderer/charts/figure-words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { chanceWords } from './chance-words.ts';

type Ranking = ValueOf<'findings:places'>['rankings'][number];
type RankTest = NonNullable<Ranking['test']>;
type PageTest = NonNullable<Ranking['page']>;

export const words = {
  answer: 'The answer',
  reading: 'Reading what the panel said…',
  toWishes: 'Look at the wishes',
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
  toReport: 'Print a report',
  saveAll: 'Save every figure (CSV)',
  saveText: 'Save as text (Markdown)',
  cantSave: 'The file could not be written.',
  savedAll: (file: string) => `${file} was handed to your downloads.`,
  pairs: (attribute: string) => `${attribute}: each level against each other`,
  control: (attribute: string, control: string) => `${attribute}: each level against “${control}”`,
  tests: 'The tests behind the sentences',
  letters:
    'Alike: levels that share a letter were not told apart. Pairs: Tukey–Kramer; against the control: Dunnett; both with 95 % intervals that hold for all pairs at once.',
  testsNote:
    'F: how much further the levels lie apart than luck alone would set them. Chance: how often luck alone would give at least this F; adjusted: with the number of attributes allowed for (Holm). A large chance says that this panel could not tell, not that the jars are alike.',
  level: 'Level',
  rankedWhich: (name: string) => `Put in order: ${name}`,
  rankedTest: (test: RankTest, critical: number | null, isExact: boolean) =>
    `Friedman’s test on ${test.blocks} tasters: ${test.chiSquare.toFixed(2)}, chance ${chanceWords(test.p)} (${test.exact ? 'every possible order counted' : 'by the chi-square limit'}); Kendall’s W ${test.kendallW.toFixed(2)} (0: everybody ordered them otherwise, 1: all alike). Rank sums ${critical === null ? 'can’t lie far enough apart to be told apart' : `are told apart from ${figureWords(critical)} on (${isExact ? 'every possible order counted' : 'by the large-panel limit'})`}.`,
  pageTest: (page: PageTest) =>
    `Page’s L ${figureWords(page.l)}: chance ${chanceWords(page.better)} that luck alone sets later levels as far forward, ${chanceWords(page.worse)} that it sets them as far back${page.exact ? '' : ' (by the large-panel limit)'}.`,
  rightness: 'Too little, too much, just right',
  ofLevel: (level: string, sentence: string) => `“${level}”: ${sentence}`,
  withoutLiking: (attribute: string, without: number, all: number) =>
    `${without} of ${all} answers on ${attribute} have no liking score beside them: they are counted in the bars, but what they cost can’t be told.`,
  drivers: 'What drives liking',
  driversTable: 'Points of liking for each point of an attribute, taster by taster',
  driversNote:
    'Each taster’s own slope, drawn toward the panel’s as far as it is uncertain. A slope shows what moved together with liking in these jars; it does not show that changing the one changes the other.',
  untoldDriver: (attribute: string, why: string) => `What ${attribute} does to liking can’t be told: ${why}.`,
  ranks: 'By order alone',
  ranksNote:
    'Each taster’s scores turned into places, the highest score first; only tasters who scored every level count. The level columns are rank sums (smaller is higher) with letters: levels that share one were not told apart. Apart from: how far rank sums must differ. Rising and falling: Page’s test, the chance that luck alone gives so steady an order.',
  exact: '(exact)',
  approximate: '(chi-square)',
  trends: 'Line and bend through the levels',
  trendsNote:
    'Slope: points for each day, gram or degree more. Bend: how the slope itself changes; below zero the curve has a top. Page’s L: rank sums weighted by the order of the levels, rising.',
  jars: 'Levels against jars of one level',
  jarsNote:
    'F: how much further the levels lie apart than two jars of the same level do. Only where this chance is small may a finding speak beyond these jars.',
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
