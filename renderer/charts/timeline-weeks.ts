/** Where a week begins on a timeline, and which it is: the week in which everything begins is the first. */
export interface TimelineWeek {
  readonly at: number;
  readonly number: number;
}

/** The beginning of the week that holds this moment: midnight here of its first day. */
function weekOf(moment: number, firstDay: number): Date {
  const day = new Date(moment);
  day.setHours(0, 0, 0, 0);
  day.setDate(day.getDate() - ((day.getDay() - firstDay + 7) % 7));
  return day;
}

/**
 * The weeks that begin between two moments.
 *
 * @param begins the first moment of all: its week is number 1
 * @param firstDay of a week, 0 for Sunday
 */
export function timelineWeeks(from: number, to: number, begins: number, firstDay: number): TimelineWeek[] {
  const weeks: TimelineWeek[] = [];
  // By the calendar, not by hours: a week in which the clocks change is an hour longer or shorter.
  for (let at = weekOf(begins, firstDay), number = 1; at.getTime() <= to; at.setDate(at.getDate() + 7), number += 1) {
    if (at.getTime() >= from) weeks.push({ at: at.getTime(), number });
  }
  return weeks;
}

/**
 * The weeks that have room for their name, every one, or every second, third and so on.
 *
 * @param week_px how wide a week is drawn
 * @param name_px how wide its name is
 */
export function namedWeeks(weeks: readonly TimelineWeek[], week_px: number, name_px: number): TimelineWeek[] {
  const step = Math.max(1, Math.ceil(name_px / Math.max(1, week_px)));
  return weeks.filter((_, place) => place % step === 0);
}
