import { CartesianGrid, ComposedChart, ResponsiveContainer, XAxis, YAxis } from 'recharts';
import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { hoursAxis, hoursAxisProps } from './chart-axes.ts';
import type { CourseChartData } from './course-chart-data.ts';
import { CourseMarks } from './course-marks.tsx';

/** The axes of a course chart; the marks stand on them. */
export function CourseDrawing({ data }: { readonly data: CourseChartData }) {
  const [xTicks, yTicks] = [[...data.xTicks], [...data.yTicks]];
  return (
    <ResponsiveContainer width="100%" height="100%">
      <ComposedChart
        data={xTicks.map((hours) => ({ hours, value: yTicks[0] }))}
        margin={{ top: 8, right: 34, bottom: 18, left: -18 }}
        title={phrase`${data.title} against ${hoursAxis}`}
        desc={phrase`The same figures stand in the table that goes with the chart.`}
      >
        <CartesianGrid vertical={false} stroke="var(--chart-grid)" />
        <XAxis {...hoursAxisProps(xTicks)} />
        <YAxis
          dataKey="value"
          type="number"
          domain={[yTicks[0] ?? 0, yTicks.at(-1) ?? 1]}
          ticks={yTicks}
          tickFormatter={shownNumber}
          stroke="var(--line-strong)"
          axisLine={false}
          tickLine={false}
        />
        <CourseMarks data={data} />
      </ComposedChart>
    </ResponsiveContainer>
  );
}
