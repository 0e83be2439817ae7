import { CartesianGrid, Line, LineChart, ResponsiveContainer, XAxis, YAxis } from 'recharts';
import { hoursBetween } from '#core/trial/moment.ts';
import { units } from '#core/units/unit-table.ts';
import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { ChartFrame } from '#renderer/charts/chart-frame.tsx';
import { dateWords, spanWords } from '#renderer/format/moments.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { csvText, tabbedText } from '#shared/csv-text.ts';
import { actWords, words } from './words.ts';

interface Weighing {
  readonly id: string;
  readonly at: string;
  readonly what: ValueOf<'cultures:open'>['log'][number]['what'];
  readonly weight_g: number;
}

const colour = 'var(--chart-fizz)';

function sentenceOf(weighings: readonly Weighing[], { mass }: Measures): string | null {
  const [first, last] = [weighings[0], weighings.at(-1)];
  if (first === undefined || last === undefined) return null;
  if (first === last) return words.chart.one(mass(last.weight_g));
  return words.chart.grown(mass(first.weight_g), mass(last.weight_g), spanWords(hoursBetween(first.at, last.at)));
}

/** The culture's weights over time, with the same figures as a table. */
export function WeightChart({
  log,
  measures,
}: {
  readonly log: ValueOf<'cultures:open'>['log'];
  readonly measures: Measures;
}) {
  const weighings = log.flatMap(({ id, at, what, weight_g }): Weighing[] =>
    weight_g === null ? [] : [{ id, at, what, weight_g }],
  );
  if (weighings.length === 0) return null;
  const unit = measures.system === 'us' ? units.oz : units.g;
  const shown = (weight_g: number) => Number((weight_g / unit.factor).toPrecision(4));
  const rows = weighings.map(({ at, weight_g }) => ({ x: Date.parse(at), weight: shown(weight_g) }));
  const cells = weighings.map(({ at, what, weight_g }) => [at.slice(0, 10), actWords[what], shown(weight_g)]);
  return (
    <ChartFrame
      title={words.chart.title}
      scale={unit.symbol}
      sentence={sentenceOf(weighings, measures)}
      more={null}
      colour={colour}
      isLead={false}
      figures={tabbedText([words.chart.heads, ...cells])}
      csv={() => csvText([['day', 'what', `weight (${unit.symbol})`], ...cells])}
      chartKey={words.chart.key}
      table={
        <DataTable
          caption={words.chart.caption}
          rows={weighings}
          rowKey={({ id }) => id}
          columns={[
            { head: words.chart.heads[0], cell: ({ at }) => dateWords(at) },
            { head: words.chart.heads[1], cell: ({ what }) => actWords[what] },
            { head: words.chart.heads[2], cell: ({ weight_g }) => measures.mass(weight_g), isFigure: true },
          ]}
        />
      }
    >
      <ResponsiveContainer width="100%" height="100%">
        <LineChart
          data={rows}
          margin={{ top: 10, right: 48, bottom: 4, left: 0 }}
          title={words.chart.caption}
          desc={phrase`The same figures stand in the table that goes with the chart.`}
        >
          <CartesianGrid vertical={false} stroke="var(--chart-grid)" />
          <XAxis
            dataKey="x"
            type="number"
            scale="time"
            domain={['dataMin', 'dataMax']}
            tickFormatter={(x: number) => dateWords(new Date(x).toISOString())}
            minTickGap={48}
            stroke="var(--line-strong)"
          />
          <YAxis
            type="number"
            domain={[0, 'auto']}
            width={48}
            tickFormatter={shownNumber}
            stroke="var(--line-strong)"
            axisLine={false}
            tickLine={false}
          />
          <Line
            dataKey="weight"
            type="linear"
            stroke={colour}
            strokeWidth={2}
            dot={{ r: 5, fill: colour, stroke: 'var(--linen)', strokeWidth: 1.5 }}
            isAnimationActive={false}
          />
        </LineChart>
      </ResponsiveContainer>
    </ChartFrame>
  );
}
