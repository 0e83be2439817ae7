import { firstDayOfWeek } from '#renderer/format/window-ways.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type TimelineWeek, timelineWeeks } from './timeline-weeks.ts';
import { timelineWords as words } from './timeline-words.ts';

export type Timeline = ValueOf<'trials:timeline'>;
type Entry = Timeline['jars'][number]['entries'][number];

/** One line of a timeline's table: what happened when, to which jar. */
export interface TimelineRow {
  readonly at: string;
  /** Null for a tasting. */
  readonly jar: string | null;
  readonly level: string | null;
  readonly what: string;
}

/**
 * Everything of a timeline in one order of time: plans that were not kept yet too.
 *
 * @param seen the words for a sighting
 */
export function timelineRows({ jars, tastings }: Timeline, seen: (what: Entry['what']) => string): TimelineRow[] {
  const ofJars = jars.flatMap(({ label: jar, level, ...lane }) => {
    const row = (at: string, what: string) => ({ at, jar, level, what });
    return [
      lane.startedAt === null ? row(lane.plannedStart, words.plannedStart) : row(lane.startedAt, words.started),
      ...(lane.endedAt === null || lane.endedBy === null
        ? [row(lane.plannedPull, words.plannedPull)]
        : [row(lane.endedAt, words.ends[lane.endedBy])]),
      ...lane.entries.map(({ at, kind, what }) => row(at, kind === 'sighting' ? seen(what) : words.kinds[kind])),
    ];
  });
  const ofTastings = tastings.map(({ heldAt, closedAt, name }) => ({
    at: heldAt,
    jar: null,
    level: null,
    what: words.tasting(name, closedAt === null),
  }));
  return [...ofJars, ...ofTastings].toSorted((one, other) => one.at.localeCompare(other.at));
}

const day_ms = 86_400_000;

export interface TimelineDays {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
  readonly weeks: readonly TimelineWeek[];
}

/** The days that a timeline's axis names: midnights here, at most about eight of them; the span they hold, and where weeks begin in it. */
export function timelineDays({ jars, tastings }: Timeline, now: number): TimelineDays {
  const moments = [
    ...jars.flatMap(({ plannedStart, plannedPull, startedAt, endedAt, entries }) => [
      ...[plannedStart, plannedPull, startedAt, endedAt].flatMap((at) => (at === null ? [] : [Date.parse(at)])),
      ...(startedAt !== null && endedAt === null ? [now] : []),
      ...entries.map(({ at }) => Date.parse(at)),
    ]),
    ...tastings.map(({ heldAt }) => Date.parse(heldAt)),
  ];
  const [low, high] = [Math.min(...moments), Math.max(...moments)];
  const margin = Math.max((high - low) * 0.02, 3_600_000);
  const step = Math.max(1, Math.ceil((high - low) / day_ms / 7));
  const first = new Date(low - margin);
  first.setHours(0, 0, 0, 0);
  const ticks: number[] = [];
  for (const at = new Date(first); at.getTime() <= high + margin; at.setDate(at.getDate() + step)) {
    if (at.getTime() >= low - margin) ticks.push(at.getTime());
  }
  const [from, to] = [low - margin, high + margin];
  return { from, to, ticks, weeks: timelineWeeks(from, to, low, firstDayOfWeek()) };
}
