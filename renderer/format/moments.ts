import { counted } from './counted.ts';
import { hasTwelveHours } from './window-ways.ts';

// Moments the way a kitchen says them. The clock is passed in.

const day = new Intl.DateTimeFormat('en-GB', { weekday: 'short', day: 'numeric', month: 'short' });
const dayWithYear = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });
const time24 = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });
const time12 = new Intl.DateTimeFormat('en-GB', { hour: 'numeric', minute: '2-digit', hour12: true });

function clockWords(at: Date): string {
  return (hasTwelveHours() ? time12 : time24).format(at);
}

/** @example dayWords('2026-05-12T09:00:00Z') // 'Tue 12 May' */
export function dayWords(moment: string): string {
  return day.format(new Date(moment));
}

/** With its year, for things that are looked up much later. */
export function dateWords(moment: string): string {
  return dayWithYear.format(new Date(moment));
}

/** @example dayAndTime('2026-05-12T09:00:00Z') // 'Tue 12 May, 09:00' in London's winter */
export function dayAndTime(moment: string): string {
  const at = new Date(moment);
  return `${day.format(at)}, ${clockWords(at)}`;
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

/** Whether two moments fall on one day of this machine's calendar. */
export function isSameDay(a: number, b: number): boolean {
  return new Date(a).toDateString() === new Date(b).toDateString();
}

/** Whole days since a jar started: its first day is day 0. */
export function dayOfJar(startedAt: string, now: number): number {
  return Math.max(0, Math.floor((now - Date.parse(startedAt)) / 86_400_000));
}
