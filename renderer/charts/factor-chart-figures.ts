import { harmlessCell } from '#shared/csv-text.ts';
import type { FactorChartData } from './factor-chart-data.ts';

function cell(value: number | null): string {
  return value === null ? '' : String(Number(value.toPrecision(6)));
}

/**
 * The figures of a factor chart as tab-separated text, ready for a spreadsheet. What is unknown is an empty cell.
 *
 * @example factorChartFigures(data).split('\n')[0] // 'tang\tscores\tmean\tlow 95 %\thigh 95 %'
 */
export function factorChartFigures({ attribute, means }: FactorChartData): string {
  const head = [harmlessCell(attribute), 'scores', 'mean', 'low 95 %', 'high 95 %'];
  const rows = means.map(({ level, n, mean, low, high }) => [
    harmlessCell(level.replaceAll(/\s+/g, ' ')),
    String(n),
    cell(mean),
    cell(low),
    cell(high),
  ]);
  return [head, ...rows].map((row) => row.join('\t')).join('\n');
}
