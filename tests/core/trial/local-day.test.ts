import { describe, expect, it } from 'vitest';
import { dailyNeed } from '#core/trial/daily-need.ts';
import { dayAfter, localTime, momentOf } from '#core/trial/local-day.ts';
import { putOffUntil } from '#core/trial/put-off-until.ts';

// Clock changes: Directive 2000/84/EC (last Sundays of March and October, at 01:00 UTC); Energy Policy Act of 2005, section 110
// (second Sunday of March, first Sunday of November, at 02:00 local).

describe('localTime(moment, zone)', () => {
  it('says the day and the wall clock on either side of midnight and of a clock change', () => {
    expect(localTime('2026-05-01T22:30:00Z', 'Europe/Berlin')).toEqual({ day: '2026-05-02', hour: 0, minute: 30 });
    expect(localTime('2026-03-29T00:59:00Z', 'Europe/Berlin')).toEqual({ day: '2026-03-29', hour: 1, minute: 59 });
    expect(localTime('2026-03-29T01:00:00Z', 'Europe/Berlin')).toEqual({ day: '2026-03-29', hour: 3, minute: 0 });
    expect(localTime('2026-11-01T06:00:00Z', 'America/New_York')).toEqual({ day: '2026-11-01', hour: 1, minute: 0 });
    expect(localTime('2026-05-01T20:00:00+02:00', 'Asia/Kathmandu')).toEqual({
      day: '2026-05-01',
      hour: 23,
      minute: 45,
    });
  });

  it('throws on a moment or a zone that is none', () => {
    expect(() => localTime('yesterday', 'UTC')).toThrow(/moment/);
    expect(() => localTime('2026-05-01T20:00:00Z', 'Kitchen/Table')).toThrow(/zone/);
  });
});

describe('momentOf(day, hour, minute, zone)', () => {
  it('finds the instant of a wall clock in summer and in winter', () => {
    expect(momentOf('2026-03-28', 9, 0, 'Europe/Berlin')).toBe('2026-03-28T08:00:00.000Z');
    expect(momentOf('2026-03-29', 9, 0, 'Europe/Berlin')).toBe('2026-03-29T07:00:00.000Z');
    expect(momentOf('2026-11-01', 9, 0, 'America/New_York')).toBe('2026-11-01T14:00:00.000Z');
    expect(momentOf('2026-05-01', 0, 15, 'Pacific/Auckland')).toBe('2026-04-30T12:15:00.000Z');
  });

  it('moves an hour that the spring skips on by the skip, and takes the first of an hour that the autumn shows twice', () => {
    expect(momentOf('2026-03-29', 2, 30, 'Europe/Berlin')).toBe('2026-03-29T01:30:00.000Z');
    expect(momentOf('2026-10-25', 2, 30, 'Europe/Berlin')).toBe('2026-10-25T00:30:00.000Z');
  });

  it('is undone by localTime for every hour of a year that the clock shows once', () => {
    for (let day = '2026-01-01'; day < '2027-01-01'; day = dayAfter(day, 1)) {
      for (const hour of [0, 5, 12, 23]) {
        expect(localTime(momentOf(day, hour, 20, 'Europe/Berlin'), 'Europe/Berlin')).toEqual({ day, hour, minute: 20 });
      }
    }
  });
});

describe('dailyNeed(startedAt, lastDone, now, zone)', () => {
  const started = '2026-03-27T08:00:00Z';
  it('stands at the hour of the start on the wall, also on the day the clocks change', () => {
    const looked = '2026-03-28T17:00:00Z';
    expect(dailyNeed(started, looked, '2026-03-29T05:00:00Z', 'Europe/Berlin')).toEqual({
      dueAt: '2026-03-29T07:00:00.000Z',
      isMissed: false,
    });
  });

  it('is missed only once a whole local day lies between', () => {
    expect(dailyNeed(started, null, '2026-03-28T22:30:00Z', 'Europe/Berlin').isMissed).toBe(false);
    expect(dailyNeed(started, null, '2026-03-28T23:30:00Z', 'Europe/Berlin').isMissed).toBe(true);
    expect(dailyNeed(started, null, '2026-03-28T23:30:00Z', 'America/New_York').isMissed).toBe(false);
  });
});

describe('putOffUntil(span, now, zone)', () => {
  it('means this evening and tomorrow morning of the kitchen, through a clock change', () => {
    const now = '2026-03-28T10:00:00Z';
    expect(putOffUntil('hour', now, 'Europe/Berlin')).toBe('2026-03-28T11:00:00.000Z');
    expect(putOffUntil('tonight', now, 'Europe/Berlin')).toBe('2026-03-28T18:00:00.000Z');
    expect(putOffUntil('tomorrow', now, 'Europe/Berlin')).toBe('2026-03-29T06:00:00.000Z');
  });

  it('means two hours on by "tonight" when it is evening already', () => {
    expect(putOffUntil('tonight', '2026-05-01T19:30:00Z', 'UTC')).toBe('2026-05-01T21:30:00.000Z');
  });
});
