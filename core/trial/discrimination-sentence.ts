import type { DiscriminationMethod } from '#core/panel/apart/thurstone.ts';
import { counting, fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';

/** What the sentence is about. */
export interface DiscriminationCount {
  readonly method: DiscriminationMethod;
  readonly correct: number;
  readonly trials: number;
  /** How many people gave these answers. */
  readonly tasters: number;
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
  if (p >= 0.5) return phrase`more often than not`;
  const times = 1 / p;
  if (times < 10) return phrase`about once in ${fixed(times, 0)} times`;
  const magnitude = 10 ** Math.floor(Math.log10(times) - 1);
  return times > 1e6
    ? phrase`less than once in a million times`
    : phrase`about once in ${counting(Math.round(times / magnitude) * magnitude)} times`;
}

const found: Readonly<Record<DiscriminationMethod, string>> = {
  get triangle() {
    return phrase`found the odd cup`;
  },
  get 'duo-trio'() {
    return phrase`matched the cup with the reference`;
  },
  get paired() {
    return phrase`chose as expected`;
  },
  get 'paired-two-sided'() {
    return phrase`chose the same jar`;
  },
};

/** Of whom the finding speaks: of a panel, or of one or two people and nobody else. */
function towards(tasters: number): string {
  if (tasters > 2) return phrase`to this panel`;
  return tasters === 2 ? phrase`to these two tasters` : phrase`to this taster`;
}

const beyond: Readonly<Record<number, string>> = {
  get 1() {
    return phrase` Whether anybody else would notice, one taster can’t tell.`;
  },
  get 2() {
    return phrase` Whether anybody else would notice, two tasters can’t tell.`;
  },
};

/**
 * A discrimination test's result in words: the count, what guessing gives, and how often guessing would do as well.
 *
 * With one or two tasters it speaks of them alone.
 * Leaves out p-values, and never says that two jars are the same: too few right answers may come from too few tasters.
 *
 * @param count tasters at least 1, trials at least tasters
 * @example discriminationSentence({ method: 'triangle', correct: 9, trials: 12, … }) // '9 of 12 found the odd cup; …'
 */
export function discriminationSentence(count: DiscriminationCount): string {
  const { method, correct, trials, tasters } = count;
  const asked =
    method.startsWith('paired') && count.chosenJar !== null
      ? phrase` (jar ${count.chosenJar}${count.asked === null ? '' : `: ${count.asked}`})`
      : '';
  const counted = tasters < trials ? phrase`${trials} answers` : String(trials);
  const byLuck = `${fixed(count.expectedByGuessing, 1).replace(/[.,]0$/, '')}${method === 'paired-two-sided' ? phrase` each` : ''}`;
  const opening = phrase`${correct} of ${counted} ${found[method]}${asked}; guessing would give about ${byLuck}`;
  const others = beyond[tasters] ?? '';
  if (count.significant) {
    return phrase`${opening}. These two jars taste different ${towards(tasters)}: guessing alone would do as well ${onceIn(count.p)}.${others}`;
  }
  const needed =
    count.minimumCorrect === null
      ? phrase`more answers would be needed to tell anything`
      : phrase`${count.minimumCorrect} of ${trials} would have been needed`;
  return phrase`${opening}. That is not enough to say that these two jars taste different (${needed}), nor that they taste alike.${others}`;
}
