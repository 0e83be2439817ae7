import { type CsvCell, tabbedText } from '#shared/csv-text.ts';
import type { FactorChartData } from './factor-chart-data.ts';

function rounded(value: number | null): CsvCell {
  return value === null ? null : Number(value.toPrecision(6));
}

/**
 * The figures of a factor chart as tab-separated text, ready for a spreadsheet. What is unknown is an empty cell.
 *
 * @example factorChartFigures(data).split('\n')[0] // 'tang\tscores\tmean\tlow 95 %\thigh 95 %'
 */
export function factorChartFigures({ attribute, means }: FactorChartData): string {
  const head = [attribute, 'scores', 'mean', 'low 95 %', 'high 95 %'];
  const rows = means.map(({ level, n, mean, low, high }) => [level, n, rounded(mean), rounded(low), rounded(high)]);
  return tabbedText([head, ...rows]);
}
