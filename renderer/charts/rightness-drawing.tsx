import { Bar, BarChart, LabelList, ResponsiveContainer, XAxis, YAxis } from 'recharts';
import { phrase } from '#core/words/phrase.ts';

const words = {
  title: (attribute: string) => phrase`${attribute}: too little, just right, too much`,
  description: phrase`The same figures stand in the table that goes with the chart.`,
  axis: phrase`answers`,
} as const;

/** One level's answers. */
export interface RightnessRow {
  readonly level: string;
  readonly tooLittle: number;
  readonly right: number;
  readonly tooMuch: number;
}

/** Each part has its mark; the hue only helps. */
const parts = [
  { key: 'tooLittle', sign: '▾', fill: 'var(--chart-tang)', opacity: 0.35 },
  { key: 'right', sign: '●', fill: 'var(--glass-deep)', opacity: 1 },
  { key: 'tooMuch', sign: '▴', fill: 'var(--chart-liking)', opacity: 0.35 },
] as const;

/** Stacked bars: for each level how many found too little, just right and too much. */
export function RightnessDrawing(props: { readonly attribute: string; readonly rows: readonly RightnessRow[] }) {
  const { attribute, rows } = props;
  return (
    <ResponsiveContainer width="100%" height="100%">
      <BarChart
        data={[...rows]}
        layout="vertical"
        margin={{ top: 4, right: 16, bottom: 18, left: 8 }}
        title={words.title(attribute)}
        desc={words.description}
      >
        <XAxis
          type="number"
          domain={[0, 'dataMax']}
          allowDecimals={false}
          stroke="var(--line-strong)"
          label={{ value: words.axis, position: 'insideBottom', offset: -12, fill: 'var(--ink-soft)' }}
        />
        <YAxis
          dataKey="level"
          type="category"
          width={96}
          stroke="var(--line-strong)"
          axisLine={false}
          tickLine={false}
        />
        {parts.map(({ key, sign, fill, opacity }) => (
          <Bar
            key={key}
            dataKey={key}
            stackId="answers"
            fill={fill}
            fillOpacity={opacity}
            stroke="var(--linen)"
            strokeWidth={2}
            isAnimationActive={false}
          >
            <LabelList
              dataKey={key}
              position="center"
              fill="var(--ink)"
              formatter={(count: unknown) => (typeof count === 'number' && count > 0 ? `${sign} ${count}` : '')}
            />
          </Bar>
        ))}
      </BarChart>
    </ResponsiveContainer>
  );
}
