import type { Factor } from '#core/trial/factor.ts';
import { shownNumber } from '#core/words/figures.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type Sip, type SipMark, sipMarks, sipScale } from './sip-marks.ts';

type Findings = ValueOf<'findings:read'>;
type Score = Findings['scores'][number];

/** One drawn place. A row carries a score, a mean, a sip or a point of the curve; the rest is null. */
export interface FactorRow {
  readonly x: number;
  readonly score: number | null;
  readonly mean: number | null;
  /** Down and up from the mean to the ends of its interval. */
  readonly interval: readonly [number, number] | null;
  readonly fit: number | null;
  readonly band: readonly [number, number] | null;
  readonly sip: number | null;
}

export interface FactorMean {
  readonly level: string;
  readonly x: number;
  readonly n: number;
  readonly mean: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly letters: string | null;
}

/** Where the curve is highest; ends are kept inside the levels tried. */
export interface FactorBest {
  readonly level: number;
  readonly low: number;
  readonly high: number;
}

/** Everything a factor chart draws for one attribute. */
export interface FactorChartData {
  readonly attribute: string;
  readonly isOrdered: boolean;
  readonly hasCurve: boolean;
  readonly rows: readonly FactorRow[];
  readonly means: readonly FactorMean[];
  readonly scoreList: readonly Score[];
  readonly sips: readonly SipMark[];
  /** False where the panel scored on another scale than sips do: then they stand in their table only. */
  readonly areSipsDrawn: boolean;
  readonly best: FactorBest | null;
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
  readonly scores: number;
}

const nothing = { score: null, mean: null, interval: null, fit: null, band: null, sip: null };

/** Where each level stands: at its number when all have one, else one step apart in the trial's order. */
function places(levels: readonly string[], numbers: Findings['levels']): { x: Map<string, number>; ordered: boolean } {
  const ordered = numbers !== null && levels.every((level) => numbers[level] !== undefined);
  return { ordered, x: new Map(levels.map((level, place) => [level, ordered ? (numbers[level] ?? place) : place])) };
}

function smallestGap(values: readonly number[]): number {
  const sorted = [...new Set(values)].sort((a, b) => a - b);
  const gaps = sorted.slice(1).map((value, place) => value - (sorted[place] ?? value));
  return gaps.length === 0 ? 1 : Math.min(...gaps);
}

/** The ends of the score axis: the attribute's scale, that of sips, or what was scored where no scale is known. */
function scaleOf(findings: Findings, attribute: string, scores: readonly number[]): [number, number] {
  const known = findings.scales[attribute];
  if (known !== undefined) return known;
  if (scores.length > 0) return [Math.floor(Math.min(...scores)), Math.ceil(Math.max(...scores))];
  const [low, high] = sipScale(attribute) ?? [0, 10];
  return [low, high];
}

function bestOf(findings: Findings, attribute: string, xs: readonly number[]): FactorBest | null {
  const best = findings.analysis?.attributes.find((one) => one.attribute === attribute)?.trend?.best;
  // Only where the panel is sure that something is best: a curve through luck has a top too.
  if (best == null || attribute !== findings.liking || findings.headline?.winner == null) return null;
  const [first, last] = [Math.min(...xs), Math.max(...xs)];
  return { level: best.level, low: Math.max(first, best.low ?? first), high: Math.min(last, best.high ?? last) };
}

export interface FactorChartOptions {
  readonly factor?: Factor;
  readonly sips?: readonly Sip[];
}

/**
 * Shapes the findings of one attribute for its chart: every score faint in its taster's lane, the means with their 95 % intervals,
 * the curve with its band where the levels are ordered, and the maker's sips apart from all of these.
 *
 * @param levels the trial's levels in their order; a level that was scored but is not listed stands at the end
 */
export function factorChartData(
  findings: Findings,
  attribute: string,
  levels: readonly string[],
  { factor = 'days', sips = [] }: FactorChartOptions = {},
): FactorChartData {
  const own = findings.scores.filter((score) => score.attribute === attribute);
  const analysed = findings.analysis?.attributes.find((one) => one.attribute === attribute);
  const seen = [...own.map(({ sample }) => sample), ...(analysed?.means.map(({ sample }) => sample) ?? [])];
  const all = [...levels, ...new Set(seen.filter((sample) => !levels.includes(sample)))];
  const { x, ordered } = places(all, findings.levels);
  const at = (level: string) => x.get(level) ?? 0;

  const lane = smallestGap([...x.values()]);
  const tasters = [...new Set(findings.scores.map(({ taster }) => taster))].sort();
  const middle = (tasters.length - 1) / 2;
  const offset = (taster: string) =>
    tasters.length < 2 ? 0 : ((tasters.indexOf(taster) - middle) / middle) * lane * 0.16;

  const means = (analysed?.means ?? [])
    .map(({ sample, ...mean }) => ({ level: sample, x: at(sample), ...mean }))
    .sort((a, b) => a.x - b.x);
  const curve = ordered ? (analysed?.trend?.curve ?? []) : [];
  const yDomain = scaleOf(
    findings,
    attribute,
    own.map(({ score }) => score),
  );
  // Beside the mean, so that neither hides the other.
  const aside = means.length === 0 ? 0 : lane * 0.08;
  const marks = sipMarks(sips, attribute, factor, at);
  const scale = sipScale(attribute);
  const areSipsDrawn = marks.length > 0 && scale?.[0] === yDomain[0] && scale[1] === yDomain[1];
  const rows: FactorRow[] = [
    ...own.map(({ sample, taster, score }) => ({ ...nothing, x: at(sample) + offset(taster), score })),
    ...means.map(({ x: place, mean, low, high }) => ({
      ...nothing,
      x: place,
      mean,
      interval: mean === null || low === null || high === null ? null : ([mean - low, high - mean] as const),
    })),
    ...curve.map(({ level, fit, low, high }) => ({
      ...nothing,
      x: level,
      fit,
      band: low === null || high === null ? null : ([low, high] as const),
    })),
    ...(areSipsDrawn ? marks : []).map(({ x: place, value }) => ({ ...nothing, x: place - aside, sip: value })),
  ].sort((a, b) => a.x - b.x);

  const xs = [...x.values()];
  const wide = areSipsDrawn ? [...xs, ...marks.map((mark) => mark.x)] : xs;
  const room = lane * (ordered ? 0.3 : 0.5);
  return {
    attribute,
    isOrdered: ordered,
    hasCurve: curve.length > 0,
    rows,
    means,
    scoreList: own,
    sips: marks,
    areSipsDrawn,
    best: ordered ? bestOf(findings, attribute, xs) : null,
    ticks: all.map((level) => ({ x: at(level), label: ordered ? shownNumber(at(level)) : level })),
    xDomain: [Math.min(...wide) - room, Math.max(...wide) + room],
    yDomain,
    scores: own.length,
  };
}
