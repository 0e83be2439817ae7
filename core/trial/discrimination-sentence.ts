import type { DiscriminationMethod } from '#core/panel/thurstone.ts';

/** What the sentence is about. */
export interface DiscriminationCount {
  readonly method: DiscriminationMethod;
  readonly correct: number;
  readonly trials: number;
  readonly expectedByGuessing: number;
  readonly significant: boolean;
  readonly minimumCorrect: number | null;
  readonly p: number;
  /** For paired tests: what was asked, such as "sweeter". */
  readonly asked: string | null;
  /** The jar that was chosen (more often), by its label. */
  readonly chosenJar: string | null;
}

/** "about once in 40 times": how often guessing alone would do as well. */
function onceIn(p: number): string {
  if (p >= 0.5) return 'more often than not';
  const times = 1 / p;
  if (times < 10) return `about once in ${times.toFixed(0)} times`;
  const magnitude = 10 ** Math.floor(Math.log10(times) - 1);
  return times > 1e6
    ? 'less than once in a million times'
    : `about once in ${(Math.round(times / magnitude) * magnitude).toLocaleString('en')} times`;
}

const found: Readonly<Record<DiscriminationMethod, string>> = {
  triangle: 'found the odd cup',
  'duo-trio': 'matched the cup with the reference',
  paired: 'chose as expected',
  'paired-two-sided': 'chose the same jar',
};

/**
 * A discrimination test's result in words: the count, what guessing gives, and how often guessing would do as well.
 *
 * Leaves out p-values, and never says that two jars are the same: too few right answers may come from too few tasters.
 *
 * @example discriminationSentence({ method: 'triangle', correct: 9, trials: 12, … }) // '9 of 12 found the odd cup; …'
 */
export function discriminationSentence(count: DiscriminationCount): string {
  const { method, correct, trials } = count;
  const asked =
    method.startsWith('paired') && count.chosenJar !== null
      ? ` (jar ${count.chosenJar}${count.asked === null ? '' : `: ${count.asked}`})`
      : '';
  const opening = `${correct} of ${trials} ${found[method]}${asked}; guessing would give about ${count.expectedByGuessing.toFixed(1).replace('.0', '')}`;
  if (count.significant) {
    return `${opening}. These two jars taste different to this panel: guessing alone would do as well ${onceIn(count.p)}.`;
  }
  const needed =
    count.minimumCorrect === null
      ? 'more answers would be needed to tell anything'
      : `${count.minimumCorrect} of ${trials} would have been needed`;
  return `${opening}. That is not enough to say that these two jars taste different (${needed}), nor that they taste alike.`;
}
