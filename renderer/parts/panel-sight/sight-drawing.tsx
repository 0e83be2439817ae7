import {
  CartesianGrid,
  Line,
  LineChart,
  ReferenceDot,
  ReferenceLine,
  ResponsiveContainer,
  XAxis,
  YAxis,
} from 'recharts';
import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

interface SightDrawingProps {
  readonly sight: ValueOf<'panel:sight'>;
  readonly upTo: number;
  /** "Most likely": the chance at which a gap counts as seen. */
  readonly power: number;
}

const percent = (chance: number) => `${Math.round(chance * 100)} %`;

/** The chance to see a gap against its size; a diamond where it is most likely seen. */
export function SightDrawing({ sight, upTo, power }: SightDrawingProps) {
  const { curve, detectableDifference: gap } = sight;
  const isOnPaper = gap !== null && gap <= upTo;
  return (
    <ResponsiveContainer width="100%" height="100%">
      <LineChart
        data={curve}
        margin={{ top: 32, right: 16, bottom: 18, left: -8 }}
        title={phrase`The chance to see a gap against its size`}
        desc={phrase`The same figures stand in the table below the chart.`}
      >
        <CartesianGrid vertical={false} stroke="var(--chart-grid)" />
        <XAxis
          dataKey="difference"
          type="number"
          domain={[0, upTo]}
          ticks={Array.from({ length: upTo + 1 }, (_, points) => points)}
          stroke="var(--line-strong)"
          label={{ value: phrase`gap between two samples (points)`, position: 'insideBottom', offset: -12 }}
        />
        <YAxis
          type="number"
          domain={[0, 1]}
          ticks={[0, 0.2, 0.4, 0.6, 0.8, 1]}
          tickFormatter={percent}
          stroke="var(--line-strong)"
          label={{ value: phrase`chance to see it`, position: 'top', offset: 15, textAnchor: 'start', dx: -22 }}
          axisLine={false}
          tickLine={false}
        />
        {isOnPaper ? (
          <ReferenceLine
            segment={[
              { x: gap, y: 0 },
              { x: gap, y: power },
            ]}
            stroke="var(--ink-soft)"
            strokeDasharray="5 4"
          />
        ) : null}
        <Line
          dataKey="power"
          type="linear"
          stroke="var(--leaf)"
          strokeWidth={2.5}
          dot={false}
          activeDot={false}
          isAnimationActive={false}
        />
        {isOnPaper ? (
          <ReferenceDot
            x={gap}
            y={power}
            shape={({ cx, cy }: { cx?: number; cy?: number }) =>
              cx === undefined || cy === undefined ? (
                <g />
              ) : (
                <g>
                  <path
                    d={`M${cx} ${cy - 8}L${cx + 8} ${cy}L${cx} ${cy + 8}L${cx - 8} ${cy}Z`}
                    fill="var(--ink)"
                    stroke="var(--linen)"
                    strokeWidth={2}
                  />
                  <text
                    x={gap > upTo * 0.8 ? cx - 12 : cx + 12}
                    y={cy + 16}
                    textAnchor={gap > upTo * 0.8 ? 'end' : 'start'}
                    className="sight-mark-words"
                  >
                    {fixed(gap, 1)}
                  </text>
                </g>
              )
            }
          />
        ) : null}
      </LineChart>
    </ResponsiveContainer>
  );
}
