import type { PlannedJar } from '#core/trial/plan-trial.ts';
import { dayOfMonthWords, weekdayWords } from '#renderer/format/moments.ts';
import { firstDayOfWeek } from '#renderer/format/window-ways.ts';

const day_ms = 86_400_000;

/** One day of the line: where it begins as a share of the whole, 0–1. */
export interface TimeLineDay {
  readonly name: string;
  readonly date: string;
  /** Of the month. */
  readonly day: number;
  readonly from: number;
  /** Whether a week begins with it. */
  readonly startsWeek: boolean;
}

export interface TimeLineRow {
  readonly label: string;
  readonly level: string;
  readonly start: string;
  readonly pull: string;
  /** Start and pull as shares of the whole line. */
  readonly from: number;
  readonly to: number;
  /** The first start and the last pull of all jars. */
  readonly first: number;
  readonly last: number;
}

export interface TimeLineOfJars {
  readonly days: readonly TimeLineDay[];
  readonly rows: readonly TimeLineRow[];
  /** Whether the jars' days differ at all. */
  readonly isStaggered: boolean;
}

function midnight(at: number, plusDays = 0): number {
  const day = new Date(at);
  return new Date(day.getFullYear(), day.getMonth(), day.getDate() + plusDays).getTime();
}

/**
 * Lays the jars' days on one line of whole days of this machine's calendar.
 *
 * Jars of one level and the same days share a row: "A1–A3".
 *
 * @returns null while no jar has days that can be drawn (none, backwards, or more than a year)
 */
export function timeLineOf(jars: readonly PlannedJar[]): TimeLineOfJars | null {
  const sane = jars.filter(({ start, pull }) => Date.parse(pull) > Date.parse(start));
  const starts = sane.map(({ start }) => Date.parse(start));
  const pulls = sane.map(({ pull }) => Date.parse(pull));
  if (sane.length === 0) return null;
  const [firstStart, lastPull] = [Math.min(...starts), Math.max(...pulls)];
  const begin = midnight(firstStart);
  const end = midnight(lastPull - 1, 1);
  const count = Math.round((end - begin) / day_ms);
  if (!(count > 0 && count <= 400)) return null;
  const share = (at: number) => (at - begin) / (end - begin);
  const days = Array.from({ length: count }, (_, place): TimeLineDay => {
    const at = midnight(begin, place);
    const startsWeek = new Date(at).getDay() === firstDayOfWeek();
    return {
      name: weekdayWords(at),
      date: dayOfMonthWords(at),
      day: new Date(at).getDate(),
      from: place / count,
      startsWeek,
    };
  });
  const rows = sane
    .filter(({ replicate }) => replicate === 1)
    .map((jar): TimeLineRow => {
      const same = sane.filter(({ level }) => level === jar.level);
      const last = same.at(-1);
      return {
        label: last === undefined || last.label === jar.label ? jar.label : `${jar.label}–${last.label}`,
        level: jar.level,
        start: jar.start,
        pull: jar.pull,
        from: share(Date.parse(jar.start)),
        to: share(Date.parse(jar.pull)),
        first: share(firstStart),
        last: share(lastPull),
      };
    });
  return { days, rows, isStaggered: new Set(starts).size > 1 || new Set(pulls).size > 1 };
}
