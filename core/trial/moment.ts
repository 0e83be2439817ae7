import { OutOfDomain } from '#core/out-of-domain.ts';

const offsetAtEnd = /(?:Z|([+-])(\d{2}):?(\d{2}))$/;

/**
 * Moves a moment on by a number of hours, keeping the offset it is written with.
 *
 * @param moment ISO 8601 with offset, such as 2026-05-01T09:00:00+02:00
 * @param hours may be negative or broken
 * @returns ISO 8601 to the second, in the same offset
 * @throws OutOfDomain when the moment can't be read
 * @example laterBy('2026-05-01T09:00:00+02:00', 36) // 2026-05-02T21:00:00+02:00
 */
export function laterBy(moment: string, hours: number): string {
  const time = Date.parse(moment);
  const offset = offsetAtEnd.exec(moment);
  if (Number.isNaN(time) || offset === null) throw new OutOfDomain('moment', moment, 'ISO 8601 with an offset');
  const [, sign, hourPart = '00', minutePart = '00'] = offset;
  const offsetMinutes = (sign === '-' ? -1 : 1) * (Number(hourPart) * 60 + Number(minutePart));
  const shifted = new Date(time + Math.round(hours * 3600) * 1000 + offsetMinutes * 60_000);
  const tail = sign === undefined ? 'Z' : `${sign}${hourPart}:${minutePart}`;
  return `${shifted.toISOString().slice(0, 19)}${tail}`;
}

/** Hours from one moment to another; negative when `to` lies before `from`. */
export function hoursBetween(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / 3_600_000;
}
