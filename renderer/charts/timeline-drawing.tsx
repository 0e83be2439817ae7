import { ComposedChart, ResponsiveContainer, usePlotArea, useXAxisScale, useYAxisScale, XAxis, YAxis } from 'recharts';
import { dayWords } from '#renderer/format/moments.ts';
import { laneAxisProps } from './chart-axes.ts';
import type { MarkShape } from './course-chart-data.ts';
import { markPath } from './mark-path.ts';
import { type Timeline, timelineDays } from './timeline-rows.ts';
import { namedWeeks, type TimelineWeek } from './timeline-weeks.ts';
import { timelineWords as words } from './timeline-words.ts';

type Lane = Timeline['jars'][number];

const shapes = { reading: 'circle', sighting: 'triangle', sip: 'plus', photo: 'square' } as const satisfies Record<
  Lane['entries'][number]['kind'],
  MarkShape
>;

interface PlacesProps {
  readonly timeline: Timeline;
  readonly now: number;
}

interface LaneMarksProps {
  readonly lane: Lane;
  readonly y: number;
  readonly x: (moment: string) => number;
  readonly now: number;
}

function LaneMarks({ lane, y, x, now }: LaneMarksProps) {
  const { plannedStart, plannedPull, startedAt, endedAt, endedBy, entries } = lane;
  const end = endedAt ?? new Date(now).toISOString();
  const wide = (from: string, to: string) => Math.max(1, x(to) - x(from));
  return (
    <g>
      <rect
        className="timeline-planned"
        x={x(plannedStart)}
        y={y - 9}
        width={wide(plannedStart, plannedPull)}
        height={18}
        rx={3}
      />
      {startedAt === null ? null : (
        <rect className="timeline-stood" x={x(startedAt)} y={y - 5} width={wide(startedAt, end)} height={10} rx={2} />
      )}
      {endedBy === null || endedAt === null ? null : endedBy === 'discarded' ? (
        <path className="timeline-end" d={markPath('cross', x(endedAt), y, 6)} />
      ) : (
        <path className="timeline-end" d={`M${x(endedAt)} ${y - 11}v22`} />
      )}
      {entries.map(({ at, kind }, place) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: two entries may share their moment
          key={`${at} ${kind} ${place}`}
          className={`timeline-mark is-${kind}`}
          d={markPath(shapes[kind], x(at), y, 4)}
        />
      ))}
    </g>
  );
}

function Marks({ timeline, now }: PlacesProps) {
  const plot = usePlotArea();
  const xScale = useXAxisScale();
  const yScale = useYAxisScale();
  if (plot === undefined || xScale === undefined || yScale === undefined) return null;
  const x = (moment: string) => xScale(Date.parse(moment)) ?? 0;
  const bottom = plot.y + plot.height;
  const { jars, tastings } = timeline;
  return (
    <g>
      {tastings.map(({ id, heldAt, closedAt, name }) => {
        const at = x(heldAt);
        const isRight = at > plot.x + plot.width * 0.7;
        const y = yScale(0) ?? 0;
        return (
          <g key={id} className={closedAt === null ? 'timeline-tasting is-open' : 'timeline-tasting'}>
            <path d={`M${at} ${y}V${bottom}`} className="timeline-thread" />
            <path d={markPath('diamond', at, y, 6)} className="timeline-diamond" />
            <text x={isRight ? at - 11 : at + 11} y={y + 4} textAnchor={isRight ? 'end' : 'start'}>
              {name.length > 26 ? `${name.slice(0, 25)}…` : name}
            </text>
          </g>
        );
      })}
      {jars.map((lane, place) => (
        <LaneMarks key={lane.jar} lane={lane} y={yScale(place + (tastings.length > 0 ? 1 : 0)) ?? 0} x={x} now={now} />
      ))}
    </g>
  );
}

/** How wide “week 12” is drawn, with room beside it. */
const weekName_px = 58;

/** A fine line where a week begins, behind everything, with its number above where there is room. */
function Weeks({ weeks }: { readonly weeks: readonly TimelineWeek[] }) {
  const plot = usePlotArea();
  const xScale = useXAxisScale();
  if (plot === undefined || xScale === undefined) return null;
  const x = (at: number) => xScale(at) ?? 0;
  const [first, second] = weeks;
  const week_px = first === undefined || second === undefined ? plot.width : x(second.at) - x(first.at);
  const right = plot.x + plot.width;
  const named = namedWeeks(weeks, week_px, weekName_px);
  return (
    <g className="timeline-weeks">
      {weeks.map((week) => (
        // One without a name would cross that of its neighbour.
        <path
          key={week.at}
          d={`M${x(week.at)} ${named.includes(week) ? plot.y - 12 : plot.y}V${plot.y + plot.height}`}
        />
      ))}
      {named.map(({ at, number }) => {
        const isLast = x(at) + weekName_px > right + 30;
        return (
          <text key={at} x={isLast ? x(at) - 4 : x(at) + 4} y={plot.y - 4} textAnchor={isLast ? 'end' : 'start'}>
            {words.week(number)}
          </text>
        );
      })}
    </g>
  );
}

/** The lanes of a trial on one axis of days: bars as planned and as they stood, marks for what was written down, tastings above. */
export function TimelineDrawing({ timeline, now }: PlacesProps) {
  const { from, to, ticks, weeks } = timelineDays(timeline, now);
  const names = [...(timeline.tastings.length > 0 ? [words.tastings] : []), ...timeline.jars.map(({ label }) => label)];
  return (
    <ResponsiveContainer width="100%" height="100%">
      <ComposedChart
        data={[from, to].map((at) => ({ at, lane: 0 }))}
        margin={{ top: weeks.length > 0 ? 18 : 4, right: 34, bottom: 4, left: 0 }}
        title={words.title}
        desc={words.description}
      >
        <XAxis
          dataKey="at"
          type="number"
          domain={[from, to]}
          ticks={[...ticks]}
          tickFormatter={(at: number) => dayWords(new Date(at).toISOString())}
          interval="preserveStart"
          minTickGap={12}
          stroke="var(--line-strong)"
        />
        <YAxis {...laneAxisProps(names)} width={60} />
        <Weeks weeks={weeks} />
        <Marks timeline={timeline} now={now} />
      </ComposedChart>
    </ResponsiveContainer>
  );
}
