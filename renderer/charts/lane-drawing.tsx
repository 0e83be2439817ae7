import {
  CartesianGrid,
  ComposedChart,
  ReferenceLine,
  ResponsiveContainer,
  usePlotArea,
  useXAxisScale,
  useYAxisScale,
  XAxis,
  YAxis,
} from 'recharts';
import { fixed, shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { laneAxisProps } from './chart-axes.ts';
import { markPath } from './mark-path.ts';

/** One lane: a pale band for all there was, a line for the interval, a mark with its figure. */
export interface Lane {
  readonly name: string;
  readonly value: number | null;
  readonly interval: readonly [number, number] | null;
  /** From the lowest to the highest. */
  readonly range?: readonly [number, number];
  /** Drawn open: it does not count. */
  readonly isOpen: boolean;
  /** Said in place of a mark where there is none. */
  readonly lack: string;
}

export interface LaneChart {
  readonly title: string;
  readonly lanes: readonly Lane[];
  readonly domain: readonly [number, number];
  readonly ticks: readonly number[];
  /** Figures behind the point. */
  readonly digits: number;
  /** What the axis measures, with its unit. */
  readonly axis: string;
  readonly colour: string;
  /** A line to read against. */
  readonly at?: number;
}

function LaneMarks({ chart }: { readonly chart: LaneChart }) {
  const plot = usePlotArea();
  const xScale = useXAxisScale();
  const yScale = useYAxisScale();
  if (plot === undefined || xScale === undefined || yScale === undefined) return null;
  const x = (value: number) => xScale(value) ?? 0;
  return (
    <g>
      {chart.lanes.map(({ name, value, interval, range, isOpen, lack }, lane) => {
        const y = yScale(lane) ?? 0;
        if (value === null) {
          return (
            <text key={name} x={plot.x + 4} y={y + 4} className="lane-lack">
              {lack}
            </text>
          );
        }
        const end = Math.max(
          x(value) + 8,
          interval === null ? 0 : x(interval[1]) + 6,
          range === undefined ? 0 : x(range[1]) + 6,
        );
        const isTight = end + 26 > plot.x + plot.width + 30;
        return (
          <g key={name}>
            {range === undefined ? null : (
              <rect
                x={x(range[0]) - 1}
                y={y - 8}
                width={x(range[1]) - x(range[0]) + 2}
                height={16}
                rx={3}
                fill={chart.colour}
                fillOpacity={0.2}
              />
            )}
            {interval === null ? null : (
              <path
                d={`M${x(interval[0])} ${y}H${x(interval[1])}M${x(interval[0])} ${y - 5}v10M${x(interval[1])} ${y - 5}v10`}
                stroke={chart.colour}
                strokeWidth={2.5}
                strokeDasharray={isOpen ? '3 3' : undefined}
                fill="none"
              />
            )}
            <path
              d={markPath('diamond', x(value), y)}
              fill={isOpen ? 'var(--linen)' : chart.colour}
              stroke={isOpen ? chart.colour : 'var(--linen)'}
              strokeWidth={1.5}
            />
            <text
              x={isTight ? x(value) : end}
              y={isTight ? y - 9 : y + 4}
              textAnchor={isTight ? 'middle' : 'start'}
              className="chart-mean-words"
            >
              {fixed(value, chart.digits).replace('-', '−')}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** A lane for each name on one axis: ranges, intervals and marks. */
export function LaneDrawing({ chart }: { readonly chart: LaneChart }) {
  const { lanes, axis, at } = chart;
  const ticks = [...chart.ticks];
  return (
    <ResponsiveContainer width="100%" height="100%">
      <ComposedChart
        data={chart.domain.map((value) => ({ value, lane: 0 }))}
        margin={{ top: 8, right: 34, bottom: 18, left: 0 }}
        title={phrase`${chart.title} against ${axis}`}
        desc={phrase`The same figures stand in the table that goes with the chart.`}
      >
        <CartesianGrid horizontal={false} stroke="var(--chart-grid)" />
        <XAxis
          dataKey="value"
          type="number"
          domain={[...chart.domain]}
          ticks={ticks}
          stroke="var(--line-strong)"
          tickFormatter={(tick: number) => shownNumber(tick).replace('-', '−')}
          label={{ value: axis, position: 'insideBottom', offset: -12, fill: 'var(--ink-soft)' }}
        />
        <YAxis {...laneAxisProps(lanes.map(({ name }) => name))} width={96} />
        {at === undefined ? null : <ReferenceLine x={at} stroke="var(--ink-soft)" strokeDasharray="6 4" />}
        <LaneMarks chart={chart} />
      </ComposedChart>
    </ResponsiveContainer>
  );
}
