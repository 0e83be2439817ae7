import type { Factor } from '#core/trial/factor.ts';
import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { figureWords } from '#renderer/charts/figure-words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { chanceWords } from './chance-words.ts';

type Ranking = ValueOf<'findings:places'>['rankings'][number];
type RankTest = NonNullable<Ranking['test']>;
type PageTest = NonNullable<Ranking['page']>;

export const words = {
  takenOut: phrase`Taken out`,
  byAttribute: phrase`By attribute`,
  answer: phrase`The answer`,
  reading: phrase`Reading what the panel said…`,
  toWishes: phrase`Look at the wishes`,
  sure: phrase`How sure`,
  doubts: phrase`Its doubts`,
  alsoShown: phrase`What did show`,
  howWorked: phrase`How this was worked out`,
  sample: phrase`What the panel found`,
  sips: phrase`What you sipped`,
  sipsOnly: phrase`Your own sips so far`,
  sipsNote: phrase`Your own sips: one mouth, open labels, a day at a time. They show which way a jar is going; they can’t say what others will find.`,
  noTasting: phrase`No tasting of this trial is closed yet`,
  noTastingLine: phrase`Findings appear once a tasting is closed and its codes are revealed.`,
  openTasting: (name: string, scores: number, expected: number) =>
    phrase`“${name}” is open: ${scores} of ${expected} scores are in. Nothing is shown before it is closed, so that nobody tastes with a hint.`,
  toTaste: phrase`Go to the tasting`,
  noScores: phrase`A tasting is closed, but it holds no scores.`,
  promote: phrase`Make it a house recipe`,
  promoteAny: phrase`Choose a level for a house recipe`,
  details: phrase`For those who want the figures: pairs, letters, tests`,
  toReport: phrase`Print a report`,
  saveAll: phrase`Save every figure (CSV)`,
  saveText: phrase`Save as text (Markdown)`,
  cantSave: phrase`The file could not be written.`,
  savedAll: (file: string) => phrase`${file} was handed to your downloads.`,
  pairs: (attribute: string) => phrase`${attribute}: each level against each other`,
  control: (attribute: string, control: string) => phrase`${attribute}: each level against “${control}”`,
  tests: phrase`The tests behind the sentences`,
  letters: phrase`Alike: levels that share a letter were not told apart. Pairs: Tukey–Kramer; against the control: Dunnett; both with 95 % intervals that hold for all pairs at once.`,
  testsNote: phrase`F: how much further the levels lie apart than luck alone would set them. Chance: how often luck alone would give at least this F; adjusted: with the number of attributes allowed for (Holm). A large chance says that this panel could not tell, not that the jars are alike.`,
  level: phrase`Level`,
  rankedWhich: (name: string) => phrase`Put in order: ${name}`,
  rankedTest: (test: RankTest, critical: number | null, isExact: boolean) =>
    phrase`Friedman’s test on ${test.blocks} tasters: ${fixed(test.chiSquare, 2)}, chance ${chanceWords(test.p)} (${test.exact ? phrase`every possible order counted` : phrase`by the chi-square limit`}); Kendall’s W ${fixed(test.kendallW, 2)} (0: everybody ordered them otherwise, 1: all alike). Rank sums ${critical === null ? phrase`can’t lie far enough apart to be told apart` : isExact ? phrase`are told apart from ${figureWords(critical)} on (every possible order counted)` : phrase`are told apart from ${figureWords(critical)} on (by the large-panel limit)`}.`,
  pageTest: (page: PageTest) =>
    page.exact
      ? phrase`Page’s L ${figureWords(page.l)}: chance ${chanceWords(page.better)} that luck alone sets later levels as far forward, ${chanceWords(page.worse)} that it sets them as far back.`
      : phrase`Page’s L ${figureWords(page.l)}: chance ${chanceWords(page.better)} that luck alone sets later levels as far forward, ${chanceWords(page.worse)} that it sets them as far back (by the large-panel limit).`,
  rightness: phrase`Too little, too much, just right`,
  ofLevel: (level: string, sentence: string) => `“${level}”: ${sentence}`,
  withoutLiking: (attribute: string, without: number, all: number) =>
    phrase`${without} of ${all} answers on ${attribute} have no liking score beside them: they are counted in the bars, but what they cost can’t be told.`,
  drivers: phrase`What drives liking`,
  together: (pairs: number) =>
    phrase`${pairs} pairs moved together or against each other: one may do what the other seems to do`,
  driversTable: phrase`Points of liking for each point of an attribute, taster by taster`,
  driversNote: phrase`Each taster’s own slope, drawn toward the panel’s as far as it is uncertain. A slope shows what moved together with liking in these jars; it does not show that changing the one changes the other.`,
  untoldDriver: (attribute: string, why: string) => phrase`What ${attribute} does to liking can’t be told: ${why}.`,
  ranks: phrase`By order alone`,
  ranksNote: phrase`Each taster’s scores turned into places, the highest score first; only tasters who scored every level count. The level columns are rank sums (smaller is higher) with letters: levels that share one were not told apart. Apart from: how far rank sums must differ. Rising and falling: Page’s test, the chance that luck alone gives so steady an order.`,
  exact: phrase`(exact)`,
  approximate: phrase`(chi-square)`,
  trends: phrase`Line and bend through the levels`,
  trendsNote: phrase`Slope: points for each day, gram or degree more. Bend: how the slope itself changes; below zero the curve has a top. Page’s L: rank sums weighted by the order of the levels, rising.`,
  jars: phrase`Levels against jars of one level`,
  jarsNote: phrase`F: how much further the levels lie apart than two jars of the same level do. Only where this chance is small may a finding speak beyond these jars.`,
  tasters: phrase`The tasters`,
  tastersMore: phrase`How each taster is doing`,
  setAside: phrase`Set aside`,
  setAsideWho: (name: string) => phrase`Set aside ${name}`,
  isAside: (name: string) => phrase`${name} is set aside; the finding says so.`,
  whyAside: (name: string) => phrase`Why should ${name} not count in this trial?`,
  whyAsideHint: phrase`A reason of the day, such as a cold. A taste that differs is none.`,
  keep: phrase`Keep counting`,
  count: phrase`Count again`,
  countWho: (name: string) => phrase`Count again: ${name}`,
  countsAgain: (name: string) => phrase`${name} counts again.`,
  asideBecause: (reason: string) => phrase`Not counted here: ${reason}.`,
  withEverybody: (sentence: string) =>
    phrase`Somebody is set aside, so the finding above leaves them out. With everybody counted: ${sentence}`,
} as const;

/** What the horizontal axis of a factor chart measures. */
export const axisWords: Readonly<Record<Factor, string>> = {
  fruit: phrase`fruit`,
  amount: phrase`added to each jar (g)`,
  days: phrase`days in the jar`,
  state: phrase`fresh or frozen`,
  cover: phrase`cover`,
  temperature: phrase`temperature (°C)`,
  formula: phrase`formula`,
};
