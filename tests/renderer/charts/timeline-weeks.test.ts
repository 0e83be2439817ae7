import { describe, expect, it } from 'vitest';
import { namedWeeks, timelineWeeks } from '#renderer/charts/timeline-weeks.ts';
import { fc } from '#tests/properties.ts';

const at = (text: string) => new Date(text).getTime();
const days = (weeks: ReturnType<typeof timelineWeeks>) =>
  weeks.map(({ at: moment, number }) => `${new Date(moment).toDateString()} ${number}`);

describe('timelineWeeks(from, to, begins, firstDay)', () => {
  it('begins weeks on Monday, and calls the week of the beginning the first', () => {
    // 5 May 2026 is a Tuesday.
    const begins = at('2026-05-05T09:00');
    expect(days(timelineWeeks(begins, at('2026-05-20T09:00'), begins, 1))).toEqual([
      'Mon May 11 2026 2',
      'Mon May 18 2026 3',
    ]);
  });

  it('begins them on the day that was chosen', () => {
    const begins = at('2026-05-05T09:00');
    expect(days(timelineWeeks(begins, at('2026-05-12T09:00'), begins, 0))).toEqual(['Sun May 10 2026 2']);
    expect(days(timelineWeeks(begins, at('2026-05-12T09:00'), begins, 6))).toEqual(['Sat May 09 2026 2']);
  });

  it('marks the first week too where it begins within the span, and none in a span within one week', () => {
    const begins = at('2026-05-04T00:30');
    expect(days(timelineWeeks(at('2026-05-03T22:00'), at('2026-05-06T00:00'), begins, 1))).toEqual([
      'Mon May 04 2026 1',
    ]);
    expect(timelineWeeks(at('2026-05-05T00:00'), at('2026-05-08T00:00'), at('2026-05-05T00:00'), 1)).toEqual([]);
  });

  it('marks midnights of the first day, one for each number, whatever the span', () => {
    const moment = fc.integer({ min: at('2026-01-01T00:00'), max: at('2027-12-31T00:00') });
    fc.assert(
      fc.property(
        moment,
        fc.integer({ min: 0, max: 90 * 86_400_000 }),
        fc.integer({ min: 0, max: 6 }),
        (from, long, day) => {
          const weeks = timelineWeeks(from, from + long, from, day);
          for (const { at: begin } of weeks) {
            expect(new Date(begin).getDay()).toBe(day);
            expect(new Date(begin).getHours()).toBe(0);
          }
          const numbers = weeks.map(({ number }) => number);
          expect(numbers).toEqual(numbers.map((_, place) => (numbers[0] ?? 0) + place));
        },
      ),
    );
  });
});

describe('namedWeeks(weeks, week_px, name_px)', () => {
  const weeks = [1, 2, 3, 4, 5].map((number) => ({ at: number, number }));

  it('names every week with room, else every second or third', () => {
    expect(namedWeeks(weeks, 80, 58)).toHaveLength(5);
    expect(namedWeeks(weeks, 30, 58).map(({ number }) => number)).toEqual([1, 3, 5]);
  });
});
