import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { figureWords } from '#renderer/charts/figure-words.ts';
import { capital } from '#renderer/format/words.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { chanceWords } from './chance-words.ts';
import { words } from './words.ts';

type Scored = ValueOf<'findings:places'>['scored'][number];

interface RankDetailsProps {
  readonly scored: readonly Scored[];
  readonly order: readonly string[];
}

/** The scores by order alone: each taster's best-scored level first. */
export function RankDetails({ scored, order }: RankDetailsProps) {
  const rows = order.flatMap((name) => scored.filter(({ attribute }) => attribute === name));
  if (rows.length === 0) return null;
  const levels = [...new Set(rows.flatMap(({ samples }) => samples.map(({ sample }) => sample)))];
  return (
    <div className="subsection">
      <h3>
        <Explained words={words.ranks} />
      </h3>
      <DataTable
        caption={words.ranks}
        rows={rows}
        rowKey={({ attribute }) => attribute}
        columns={[
          { head: phrase`Attribute`, cell: ({ attribute }) => capital(attribute) },
          { head: phrase`Counted`, cell: ({ test }) => test?.blocks ?? '–', isFigure: true },
          ...levels.map((level) => ({
            head: level,
            cell: ({ samples }: Scored) => {
              const own = samples.find(({ sample }) => sample === level);
              return own === undefined ? '–' : `${figureWords(own.rankSum)} ${own.letters ?? ''}`.trim();
            },
            isFigure: true,
          })),
          { head: phrase`Apart from`, cell: (row) => figureWords(row.criticalDifference), isFigure: true },
          {
            head: phrase`Friedman`,
            cell: ({ test }) => (test === null ? '–' : fixed(test.chiSquare, 2)),
            isFigure: true,
          },
          {
            head: phrase`Kendall’s W`,
            cell: ({ test }) => (test === null ? '–' : fixed(test.kendallW, 2)),
            isFigure: true,
          },
          {
            head: phrase`Chance`,
            cell: ({ test }) =>
              test === null ? '–' : `${chanceWords(test.p)} ${test.exact ? words.exact : words.approximate}`,
            isFigure: true,
          },
          {
            head: phrase`Page’s L`,
            cell: ({ page }) => (page === null ? '–' : figureWords(page.l)),
            isFigure: true,
          },
          {
            head: phrase`Rising`,
            cell: ({ page }) => (page === null ? '–' : chanceWords(page.better)),
            isFigure: true,
          },
          {
            head: phrase`Falling`,
            cell: ({ page }) => (page === null ? '–' : chanceWords(page.worse)),
            isFigure: true,
          },
        ]}
      />
      <p className="soft small">
        <Explained words={words.ranksNote} />
      </p>
    </div>
  );
}
