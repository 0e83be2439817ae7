import { type CsvCell, csvText, tabbedText } from '#shared/csv-text.ts';
import type { CourseChartData } from './course-chart-data.ts';

const head: readonly CsvCell[] = ['measure', 'unit', 'kind', 'jar', 'level', 'hours', 'value', 'low_95', 'high_95'];

function rounded(value: number | null): number | null {
  return value === null ? null : Number(value.toFixed(4));
}

/** Everything a course chart draws as CSV, a line for each mark: readings, the fitted fall with its band, the wanted sweetness. */
export function courseCsv({ title, unit, series, line }: CourseChartData): string {
  const rows = series.flatMap(({ label, level, points, fall, sweetEnough }): CsvCell[][] => [
    ...points.map(({ hours, value }) => [
      title,
      unit,
      'reading',
      label,
      level,
      rounded(hours),
      rounded(value),
      null,
      null,
    ]),
    ...(fall?.curve ?? []).map(({ hours, value, low, high }) => [
      title,
      unit,
      `fitted, ${fall?.model ?? ''}`,
      label,
      level,
      rounded(hours),
      rounded(value),
      rounded(low),
      rounded(high),
    ]),
    ...(sweetEnough === null || line === null
      ? []
      : [
          [
            'Hours to the wanted sweetness',
            'h',
            'forecast',
            label,
            level,
            rounded(sweetEnough.hours),
            line.value,
            rounded(sweetEnough.low),
            rounded(sweetEnough.high),
          ],
        ]),
  ]);
  return csvText([head, ...rows]);
}

/** The readings as tab-separated text, ready for a spreadsheet. */
export function courseFigures({ unit, series, decimals }: CourseChartData): string {
  const rows = series.flatMap(({ label, level, points }) =>
    points.map(({ hours, value }) => [label, level, Number(hours.toFixed(2)), value.toFixed(decimals)]),
  );
  return tabbedText([['jar', 'level', 'hours', unit], ...rows]);
}
