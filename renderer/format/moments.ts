import { laidWords } from '#core/words/laid-words.ts';
import { counted } from './counted.ts';
import { hasTwelveHours } from './window-ways.ts';

// Moments the way a kitchen says them. The clock is passed in.

const forms = {
  day: { weekday: 'short', day: 'numeric', month: 'short' },
  dayWithYear: { day: 'numeric', month: 'short', year: 'numeric' },
  wholeDay: { weekday: 'long', day: 'numeric', month: 'long' },
  weekday: { weekday: 'short' },
  dayOfMonth: { day: 'numeric', month: 'short' },
  time24: { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' },
  time12: { hour: 'numeric', minute: '2-digit', hour12: true },
} as const satisfies Record<string, Intl.DateTimeFormatOptions>;

const made = new Map<string, Intl.DateTimeFormat>();

/** Days and hours are said in the language of the words around them. */
function inForm(name: keyof typeof forms, at: Date | number): string {
  const language = laidWords()?.language ?? 'en-GB';
  const key = `${language} ${name}`;
  let format = made.get(key);
  if (format === undefined) {
    format = new Intl.DateTimeFormat(language, forms[name]);
    made.set(key, format);
  }
  return format.format(at);
}

function clockWords(at: Date): string {
  return inForm(hasTwelveHours() ? 'time12' : 'time24', at);
}

/** @example weekdayWords(Date.parse('2026-05-12T09:00:00Z')) // 'Tue' */
export function weekdayWords(at: number): string {
  return inForm('weekday', at);
}

/** @example dayOfMonthWords(Date.parse('2026-05-12T09:00:00Z')) // '12 May' */
export function dayOfMonthWords(at: number): string {
  return inForm('dayOfMonth', at);
}

/** @example wholeDayWords(Date.parse('2026-05-12T09:00:00Z')) // 'Tuesday 12 May' */
export function wholeDayWords(at: number): string {
  return inForm('wholeDay', at);
}

/** @example dayWords('2026-05-12T09:00:00Z') // 'Tue 12 May' */
export function dayWords(moment: string): string {
  return inForm('day', new Date(moment));
}

/** With its year, for things that are looked up much later. */
export function dateWords(moment: string): string {
  return inForm('dayWithYear', new Date(moment));
}

/** @example dayAndTime('2026-05-12T09:00:00Z') // 'Tue 12 May, 09:00' in London's winter */
export function dayAndTime(moment: string): string {
  const at = new Date(moment);
  return `${inForm('day', at)}, ${clockWords(at)}`;
}

export function timeWords(moment: string): string {
  return clockWords(new Date(moment));
}

/** How long, in the largest unit that still says something. @example spanWords(50) // '2 days' */
export function spanWords(hours: number): string {
  const minutes = Math.round(hours * 60);
  if (minutes < 60) return counted(minutes, 'minute');
  const whole = Math.round(hours);
  return whole < 48 ? counted(whole, 'hour') : counted(Math.round(hours / 24), 'day');
}

/** A planned span as it is meant: whole days where it is such, else hours. @example plannedSpanWords(36) // '36 hours' */
export function plannedSpanWords(hours: number): string {
  return hours > 0 && hours % 24 === 0 ? counted(hours / 24, 'day') : counted(Math.round(hours), 'hour');
}

/** Whether two moments fall on one day of this machine's calendar. */
export function isSameDay(a: number, b: number): boolean {
  return new Date(a).toDateString() === new Date(b).toDateString();
}

/** Whole days since a jar started: its first day is day 0. */
export function dayOfJar(startedAt: string, now: number): number {
  return Math.max(0, Math.floor((now - Date.parse(startedAt)) / 86_400_000));
}
