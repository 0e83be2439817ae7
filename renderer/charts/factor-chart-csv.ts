import { type CsvCell, csvText } from '#shared/csv-text.ts';
import type { FactorChartData } from './factor-chart-data.ts';

const head: readonly CsvCell[] = [
  'attribute',
  'kind',
  'level',
  'taster',
  'jar',
  'day',
  'scores',
  'value',
  'low_95',
  'high_95',
];

function rowsOf({ attribute, scoreList, means, rows, sips }: FactorChartData): CsvCell[][] {
  return [
    ...scoreList.map(({ sample, taster, jar, score }) => [
      attribute,
      'score',
      sample,
      taster,
      jar,
      null,
      null,
      score,
      null,
      null,
    ]),
    ...means.map(({ level, n, mean, low, high }) => [attribute, 'mean', level, null, null, null, n, mean, low, high]),
    ...rows.flatMap(({ x, fit, band }) =>
      fit === null ? [] : [[attribute, 'curve', x, null, null, null, null, fit, band?.[0] ?? null, band?.[1] ?? null]],
    ),
    ...sips.map(({ level, jar, day, value }) => [
      attribute,
      'sip',
      level,
      'the maker',
      jar,
      Number(day.toFixed(2)),
      null,
      value,
      null,
      null,
    ]),
  ];
}

/** Everything that factor charts draw as one CSV, a line for each mark: scores, means, the curve, the maker's sips. */
export function factorChartCsv(charts: readonly FactorChartData[]): string {
  return csvText([head, ...charts.flatMap(rowsOf)]);
}
