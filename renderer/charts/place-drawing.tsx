import { CartesianGrid, ReferenceLine, ResponsiveContainer, Scatter, ScatterChart, XAxis, YAxis } from 'recharts';
import { phrase } from '#core/words/phrase.ts';
import { ordinal, type PlaceChartData, type PlaceMark } from './place-chart-data.ts';

const words = {
  title: phrase`Places by level`,
  description: phrase`The same figures stand in the table that goes with the chart.`,
  axis: phrase`place (1st is best)`,
  critical: phrase`told apart from this distance on`,
} as const;

interface MarkProps {
  readonly cx?: number;
  readonly cy?: number;
  readonly payload?: PlaceMark;
}

/** A round as large as its count, with the count in it. */
function PlaceRound({ cx = 0, cy = 0, payload }: MarkProps) {
  const count = payload?.count ?? 0;
  return (
    <g>
      <circle cx={cx} cy={cy} r={7 + 2.6 * Math.sqrt(count)} fill="var(--chart-liking)" fillOpacity={0.22} />
      <text x={cx} y={cy} dy="0.34em" textAnchor="middle" fill="var(--ink)">
        {count}
      </text>
    </g>
  );
}

/** The mean place: an upright bar through the row. */
function MeanPlace({ cx = 0, cy = 0 }: MarkProps) {
  return <path d={`M${cx} ${cy - 15}V${cy + 15}`} stroke="var(--chart-liking)" strokeWidth={3} />;
}

/** How often each level stood in each place, its mean place, and how far apart mean places must lie to be told apart. */
export function PlaceDrawing({ data }: { readonly data: PlaceChartData }) {
  const last = data.levels.length;
  const top = -0.75;
  return (
    <ResponsiveContainer width="100%" height="100%">
      <ScatterChart margin={{ top: 8, right: 24, bottom: 18, left: 8 }} title={words.title} desc={words.description}>
        <CartesianGrid horizontal={false} stroke="var(--chart-grid)" />
        <XAxis
          dataKey="place"
          type="number"
          domain={[0.6, last + 0.4]}
          ticks={data.levels.map((_, index) => index + 1)}
          tickFormatter={ordinal}
          stroke="var(--line-strong)"
          label={{ value: words.axis, position: 'insideBottom', offset: -12, fill: 'var(--ink-soft)' }}
        />
        <YAxis
          dataKey="row"
          type="number"
          domain={[top - 0.25, last - 0.5]}
          ticks={data.levels.map((_, index) => index)}
          tickFormatter={(row: number) => data.levels[row] ?? ''}
          reversed
          width={96}
          stroke="var(--line-strong)"
          axisLine={false}
          tickLine={false}
        />
        {data.critical === null || data.critical > last - 1 ? null : (
          <ReferenceLine
            segment={[
              { x: 1, y: top },
              { x: 1 + data.critical, y: top },
            ]}
            stroke="var(--ink-soft)"
            strokeWidth={2}
            label={{ value: words.critical, position: 'insideTopLeft', fill: 'var(--ink-soft)', dy: 4 }}
          />
        )}
        <Scatter data={[...data.marks]} shape={<PlaceRound />} isAnimationActive={false} />
        <Scatter data={[...data.means]} shape={<MeanPlace />} isAnimationActive={false} />
      </ScatterChart>
    </ResponsiveContainer>
  );
}
