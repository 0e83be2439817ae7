import { fixed, shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { ChartFrame } from './chart-frame.tsx';
import { asGravity, type CourseChartData, type CourseSeries } from './course-chart-data.ts';
import { courseCsv, courseFigures } from './course-csv.ts';
import { CourseKey } from './course-key.tsx';
import { areLabelled } from './course-marks.tsx';
import { CourseDrawing } from './late-drawings.ts';
import './course.css';

interface CourseChartProps {
  readonly data: CourseChartData;
  readonly sentence: string | null;
  readonly more?: string | null;
}

function readingsOf({ series }: CourseChartData) {
  return series.flatMap(({ jar, label, level, points }) =>
    points.map(({ hours, value }, place) => ({ key: `${jar} ${place}`, jar: `${label} (${level})`, hours, value })),
  );
}

function hoursWords(hours: number): string {
  return shownNumber(Number(hours.toFixed(1))).replace('-', '−');
}

function ReadingsTable({ data }: { readonly data: CourseChartData }) {
  const { title, unit, decimals } = data;
  return (
    <DataTable
      caption={phrase`${title}: every figure`}
      rows={readingsOf(data)}
      rowKey={({ key }) => key}
      columns={[
        { head: phrase`Jar`, cell: ({ jar }) => jar },
        { head: phrase`Hours`, cell: ({ hours }) => hoursWords(hours), isFigure: true },
        { head: unit, cell: ({ value }) => fixed(value, decimals), isFigure: true },
        ...(data.measure === 'sugar'
          ? [{ head: phrase`as SG`, cell: ({ value }: { value: number }) => asGravity(value), isFigure: true }]
          : []),
      ]}
    />
  );
}

const shapeWords = { 'first-order': phrase`the same share each hour`, logistic: phrase`slow, fast, slow` } as const;

function FallTable({ fitted }: { readonly fitted: readonly CourseSeries[] }) {
  const at = (point: NonNullable<CourseSeries['fall']>['curve'][number] | undefined) =>
    point === undefined
      ? '–'
      : `${fixed(point.value, 1)}${point.low === null || point.high === null ? '' : phrase` (${fixed(point.low, 1)} to ${fixed(point.high, 1)})`}`;
  return (
    <DataTable
      caption={phrase`Sugar: the fitted fall with its 95 % band`}
      rows={fitted}
      rowKey={({ jar }) => jar}
      columns={[
        { head: phrase`Jar`, cell: ({ label, level }) => `${label} (${level})` },
        { head: phrase`Falls`, cell: ({ fall }) => (fall === null ? '–' : shapeWords[fall.model]) },
        { head: phrase`°Bx at the start`, cell: ({ fall }) => at(fall?.curve[0]), isFigure: true },
        { head: phrase`at the last reading`, cell: ({ fall }) => at(fall?.curve.at(-1)), isFigure: true },
        {
          head: phrase`Typical miss`,
          cell: ({ fall }) => (fall === null || fall === undefined ? '–' : fixed(fall.residualSd, 2)),
          isFigure: true,
        },
      ]}
    />
  );
}

/** What the marks mean, in one line for pictures. */
export function courseKeyWords(data: CourseChartData): string {
  const jars = data.series.map(({ label, shape }) => `${label} ${shape}`).join(', ');
  const fitted = data.series.some(({ fall }) => fall !== null);
  return [
    phrase`Marks: readings (${jars}).`,
    ...(fitted ? [phrase`Line: fitted fall with its 95 % band.`] : []),
    ...(data.pulls.length > 0 ? [phrase`Dashed upright: pulled.`] : []),
    ...(data.series.some(({ sweetEnough }) => sweetEnough !== null)
      ? [phrase`Whisker: when the wanted sweetness is reached, 95 %.`]
      : []),
  ].join(' ');
}

/** One measure of some jars against the hours since their start: readings, fitted falls with bands, and the tables. */
export function CourseChart({ data, sentence, more = null }: CourseChartProps) {
  const fitted = data.series.filter(({ fall }) => fall !== null);
  const first = data.series[0];
  return (
    <ChartFrame
      title={data.title}
      scale={phrase`${data.measure === 'ph' ? '' : `${data.unit}, `}against the hours since the start`}
      sentence={sentence}
      more={more}
      colour={data.series.length === 1 && first !== undefined ? first.colour : 'var(--ink-soft)'}
      isLead={false}
      figures={courseFigures(data)}
      csv={() => courseCsv(data)}
      chartKey={courseKeyWords(data)}
      table={
        <>
          <ReadingsTable data={data} />
          {fitted.length === 0 ? null : <FallTable fitted={fitted} />}
        </>
      }
      below={areLabelled(data) || data.series.length < 2 ? null : <CourseKey series={data.series} />}
    >
      <CourseDrawing data={data} />
    </ChartFrame>
  );
}
