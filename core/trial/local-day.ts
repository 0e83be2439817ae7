import { OutOfDomain } from '#core/out-of-domain.ts';

interface LocalTime {
  readonly day: string;
  readonly hour: number;
  readonly minute: number;
}

const day_ms = 86_400_000;
const formats = new Map<string, Intl.DateTimeFormat>();

function formatOf(zone: string): Intl.DateTimeFormat {
  let format = formats.get(zone);
  if (format === undefined) {
    try {
      format = new Intl.DateTimeFormat('en-CA', {
        timeZone: zone,
        hourCycle: 'h23',
        year: 'numeric',
        month: '2-digit',
        day: '2-digit',
        hour: '2-digit',
        minute: '2-digit',
        second: '2-digit',
      });
    } catch {
      throw new OutOfDomain('zone', zone, 'a time zone such as Europe/Berlin');
    }
    formats.set(zone, format);
  }
  return format;
}

function partsOf(time: number, zone: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    formatOf(zone)
      .formatToParts(time)
      .map(({ type, value }) => [type, value]),
  );
}

/**
 * A moment as the kitchen's own calendar and clock show it.
 *
 * Method: the language's own time zone tables (ECMA-402). Leaves out years beyond four digits.
 *
 * @param moment ISO 8601 with offset
 * @param zone a time zone by its IANA name
 * @returns the day as YYYY-MM-DD, and the hour and minute on the wall
 * @throws OutOfDomain when the moment or the zone can't be read
 * @example localTime('2026-05-01T22:30:00Z', 'Europe/Berlin') // { day: '2026-05-02', hour: 0, minute: 30 }
 */
export function localTime(moment: string, zone: string): LocalTime {
  const time = Date.parse(moment);
  if (Number.isNaN(time)) throw new OutOfDomain('moment', moment, 'ISO 8601 with an offset');
  const { year = '', month = '', day = '', hour = '', minute = '' } = partsOf(time, zone);
  return { day: `${year}-${month}-${day}`, hour: Number(hour), minute: Number(minute) };
}

/** How far a zone's wall clock is ahead of UTC at an instant, in milliseconds. */
function ahead_ms(time: number, zone: string): number {
  const { year, month, day, hour, minute, second } = partsOf(time, zone);
  const wall = Date.UTC(Number(year), Number(month) - 1, Number(day), Number(hour), Number(minute), Number(second));
  return wall - Math.floor(time / 1000) * 1000;
}

/**
 * The instant at which a wall clock shows an hour on a day.
 *
 * Method: the wall time is read as UTC and moved by the zone's offset, once with the offset of the day before and once with that of the
 * day after. An hour that the clock skips in spring is the same span after midnight, so it comes out later by the skip; an hour that it
 * shows twice in autumn is the first of the two (as Temporal's "compatible").
 *
 * @param day YYYY-MM-DD
 * @param hour 0–23
 * @param minute 0–59
 * @param zone a time zone by its IANA name
 * @returns ISO 8601 in UTC, with milliseconds
 * @throws OutOfDomain when the day or the zone can't be read
 * Source: TC39 Temporal, disambiguation "compatible" (from memory).
 * @example momentOf('2026-03-29', 9, 0, 'Europe/Berlin') // '2026-03-29T07:00:00.000Z'
 */
export function momentOf(day: string, hour: number, minute: number, zone: string): string {
  const midnight = Date.parse(`${day}T00:00:00Z`);
  if (Number.isNaN(midnight)) throw new OutOfDomain('day', day, 'YYYY-MM-DD');
  const wall = midnight + hour * 3_600_000 + minute * 60_000;
  const before = ahead_ms(wall - day_ms, zone);
  const after = ahead_ms(wall + day_ms, zone);
  const fits = [before, after].map((ahead) => wall - ahead).filter((time) => time + ahead_ms(time, zone) === wall);
  return new Date(fits[0] ?? wall - before).toISOString();
}

/**
 * A day so many days on, by the calendar.
 *
 * @param day YYYY-MM-DD
 * @param days whole, may be negative
 * @throws OutOfDomain when the day can't be read
 * @example dayAfter('2026-02-28', 1) // '2026-03-01'
 */
export function dayAfter(day: string, days: number): string {
  const midnight = Date.parse(`${day}T00:00:00Z`);
  if (Number.isNaN(midnight)) throw new OutOfDomain('day', day, 'YYYY-MM-DD');
  return new Date(midnight + days * day_ms).toISOString().slice(0, 10);
}
