import type { AttributeAnalysis } from '#core/panel/panel-analysis.ts';
import type { ReasonCode } from '#core/reason.ts';
import { phrase } from '#core/words/phrase.ts';
import { bestLevelWords } from './best-level-words.ts';
import { type Factor, factorUnits } from './factor.ts';
import { type FindingFrame, speaksOfLevels, sureEnough } from './finding-frame.ts';
import { capitalised, pointsWords, rangeWords, scoreWords } from './finding-words.ts';
import { unseenGap } from './unseen-gap.ts';

export type { FindingFrame } from './finding-frame.ts';

const perUnit: Partial<Record<Factor, string>> = {
  get days() {
    return phrase`a day`;
  },
  get amount() {
    return phrase`for every 10 g`;
  },
  get temperature() {
    return phrase`for every degree`;
  },
};
/** The reasons that leave a whole attribute untold. */
const tellingNothing: readonly ReasonCode[] = ['one-taster', 'one-sample', 'too-few-scores', 'no-variation'];
const unitsInStep: Partial<Record<Factor, number>> = { amount: 10 };

/** "Tang rises by 1.6 points a day (95 % interval 1.3 to 1.9)", where the slope stands clear of zero. */
function trendSentence(attribute: AttributeAnalysis, frame: FindingFrame, where: string): string | null {
  const { trend } = attribute;
  if (trend === null || trend.slopeLow === null || trend.slopeHigh === null) return null;
  if (trend.slopeLow <= 0 && trend.slopeHigh >= 0) return null;
  const steps = unitsInStep[frame.factor] ?? 1;
  const ends = [trend.slopeLow * steps, trend.slopeHigh * steps].map(Math.abs);
  const verb = trend.slope > 0 ? phrase`rises` : phrase`falls`;
  const unit = perUnit[frame.factor] ?? phrase`for every ${factorUnits[frame.factor] ?? phrase`step`}`;
  const interval = rangeWords(Math.min(...ends), Math.max(...ends));
  return phrase`${capitalised(attribute.attribute)} ${verb} by about ${pointsWords(trend.slope * steps)} ${unit}${where} (95 % interval ${interval}).`;
}

function differenceSentence(attribute: AttributeAnalysis, where: string): string | null {
  const ranked = attribute.means
    .flatMap(({ sample, mean }) => (mean === null ? [] : [{ sample, mean }]))
    .sort((a, b) => b.mean - a.mean);
  const [top] = ranked;
  const bottom = ranked.at(-1);
  if (top === undefined || bottom === undefined || top.sample === bottom.sample) return null;
  const against = attribute.pairs?.find(
    ({ a, b }) => (a === top.sample && b === bottom.sample) || (a === bottom.sample && b === top.sample),
  );
  const interval =
    against === undefined
      ? ''
      : against.a === top.sample
        ? phrase` (95 % interval ${rangeWords(against.low, against.high)})`
        : phrase` (95 % interval ${rangeWords(-against.high, -against.low)})`;
  return phrase`${capitalised(attribute.attribute)} was highest in “${top.sample}” (${scoreWords(top.mean)}) and lowest in “${bottom.sample}” (${scoreWords(bottom.mean)})${where}: ${pointsWords(top.mean - bottom.mean)} apart${interval}.`;
}

/** What stands clear alone but not among all that was asked about. */
function nearlySentence(attribute: AttributeAnalysis, where: string): string {
  return phrase`A hint at most in ${attribute.attribute}${where}: taken alone it would stand clear, but among this many attributes luck easily sets one apart.`;
}

/** Where nothing stood out: what this panel could have seen. */
function unseenSentence(attribute: AttributeAnalysis, where: string): string {
  const opening = phrase`Nothing clear showed in ${attribute.attribute}${where}`;
  const gap = unseenGap(attribute);
  if (gap === null) return `${opening}.`;
  return phrase`${opening}; with ${attribute.tasters} tasters only a gap of about ${pointsWords(gap)} or more would most likely have shown.`;
}

/**
 * One attribute's finding in a sentence a cook understands: direction, size in scale points, its doubt.
 *
 * Method: on an ordered factor the slope where its interval is clear of zero, unless there is a best level between the ends; else
 * the highest against the lowest when the test over all samples is clear at 5 %; else what the panel could have seen (80 % power).
 * Leaves out p-values, and never says that nothing differs.
 *
 * @param chance of the test over all samples, adjusted for the number of attributes; the attribute's own when it is left out
 */
export function findingSentence(
  attribute: AttributeAnalysis,
  frame: FindingFrame,
  chance: number | null = attribute.test?.p ?? null,
): string {
  const where = speaksOfLevels(attribute, frame) ? '' : phrase` in these jars`;
  if (attribute.test === null || chance === null) {
    const needs = attribute.reasons.find(({ code }) => tellingNothing.includes(code))?.needs;
    return needs === undefined
      ? phrase`What ${attribute.attribute} did can’t be told${where}.`
      : phrase`What ${attribute.attribute} did can’t be told${where}; it needs ${needs.replace(/\.$/, '')}.`;
  }
  if (chance >= sureEnough) {
    return attribute.test.p < sureEnough ? nearlySentence(attribute, where) : unseenSentence(attribute, where);
  }
  const best = attribute.trend === null ? null : bestLevelWords(attribute.trend, frame.factor);
  // A slope through a hump says little: then the highest and the lowest speak.
  const trend = best === null ? trendSentence(attribute, frame, where) : null;
  const said = trend ?? differenceSentence(attribute, where) ?? unseenSentence(attribute, where);
  return best === null ? said : phrase`${said} The curve is highest ${best}.`;
}
