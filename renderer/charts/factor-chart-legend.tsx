import { phrase } from '#core/words/phrase.ts';
import { glued } from '#renderer/format/glued.ts';
import { chartKey, type KeyEntry } from './chart-key.ts';
import type { FactorChartData } from './factor-chart-data.ts';
import './factor-chart-legend.css';

const drawings: Readonly<Record<KeyEntry['mark'], React.ReactNode>> = {
  score: (
    <>
      <circle cx="8" cy="8" r="3" className="key-faint" />
      <circle cx="15" cy="5" r="3" className="key-faint" />
      <circle cx="21" cy="10" r="3" className="key-faint" />
    </>
  ),
  mean: (
    <>
      <path d="M14 1v14M11 1h6M11 15h6" className="key-line" />
      <path d="M14 3l5 5-5 5-5-5z" className="key-fill" />
    </>
  ),
  curve: (
    <>
      <path d="M1 10Q14 -2 27 9v5Q14 4 1 15z" className="key-band" />
      <path d="M1 12Q14 1 27 11" className="key-line" />
    </>
  ),
  best: (
    <>
      <path d="M9 0h10v16H9z" className="key-band" />
      <path d="M14 0v16" className="key-line is-dashed" />
    </>
  ),
  sip: <path d="M9 3l10 10M19 3L9 13" className="key-line" />,
};

/** What the marks of factor charts mean, once for all of them. */
export function FactorChartLegend({ charts }: { readonly charts: readonly FactorChartData[] }) {
  return (
    <ul className="chart-key small" aria-label={phrase`What the marks mean`}>
      {chartKey(charts).map(({ mark, words }) => (
        <li key={mark}>
          <svg viewBox="0 0 28 16" aria-hidden="true">
            {drawings[mark]}
          </svg>
          {glued(words)}
        </li>
      ))}
    </ul>
  );
}
