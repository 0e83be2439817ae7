import { useState } from 'react';
import {
  Area,
  CartesianGrid,
  ComposedChart,
  ErrorBar,
  Line,
  ReferenceArea,
  ReferenceLine,
  ResponsiveContainer,
  Scatter,
  XAxis,
  type XAxisTickContentProps,
  YAxis,
} from 'recharts';
import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { wholeTicks } from './axis-ticks.ts';
import { MeanDot, SipCross } from './chart-marks.tsx';
import type { FactorChartData } from './factor-chart-data.ts';
import { figureWords } from './figure-words.ts';
import { twoLines } from './two-lines.ts';

interface FactorDrawingProps {
  readonly data: FactorChartData;
  readonly axis: string;
  readonly colour: string;
  /** The level named as best. */
  readonly winner: string | null;
  /** Small on paper: axes and margins take only what their small type needs. */
  readonly isOnPaper?: boolean;
}

const room = {
  screen: { top: 10, topNamed: 24, right: 34, bottom: 18, left: -22, axis: 30, scale: 60, label: -12, line: 15 },
  paper: { top: 8, topNamed: 16, right: 18, bottom: 8, left: 0, axis: 16, scale: 20, label: -5, line: 9 },
} as const;

/** About how wide a letter of a level's name is, in lines of its type. */
const letter = 0.45;

/** How large the marks are: on paper a mean must not hide its interval, nor the scores each other. */
const marks = {
  screen: { mean: 7, score: 4.5, whisker: 5, line: 2 },
  paper: { mean: 4, score: 2, whisker: 3, line: 1.25 },
} as const;

interface LevelNameProps extends Pick<XAxisTickContentProps, 'x' | 'y' | 'payload' | 'fill'> {
  readonly linesAt: (x: number) => readonly string[];
}

/** The name of a level below its tick, on the lines that its place has room for. */
function LevelName({ x, y, payload, fill, linesAt }: LevelNameProps) {
  return (
    <text className="recharts-cartesian-axis-tick-value" {...{ x, y, fill }} textAnchor="middle">
      {linesAt(Number(payload.value)).map((line) => (
        <tspan key={line} x={x} dy="0.9em">
          {line}
        </tspan>
      ))}
    </text>
  );
}

/** One score. Rows without one draw nothing. */
function ScoreDot({ cx, cy, r, fill }: { cx?: unknown; cy?: unknown; r: number; fill?: string }) {
  if (typeof cx !== 'number' || typeof cy !== 'number' || !Number.isFinite(cx + cy)) return <g />;
  return <circle cx={cx} cy={cy} r={r} fill={fill} fillOpacity={0.32} />;
}

/** The drawing of a factor chart: band and curve behind, scores, sips, and the means in front. */
export function FactorDrawing({ data, axis, colour, winner, isOnPaper = false }: FactorDrawingProps) {
  const { top, topNamed, right, bottom, left, ...sizes } = room[isOnPaper ? 'paper' : 'screen'];
  const mark = marks[isOnPaper ? 'paper' : 'screen'];
  const [width, setWidth] = useState(0);
  const place = (width - left - sizes.scale - right) / Math.max(1, data.ticks.length);
  const letters = Math.max(4, Math.floor(place / (sizes.line * letter)) - 1);
  // A name that is wider than its level's place would run into the next one.
  const isNarrow = width > 0 && !data.isOrdered && data.ticks.some(({ label }) => label.length > letters);
  const nameAt = (x: number) => data.ticks.find((tick) => tick.x === x)?.label ?? shownNumber(x);
  const bestX = data.means.find(({ level }) => level === winner)?.x ?? null;
  return (
    <ResponsiveContainer width="100%" height="100%" onResize={setWidth}>
      <ComposedChart
        data={[...data.rows]}
        margin={{ top: data.best === null ? top : topNamed, right, bottom, left }}
        title={phrase`${data.attribute} against ${axis}`}
        desc={phrase`The same figures stand in the table that goes with the chart.`}
      >
        <CartesianGrid vertical={false} stroke="var(--chart-grid)" />
        <XAxis
          dataKey="x"
          type="number"
          domain={[...data.xDomain]}
          ticks={data.ticks.map(({ x }) => x)}
          tickFormatter={nameAt}
          {...(isNarrow
            ? { tick: (tick) => <LevelName {...tick} linesAt={(x) => twoLines(nameAt(x), letters)} /> }
            : {})}
          interval={data.isOrdered ? 'preserveStartEnd' : 0}
          height={sizes.axis + (isNarrow ? sizes.line : 0)}
          stroke="var(--line-strong)"
          label={{ value: axis, position: 'insideBottom', offset: sizes.label, fill: 'var(--ink-soft)' }}
        />
        <YAxis
          type="number"
          domain={[...data.yDomain]}
          ticks={wholeTicks(data.yDomain)}
          width={sizes.scale}
          stroke="var(--line-strong)"
          axisLine={false}
          tickLine={false}
        />
        {data.best === null ? null : (
          <ReferenceArea x1={data.best.low} x2={data.best.high} fill={colour} fillOpacity={0.12} ifOverflow="hidden" />
        )}
        {data.best === null ? null : (
          <ReferenceLine
            x={data.best.level}
            stroke={colour}
            strokeDasharray="4 3"
            strokeWidth={2}
            label={{
              value: phrase`highest near ${figureWords(data.best.level)}`,
              position: 'top',
              fill: 'var(--ink)',
            }}
          />
        )}
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
            strokeWidth={mark.line}
            dot={false}
            activeDot={false}
            connectNulls
            isAnimationActive={false}
          />
        ) : null}
        <Scatter dataKey="score" fill={colour} shape={<ScoreDot r={mark.score} />} isAnimationActive={false} />
        {data.areSipsDrawn ? <Scatter dataKey="sip" shape={<SipCross />} isAnimationActive={false} /> : null}
        <Line
          dataKey="mean"
          stroke="none"
          dot={<MeanDot colour={colour} bestX={bestX} reach={mark.mean} />}
          activeDot={false}
          isAnimationActive={false}
        >
          <ErrorBar
            dataKey="interval"
            direction="y"
            width={mark.whisker}
            strokeWidth={mark.line}
            stroke={colour}
            isAnimationActive={false}
          />
        </Line>
      </ComposedChart>
    </ResponsiveContainer>
  );
}
