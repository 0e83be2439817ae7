import type { AttributeAnalysis } from '#core/panel/panel-analysis.ts';
import { phrase } from '#core/words/phrase.ts';
import { pointsWords, rangeWords } from './finding-words.ts';

/** A level and its mean. */
export interface Ranked {
  readonly sample: string;
  readonly mean: number;
}

/** The levels that have a mean, the highest first. */
export function rankedMeans({ means }: AttributeAnalysis): Ranked[] {
  return means
    .flatMap(({ sample, mean }) => (mean === null ? [] : [{ sample, mean }]))
    .sort((one, other) => other.mean - one.mean);
}

/** The 95 % interval of the leader's distance from another: Dunnett's against the control, else Tukey's. */
function leadInterval(liking: AttributeAnalysis, top: string, other: string, isControl: boolean): string {
  const against = isControl ? liking.versusControl?.find(({ sample }) => sample === top) : undefined;
  const pair = liking.pairs?.find(({ a, b }) => (a === top && b === other) || (a === other && b === top));
  const [low, high] =
    against !== undefined
      ? [against.low, against.high]
      : pair === undefined
        ? [null, null]
        : pair.a === top
          ? [pair.low, pair.high]
          : [-pair.high, -pair.low];
  return low === null || high === null ? '' : phrase` (95 % interval ${rangeWords(low, high)})`;
}

/** "0.8 points above “2 days”, the control (95 % interval …)": whom the leader is held against. */
export function leadWords(liking: AttributeAnalysis, ranked: readonly Ranked[], control: string | null): string {
  const [top, second] = ranked;
  const other = ranked.find(({ sample }) => sample === control && sample !== top?.sample) ?? second;
  if (top === undefined || other === undefined) return '';
  const isControl = other.sample === control;
  const name = isControl ? phrase`“${other.sample}”, the control` : phrase`the next, “${other.sample}”`;
  const lead = top.mean - other.mean;
  if (lead < 0.05) return phrase`, level with ${name}`;
  return phrase`, ${pointsWords(lead)} above ${name}${leadInterval(liking, top.sample, other.sample, isControl)}`;
}
