import type { FactorChartData } from '#renderer/charts/factor-chart-data.ts';
import { figureWords } from '#renderer/charts/figure-words.ts';
import { capital } from '#renderer/format/words.ts';
import { words } from './words.ts';

interface MeansTableProps {
  readonly charts: readonly FactorChartData[];
  readonly levels: readonly string[];
}

/** Every mean of every level on a few lines. */
export function MeansTable({ charts, levels }: MeansTableProps) {
  return (
    <table className="report-means">
      <caption>{words.means}</caption>
      <thead>
        <tr>
          <th scope="col">{words.attribute}</th>
          {levels.map((level) => (
            <th key={level} scope="col" className="is-figure">
              {level}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {charts.map(({ attribute, means }) => (
          <tr key={attribute}>
            <th scope="row">{capital(attribute)}</th>
            {levels.map((level) => {
              const own = means.find((each) => each.level === level);
              return (
                <td key={level} className="is-figure">
                  {figureWords(own?.mean ?? null)} <small>{own?.letters ?? ''}</small>
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
