import { dayAfter, localTime, momentOf } from './local-day.ts';

/** The hour that "tonight" means, and the hour at which tomorrow begins in a kitchen. Common practice, no source. */
export const evening_hour = 19;
export const morning_hour = 8;

/**
 * Until when something is put off.
 *
 * Method: an hour is sixty minutes; tonight is 19:00 on the wall clock, or two hours on where that is past; tomorrow is 08:00 of the next
 * calendar day.
 *
 * @param now ISO 8601 with offset
 * @param zone a time zone by its IANA name
 * @returns ISO 8601 in UTC
 * @throws OutOfDomain when the moment or the zone can't be read
 * @example putOffUntil('tomorrow', '2026-05-01T20:00:00Z', 'UTC') // '2026-05-02T08:00:00.000Z'
 */
export function putOffUntil(span: 'hour' | 'tonight' | 'tomorrow', now: string, zone: string): string {
  const after = (hours: number) => new Date(Date.parse(now) + hours * 3_600_000).toISOString();
  const { day, hour } = localTime(now, zone);
  if (span === 'hour') return after(1);
  if (span === 'tomorrow') return momentOf(dayAfter(day, 1), morning_hour, 0, zone);
  return hour >= evening_hour - 1 ? after(2) : momentOf(day, evening_hour, 0, zone);
}
