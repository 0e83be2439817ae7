import { laterBy } from './moment.ts';
import type { Calendar } from './plan-input.ts';

/** When a jar starts and when it is pulled. */
export interface JarDates {
  readonly start: string;
  readonly pull: string;
}

/**
 * A jar's dates under one of the two calendars.
 *
 * Staggered pull: all jars start together, each is pulled when its days are up (the early ones wait in the cold).
 * Staggered start: the longest starts first and all are pulled together (the late ones get older base).
 *
 * @param start when the first jar starts, ISO 8601 with offset
 * @param days this jar's days
 * @param longest the longest days of any jar in the trial
 */
export function jarDates(calendar: Calendar, start: string, days: number, longest: number): JarDates {
  if (calendar === 'staggered-pull') return { start, pull: laterBy(start, days * 24) };
  return { start: laterBy(start, (longest - days) * 24), pull: laterBy(start, longest * 24) };
}
