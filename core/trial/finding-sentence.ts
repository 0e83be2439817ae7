import type { AttributeAnalysis } from '#core/panel/panel-analysis.ts';
import { detectableDifference } from '#core/panel/panel-power.ts';
import { type Factor, factorUnits } from './factor.ts';

/** What the sentence must know of the trial besides the numbers. */
export interface FindingFrame {
  readonly factor: Factor;
  readonly control: string | null;
  /** Jars of each level: with one, the sentence speaks of these jars and no further. */
  readonly replicates: number;
}

const sureEnough = 0.05;

function points(value: number): string {
  const size = Math.abs(value).toFixed(1);
  return `${size} point${size === '1.0' ? '' : 's'}`;
}

function range(low: number, high: number): string {
  return `${low.toFixed(1)} to ${high.toFixed(1)}`;
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}

const perUnit: Partial<Record<Factor, string>> = {
  days: 'a day',
  amount: 'for every 10 g',
  temperature: 'for every degree',
};
const unitsInStep: Partial<Record<Factor, number>> = { amount: 10 };

/** "Tang rises by 1.6 points a day (95 % interval 1.3 to 1.9)", where the slope stands clear of zero. */
function trendSentence(attribute: AttributeAnalysis, frame: FindingFrame, where: string): string | null {
  const { trend } = attribute;
  if (trend === null || trend.slopeLow === null || trend.slopeHigh === null) return null;
  if (trend.slopeLow <= 0 && trend.slopeHigh >= 0) return null;
  const steps = unitsInStep[frame.factor] ?? 1;
  const [low, high] = [trend.slopeLow * steps, trend.slopeHigh * steps].map(Math.abs).sort((a, b) => a - b) as [
    number,
    number,
  ];
  const verb = trend.slope > 0 ? 'rises' : 'falls';
  const unit = perUnit[frame.factor] ?? `for every ${factorUnits[frame.factor] ?? 'step'}`;
  return `${capital(attribute.attribute)} ${verb} by about ${points(trend.slope * steps)} ${unit}${where} (95 % interval ${range(low, high)}).`;
}

function bestSentence(attribute: AttributeAnalysis, frame: FindingFrame): string {
  const best = attribute.trend?.best;
  if (best == null) return '';
  const unit = factorUnits[frame.factor] ?? '';
  const interval = best.low !== null && best.high !== null ? ` (95 % interval ${range(best.low, best.high)})` : '';
  return ` It is highest near ${best.level.toFixed(1)} ${unit}${interval}.`;
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
        ? ` (95 % interval ${range(against.low, against.high)})`
        : ` (95 % interval ${range(-against.high, -against.low)})`;
  return `${capital(attribute.attribute)} was highest in “${top.sample}” (${top.mean.toFixed(1)}) and lowest in “${bottom.sample}” (${bottom.mean.toFixed(1)})${where}: ${points(top.mean - bottom.mean)} apart${interval}.`;
}

/** Where nothing stood out: what this panel could have seen. */
function unseenSentence(attribute: AttributeAnalysis, where: string): string {
  const { variances, samples, tasters } = attribute;
  const opening = `Nothing clear showed in ${attribute.attribute}${where}`;
  if (variances.error === null || !(variances.error > 0) || samples < 2 || tasters < 2) return `${opening}.`;
  const errorSd = Math.sqrt(variances.error + (variances.tasterBySample ?? 0));
  const gap = detectableDifference({ samples, tasters, replicates: 1, errorSd, alpha: sureEnough }, 0.8);
  return `${opening}; with ${tasters} tasters only a gap of about ${points(gap)} or more would most likely have shown.`;
}

/**
 * One attribute's finding in a sentence a cook understands: direction, size in scale points, its doubt.
 *
 * Method: on an ordered factor the slope where its interval is clear of zero, with the best level of liking when there is one; else
 * the highest against the lowest when the test over all samples is clear at 5 %; else what the panel could have seen (80 % power).
 * Leaves out p-values, and never says that nothing differs.
 */
export function findingSentence(attribute: AttributeAnalysis, frame: FindingFrame): string {
  const where = frame.replicates === 1 ? ' in these jars' : '';
  if (attribute.test === null) {
    const needs = attribute.reasons[0]?.needs;
    return `What ${attribute.attribute} did can’t be told${where}${needs === undefined ? '' : `: ${needs.replace(/\.$/, '')}`}.`;
  }
  const clear = attribute.test.p < sureEnough;
  const trend = clear ? trendSentence(attribute, frame, where) : null;
  const said = trend ?? (clear ? differenceSentence(attribute, where) : null) ?? unseenSentence(attribute, where);
  return clear ? said + bestSentence(attribute, frame) : said;
}
