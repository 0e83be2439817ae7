import { comparedAt_C } from '#core/ferment/equivalent-hours.ts';
import { leastReadings } from '#core/ferment/sugar-decline.ts';
import { formatQuantity } from '#core/units/format-quantity.ts';
import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Course, CourseMeasure } from '#renderer/charts/course-chart-data.ts';
import { counted } from '#renderer/format/counted.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { joined } from '#renderer/format/words.ts';

/** Hours as a person says them: to the half hour under a day, whole above. */
export function hoursWords(hours: number): string {
  return phrase`${hours < 24 ? Number((Math.round(hours * 2) / 2).toFixed(1)) : Math.round(hours)} h`;
}

function rangeWords(low: number | null, high: number | null): string {
  if (low === null && high === null) return phrase`the readings leave both ends open`;
  if (low === null) return phrase`at the latest ${hoursWords(high ?? 0)}; the readings leave the early end open`;
  if (high === null) return phrase`at the earliest ${hoursWords(low)}; the readings leave the late end open`;
  return phrase`${hoursWords(Math.max(0, low))} to ${hoursWords(high)}`;
}

/** When a jar is as sweet as wanted, with its doubt; or what is missing. */
export function sweetWords({ brix, sweetEnough, reasons }: Course, wanted_brix: number): string {
  if (sweetEnough !== null) {
    return phrase`${formatQuantity(wanted_brix, 'brix', 'metric')} after about ${hoursWords(sweetEnough.hours)} (95 %: ${rangeWords(sweetEnough.low, sweetEnough.high)}).`;
  }
  const code = reasons.at(-1)?.code;
  if (code === 'no-decline') return phrase`The readings don’t fall, so no time can be told.`;
  if (code === 'target-not-reached') return phrase`Not between what it had at the start and what it will reach soon.`;
  return phrase`Not enough readings: ${counted(brix.length, 'sugar reading')}, at least ${leastReadings} at different hours are needed.`;
}

/** A range of hours, once where both ends sound alike. */
export function equivalentWords({ low, high }: { readonly low: number; readonly high: number }): string {
  return hoursWords(low) === hoursWords(high)
    ? phrase`about ${hoursWords(low)}`
    : phrase`${hoursWords(low)} to ${hoursWords(high)}`;
}

/** How long a jar stood, and what that comes to at the temperature jars are compared at; null before its start. */
export function stoodWords({ stood }: Course, { temperature }: Measures): string | null {
  if (stood === null) return null;
  return phrase`Stood ${hoursWords(stood.hours)}; that did as much as ${equivalentWords(stood.equivalent)} at ${temperature(comparedAt_C)}.`;
}

const shown: Readonly<Record<CourseMeasure, (value: number, measures: Measures) => string>> = {
  sugar: (value) => phrase`${fixed(value, 1)} °Bx`,
  ph: (value) => phrase`pH ${Number(value.toFixed(2))}`,
  temperature: (value, measures) => measures.temperature(value),
};

const readingsOf: Readonly<Record<CourseMeasure, (course: Course) => Course['brix']>> = {
  sugar: ({ brix }) => brix,
  ph: ({ ph }) => ph,
  temperature: ({ temperature_C }) => temperature_C,
};

/** What the readings of one measure say, in one sentence; null where there are none. */
export function courseSentence(jars: readonly Course[], measure: CourseMeasure, measures: Measures): string | null {
  const read = jars.filter((course) => readingsOf[measure](course).length > 0);
  const [only] = read;
  if (only === undefined) return null;
  const say = (value: number) => shown[measure](value, measures);
  if (read.length === 1) {
    const points = readingsOf[measure](only);
    const [first, last] = [points[0], points.at(-1)];
    const who = jars.length === 1 ? '' : phrase`Jar ${only.label}: `;
    if (first === undefined || last === undefined) return null;
    return points.length === 1
      ? phrase`${who}${say(first.value)} at ${hoursWords(first.hours)}.`
      : phrase`${who}${say(first.value)} at ${hoursWords(first.hours)}, ${say(last.value)} at ${hoursWords(last.hours)}.`;
  }
  const latest = read.flatMap((course) => readingsOf[measure](course).at(-1)?.value ?? []);
  const [lowest, highest] = [say(Math.min(...latest)), say(Math.max(...latest))];
  return lowest === highest
    ? phrase`At their last readings all jars stand at ${lowest}.`
    : phrase`At their last readings the jars lie between ${lowest} and ${highest}.`;
}

/** Which jars have a fitted fall and which still want readings. */
export function fittedSentence(jars: readonly Course[]): string | null {
  const some = jars.filter(({ brix }) => brix.length > 0);
  if (some.length === 0) return null;
  const fitted = some.filter(({ fall }) => fall !== null);
  const short = some.filter(({ reasons }) => reasons.some(({ code }) => code === 'too-few-readings'));
  if (jars.length === 1) {
    return fitted.length === 1
      ? phrase`The line is the fitted fall, the band its 95 % interval.`
      : short.length === 1
        ? phrase`From ${leastReadings} readings on, the fall is fitted.`
        : phrase`The readings don’t fall: nothing is fitted.`;
  }
  const names = (list: readonly Course[]) => joined(list.map(({ label }) => label));
  return [
    ...(fitted.length > 0 ? [phrase`Fitted, with 95 % bands: ${names(fitted)}.`] : []),
    ...(short.length > 0 ? [phrase`Too few readings (under ${leastReadings}): ${names(short)}.`] : []),
  ].join(' ');
}
