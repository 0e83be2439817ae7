import { dayAfter, localTime, momentOf } from './local-day.ts';

/**
 * When something that is done once a day is next due, and whether a whole day went by without it.
 *
 * Method: days are those of the kitchen's own calendar, whatever the clock change does to their length. The first is the day after the
 * start; the hour is that of the start on the wall clock. Done at any hour of a day, it is done for that day.
 *
 * @param startedAt ISO 8601 with offset
 * @param lastDone when it was last done, `null` when never
 * @param now ISO 8601 with offset
 * @param zone a time zone by its IANA name
 * @returns the moment it is due, and `isMissed`: a whole local day lies between without it
 * @throws OutOfDomain when a moment or the zone can't be read
 * Source: common practice, no source.
 * @example dailyNeed('2026-05-01T08:00:00Z', null, '2026-05-02T06:00:00Z', 'UTC') // { dueAt: '2026-05-02T08:00:00.000Z', isMissed: false }
 */
export function dailyNeed(
  startedAt: string,
  lastDone: string | null,
  now: string,
  zone: string,
): { dueAt: string; isMissed: boolean } {
  const start = localTime(startedAt, zone);
  const last = lastDone === null ? start.day : localTime(lastDone, zone).day;
  const dueDay = dayAfter(last.localeCompare(start.day) > 0 ? last : start.day, 1);
  return {
    dueAt: momentOf(dueDay, start.hour, start.minute, zone),
    isMissed: dueDay < localTime(now, zone).day,
  };
}
