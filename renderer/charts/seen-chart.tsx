import { ComposedChart, ResponsiveContainer, usePlotArea, useXAxisScale, useYAxisScale, XAxis, YAxis } from 'recharts';
import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { csvText, tabbedText } from '#shared/csv-text.ts';
import { hoursAxis, hoursAxisProps, laneAxisProps } from './chart-axes.ts';
import { ChartFrame } from './chart-frame.tsx';
import { type Course, hourTicks } from './course-chart-data.ts';
import { markPath } from './mark-path.ts';
import './course.css';
import './lanes.css';

type Event = Course['events'][number];
type What = Event['what'];

const ends: readonly What[] = ['pulled', 'strained', 'discarded'];
const endShapes = { pulled: 'square', strained: 'square', discarded: 'cross' } as const;

interface SeenChartProps {
  readonly jars: readonly Course[];
  readonly nameOf: (what: What) => string;
}

/** The kinds of sightings in the order they first came, numbered from 1: the drawing shows the numbers. */
export function numberedSightings(jars: readonly Course[]): ReadonlyMap<What, number> {
  const seen = jars
    .flatMap(({ events }) => events)
    .filter(({ what }) => !ends.includes(what))
    .toSorted((a, b) => a.hours - b.hours);
  return new Map([...new Set(seen.map(({ what }) => what))].map((what, place) => [what, place + 1]));
}

interface SeenMarksProps {
  readonly jars: readonly Course[];
  readonly numbers: ReadonlyMap<What, number>;
}

function SeenMarks({ jars, numbers }: SeenMarksProps) {
  const plot = usePlotArea();
  const xScale = useXAxisScale();
  const yScale = useYAxisScale();
  if (plot === undefined || xScale === undefined || yScale === undefined) return null;
  return (
    <g>
      {jars.map(({ jar, events }, lane) => {
        const y = yScale(lane) ?? 0;
        return (
          <g key={jar}>
            <path className="seen-lane" d={`M${plot.x} ${y}H${plot.x + plot.width}`} />
            {events.map(({ hours, what }, place) => {
              const x = xScale(hours) ?? 0;
              const number = numbers.get(what);
              const key = `${what} ${hours} ${place}`;
              if (number === undefined) {
                const shape =
                  what === 'pulled' || what === 'strained' || what === 'discarded' ? endShapes[what] : 'square';
                return (
                  <path
                    key={key}
                    className={what === 'strained' ? 'seen-end is-open' : 'seen-end'}
                    d={markPath(shape, x, y)}
                  />
                );
              }
              return (
                <g key={key} className="seen-mark">
                  <circle cx={x} cy={y} r={8} />
                  <text x={x} y={y + 4} textAnchor="middle">
                    {number}
                  </text>
                </g>
              );
            })}
          </g>
        );
      })}
    </g>
  );
}

/** What was seen in each jar and when it left the shelf: a lane for each on one axis of hours, and the table. */
export function SeenChart({ jars, nameOf }: SeenChartProps) {
  const shown = jars.filter(({ events }) => events.length > 0);
  if (shown.length === 0) return null;
  const numbers = numberedSightings(shown);
  const done = ends.filter((what) => shown.some(({ events }) => events.some((event) => event.what === what)));
  const doneWords = {
    pulled: phrase`full square`,
    strained: phrase`open square`,
    discarded: phrase`cross`,
  } as Readonly<Record<string, string>>;
  const key = [
    ...[...numbers].map(([what, number]) => `${number} ${nameOf(what)}`),
    ...done.map((what) => `${doneWords[what]}: ${nameOf(what)}`),
  ];
  const rows = shown.flatMap(({ label, level, events }) =>
    events.map((event, place) => ({ ...event, jar: `${label} (${level})`, label, level, key: `${label} ${place}` })),
  );
  const xTicks = hourTicks(jars);
  const said = (hours: number) => Number(hours.toFixed(1));
  return (
    <ChartFrame
      title={phrase`Seen and done`}
      scale={phrase`against the hours since the start`}
      sentence={null}
      more={null}
      colour="var(--ink-soft)"
      isLead={false}
      lanes={shown.length}
      figures={tabbedText([
        ['jar', 'level', 'hours', 'what'],
        ...rows.map(({ label, level, hours, what }) => [label, level, said(hours), nameOf(what)]),
      ])}
      csv={() =>
        csvText([
          ['jar', 'level', 'hours', 'what', 'note'],
          ...rows.map(({ label, level, hours, what, note }) => [label, level, said(hours), nameOf(what), note]),
        ])
      }
      chartKey={`${key.join(', ')}.`}
      below={
        <ul className="seen-key small" aria-label={phrase`What the marks mean`}>
          {key.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      }
      table={
        <DataTable
          caption={phrase`Seen and done: every entry`}
          rows={rows}
          rowKey={(row) => row.key}
          columns={[
            { head: phrase`Jar`, cell: ({ jar }) => jar },
            { head: phrase`Hours`, cell: ({ hours }) => shownNumber(said(hours)), isFigure: true },
            {
              head: phrase`What`,
              cell: ({ what, note }) => (note === null ? nameOf(what) : `${nameOf(what)}: ${note}`),
            },
          ]}
        />
      }
    >
      <ResponsiveContainer width="100%" height="100%">
        <ComposedChart
          data={xTicks.map((hours) => ({ hours, lane: 0 }))}
          margin={{ top: 4, right: 34, bottom: 18, left: -18 }}
          title={phrase`What was seen against ${hoursAxis}`}
          desc={phrase`The same entries stand in the table that goes with the chart.`}
        >
          <XAxis {...hoursAxisProps(xTicks)} />
          <YAxis {...laneAxisProps(shown.map(({ label }) => label))} />
          <SeenMarks jars={shown} numbers={numbers} />
        </ComposedChart>
      </ResponsiveContainer>
    </ChartFrame>
  );
}
