import { dayAndTime } from '#renderer/format/moments.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { csvText, tabbedText } from '#shared/csv-text.ts';
import { ChartFrame } from './chart-frame.tsx';
import { TimelineDrawing } from './late-drawings.ts';
import { timelineColumns } from './timeline-csv.ts';
import { type Timeline, timelineDays, timelineRows } from './timeline-rows.ts';
import { timelineWords as words } from './timeline-words.ts';
import './lanes.css';
import './timeline.css';

interface TimelineChartProps {
  readonly timeline: Timeline;
  readonly now: number;
  readonly nameOf: (what: NonNullable<Timeline['jars'][number]['entries'][number]['what']>) => string;
}

/** A trial from start to pull to tasting: a lane for each jar with what was written down, and the table. */
export function TimelineChart({ timeline, now, nameOf }: TimelineChartProps) {
  const rows = timelineRows(timeline, (what) => (what === null ? words.kinds.sighting : nameOf(what)));
  const cells = rows.map(({ at, jar, level, what }) => [at, jar, level, what]);
  const marks = [...words.key, ...(timelineDays(timeline, now).weeks.length > 0 ? [words.weekKey] : [])];
  const key = `${marks.join(', ')}.`;
  return (
    <ChartFrame
      title={words.title}
      scale={words.scale}
      sentence={null}
      more={null}
      colour="var(--ink-soft)"
      isLead={false}
      lanes={timeline.jars.length + (timeline.tastings.length > 0 ? 1 : 0)}
      figures={tabbedText([timelineColumns, ...cells])}
      csv={() => csvText([timelineColumns, ...cells])}
      chartKey={key}
      below={
        <ul className="seen-key small" aria-label={words.marks}>
          {marks.map((each) => (
            <li key={each}>{each}</li>
          ))}
        </ul>
      }
      table={
        <DataTable
          caption={words.caption}
          rows={rows.map((row, place) => ({ ...row, place }))}
          rowKey={({ place }) => String(place)}
          columns={[
            { head: words.when, cell: ({ at }) => dayAndTime(at) },
            { head: words.jar, cell: ({ jar, level }) => (jar === null ? words.all : `${jar} (${level})`) },
            { head: words.what, cell: ({ what }) => what },
          ]}
        />
      }
    >
      <TimelineDrawing timeline={timeline} now={now} />
    </ChartFrame>
  );
}
