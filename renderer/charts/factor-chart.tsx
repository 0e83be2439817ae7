import {
  Area,
  CartesianGrid,
  ComposedChart,
  ErrorBar,
  Line,
  ResponsiveContainer,
  Scatter,
  XAxis,
  YAxis,
} from 'recharts';
import { capital } from '#renderer/format/words.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { attributeColour } from './attribute-colour.ts';
import { ChartFrame } from './chart-frame.tsx';
import type { FactorChartData } from './factor-chart-data.ts';
import { factorChartFigures } from './factor-chart-figures.ts';
import { figureWords, intervalWords } from './figure-words.ts';

interface FactorChartProps {
  readonly data: FactorChartData;
  readonly sentence: string | null;
  /** What the horizontal axis measures, with its unit: "days", "fruit (g)". */
  readonly axis: string;
}

interface MeanDotProps {
  readonly colour: string;
  /** Given by the chart for each row. */
  readonly cx?: number | undefined;
  readonly cy?: number | undefined;
  readonly value?: unknown;
}

/** A diamond with its figure beside it. Rows without a mean draw nothing. */
function MeanDot({ colour, cx, cy, value }: MeanDotProps) {
  if (typeof cx !== 'number' || typeof cy !== 'number' || typeof value !== 'number') return null;
  return (
    <g>
      <path
        d={`M${cx} ${cy - 7}L${cx + 7} ${cy}L${cx} ${cy + 7}L${cx - 7} ${cy}Z`}
        fill={colour}
        stroke="var(--linen)"
        strokeWidth={1.5}
      />
      <text x={cx + 10} y={cy - 8} className="chart-mean-words">
        {figureWords(value)}
      </text>
    </g>
  );
}

function wholeTicks([low, high]: readonly [number, number]): number[] {
  const step = high - low > 8 ? 2 : 1;
  return Array.from({ length: Math.floor((high - low) / step) + 1 }, (_, place) => low + place * step);
}

function FactorDrawing({ data, axis, colour }: { data: FactorChartData; axis: string; colour: string }) {
  return (
    <ResponsiveContainer width="100%" height="100%">
      <ComposedChart
        data={[...data.rows]}
        margin={{ top: 10, right: 34, bottom: 18, left: -22 }}
        title={`${data.attribute} against ${axis}`}
        desc="The same figures stand in the table below the chart."
      >
        <CartesianGrid vertical={false} stroke="var(--chart-grid)" />
        <XAxis
          dataKey="x"
          type="number"
          domain={[...data.xDomain]}
          ticks={data.ticks.map(({ x }) => x)}
          tickFormatter={(x: number) => data.ticks.find((tick) => tick.x === x)?.label ?? String(x)}
          interval={data.isOrdered ? 'preserveStartEnd' : 0}
          stroke="var(--line-strong)"
          label={{ value: axis, position: 'insideBottom', offset: -12 }}
        />
        <YAxis
          type="number"
          domain={[...data.yDomain]}
          ticks={wholeTicks(data.yDomain)}
          stroke="var(--line-strong)"
          axisLine={false}
          tickLine={false}
        />
        {data.hasCurve ? (
          <Area
            dataKey="band"
            stroke="none"
            fill={colour}
            fillOpacity={0.14}
            connectNulls
            isAnimationActive={false}
            activeDot={false}
          />
        ) : null}
        {data.hasCurve ? (
          <Line
            dataKey="fit"
            type="linear"
            stroke={colour}
            strokeWidth={2}
            dot={false}
            activeDot={false}
            connectNulls
            isAnimationActive={false}
          />
        ) : null}
        <Scatter dataKey="score" fill={colour} fillOpacity={0.32} isAnimationActive={false} />
        <Line
          dataKey="mean"
          stroke="none"
          dot={<MeanDot colour={colour} />}
          activeDot={false}
          isAnimationActive={false}
        >
          <ErrorBar
            dataKey="interval"
            direction="y"
            width={5}
            strokeWidth={2}
            stroke={colour}
            isAnimationActive={false}
          />
        </Line>
      </ComposedChart>
    </ResponsiveContainer>
  );
}

/** One attribute against the factor: every score faint, means with their 95 % intervals, the curve with its band, and the table. */
export function FactorChart({ data, sentence, axis }: FactorChartProps) {
  const colour = attributeColour(data.attribute);
  const [low, high] = data.yDomain;
  return (
    <ChartFrame
      title={capital(data.attribute)}
      scale={`scored ${low} to ${high}`}
      sentence={sentence}
      colour={colour}
      figures={factorChartFigures(data)}
      table={
        <DataTable
          caption={`${data.attribute}: mean and 95 % interval of each level`}
          rows={data.means}
          rowKey={({ level }) => level}
          columns={[
            { head: 'Level', cell: ({ level }) => level },
            { head: 'Scores', cell: ({ n }) => n, isFigure: true },
            { head: 'Mean', cell: ({ mean }) => figureWords(mean), isFigure: true },
            { head: '95 % interval', cell: (row) => intervalWords(row.low, row.high), isFigure: true },
            { head: 'Alike', cell: ({ letters }) => letters ?? '–' },
          ]}
        />
      }
    >
      <FactorDrawing data={data} axis={axis} colour={colour} />
    </ChartFrame>
  );
}
