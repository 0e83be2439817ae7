import { sugarSolution } from '#core/ferment/sugar-solution.ts';
import { inUnitOf, type MeasureSystem } from '#core/units/format-quantity.ts';
import { units } from '#core/units/unit-table.ts';
import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { axisTicks } from './axis-ticks.ts';

export type Course = ValueOf<'course:read'>['jars'][number];
export type CourseMeasure = 'sugar' | 'ph' | 'temperature';

export const markShapes = ['circle', 'square', 'triangle', 'diamond', 'cross', 'downward', 'plus', 'hexagon'] as const;
export type MarkShape = (typeof markShapes)[number];

const colours = ['tang', 'liking', 'fizz', 'sweetness', 'other'] as const;

/** One jar in a course chart: its readings, its fitted fall, how it is drawn. */
export interface CourseSeries {
  readonly jar: string;
  readonly label: string;
  readonly level: string;
  readonly colour: string;
  readonly shape: MarkShape;
  readonly points: readonly { readonly hours: number; readonly value: number }[];
  readonly fall: Course['fall'];
  readonly sweetEnough: Course['sweetEnough'];
}

/** A place on the axis of hours where jars left the shelf. */
export interface PullMark {
  readonly hours: number;
  readonly labels: string;
}

/** Everything a course chart draws of one measure. */
export interface CourseChartData {
  readonly measure: CourseMeasure;
  readonly title: string;
  readonly unit: string;
  readonly decimals: number;
  readonly series: readonly CourseSeries[];
  readonly pulls: readonly PullMark[];
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  /** A line that readings are held against. */
  readonly line: { readonly value: number; readonly words: string } | null;
}

const titles: Readonly<Record<CourseMeasure, string>> = {
  sugar: phrase`Sugar`,
  ph: 'pH',
  temperature: phrase`Temperature`,
};
const acidLine_pH = 4.6;

/** How a jar is drawn in every chart of its trial: colour and shape together tell it apart. */
export function drawnAs(position: number): { readonly colour: string; readonly shape: MarkShape } {
  return {
    colour: `var(--chart-${colours[position % colours.length] ?? 'other'})`,
    shape: markShapes[position % markShapes.length] ?? 'circle',
  };
}

/** The steps that an axis of hours may take. */
const hourSteps = [1, 2, 3, 6, 12, 24, 48, 96, 168, 336, 720];

/** Ticks for everything that these jars show, so that all their charts share one axis of hours. */
export function hourTicks(jars: readonly Course[], also: readonly number[] = []): number[] {
  const hours = jars.flatMap(({ brix, ph, temperature_C, events }) =>
    [...brix, ...ph, ...temperature_C, ...events].map((one) => one.hours),
  );
  const last = Math.max(12, ...hours);
  return axisTicks(Math.min(0, ...hours), Math.max(last, ...also.filter((one) => one <= 2 * last)), hourSteps, 6);
}

function pullsOf(jars: readonly Course[]): PullMark[] {
  const pulls = jars.flatMap(({ label, events }) =>
    events.flatMap(({ hours, what }) => (what === 'pulled' ? [{ label, hours }] : [])),
  );
  return [...Map.groupBy(pulls, ({ hours }) => Math.round(hours * 2) / 2)].map(([hours, own]) => ({
    hours,
    labels: own.map(({ label }) => label).join(', '),
  }));
}

interface CourseChartAbout {
  readonly measures: MeasureSystem;
  readonly wanted_brix: number | null;
}

/** What an axis shows at least, so that readings which never moved lie in its middle and a tenth does not look like a fall. */
const leastSpan = { ph: 0.4, temperature: 4 } as const;

function atLeast(span: number, low: number, high: number): readonly [number, number] {
  const lack = Math.max(0, span - (high - low)) / 2;
  return [low - lack, high + lack];
}

/**
 * What a course chart draws of one measure of these jars.
 *
 * @param jars from `course:read`, in the order of their trial: a jar keeps its colour and shape in every chart
 * @param shown the jars to draw; the others only keep their place
 */
export function courseChartData(
  jars: readonly Course[],
  shown: readonly string[],
  measure: CourseMeasure,
  { measures, wanted_brix }: CourseChartAbout,
): CourseChartData {
  const inFahrenheit = measure === 'temperature' && measures === 'us';
  const drawn = jars.filter(({ jar }) => shown.includes(jar));
  const series = jars.flatMap((one, position): CourseSeries[] => {
    if (!shown.includes(one.jar)) return [];
    const own = { sugar: one.brix, ph: one.ph, temperature: one.temperature_C }[measure];
    if (own.length === 0) return [];
    return [
      {
        jar: one.jar,
        label: one.label,
        level: one.level,
        ...drawnAs(position),
        points: own.map(({ hours, value }) => ({
          hours,
          value: inFahrenheit ? inUnitOf(value, units.fahrenheit) : value,
        })),
        fall: measure === 'sugar' ? one.fall : null,
        sweetEnough: measure === 'sugar' ? one.sweetEnough : null,
      },
    ];
  });
  const line =
    measure === 'ph'
      ? { value: acidLine_pH, words: phrase`pH ${4.6}` }
      : measure === 'sugar' && wanted_brix !== null
        ? { value: wanted_brix, words: phrase`wanted` }
        : null;
  const values = series.flatMap(({ points }) => points.map(({ value }) => value));
  const highest = series.flatMap(({ fall }) => (fall?.curve ?? []).flatMap(({ high }) => high ?? []));
  // A band that widens without end would flatten the readings: it is cut at half again the highest one.
  const top = Math.min(Math.max(...values, ...highest), 1.5 * Math.max(...values));
  const [from, to] =
    measure === 'sugar' ? [0, top] : atLeast(leastSpan[measure], Math.min(...values), Math.max(...values));
  const sweet = series.flatMap(({ sweetEnough }) => sweetEnough?.hours ?? []);
  return {
    measure,
    title: titles[measure],
    unit: { sugar: '°Bx', ph: 'pH', temperature: inFahrenheit ? '°F' : '°C' }[measure],
    decimals: measure === 'ph' ? 2 : 1,
    series,
    pulls: pullsOf(drawn),
    xTicks: hourTicks(drawn, sweet),
    yTicks: axisTicks(from, to, [0.1, 0.2, 0.5, 1, 2, 5, 10, 20], 5),
    line,
  };
}

/** The same strength as specific gravity. */
export function asGravity(brix: number): string {
  return fixed(sugarSolution({ brix }).sg, 3);
}
