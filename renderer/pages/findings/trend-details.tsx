import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { figureWords, intervalWords } from '#renderer/charts/figure-words.ts';
import { capital } from '#renderer/format/words.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { chanceWords } from './chance-words.ts';
import { words } from './words.ts';

type Attribute = NonNullable<ValueOf<'findings:read'>['analysis']>['attributes'][number];

/** The line and the bend through ordered levels, where the levels stand on a line. */
export function TrendDetails({ attributes }: { readonly attributes: readonly Attribute[] }) {
  const rows = attributes.flatMap(({ attribute, trend }) => (trend === null ? [] : [{ attribute, trend }]));
  if (rows.length === 0) return null;
  return (
    <div className="subsection">
      <h3>
        <Explained words={words.trends} />
      </h3>
      <DataTable
        caption={words.trends}
        rows={rows}
        rowKey={({ attribute }) => attribute}
        columns={[
          { head: phrase`Attribute`, cell: ({ attribute }) => capital(attribute) },
          { head: phrase`Slope`, cell: ({ trend }) => fixed(trend.slope, 2).replace('-', '−'), isFigure: true },
          {
            head: phrase`95 % interval`,
            cell: ({ trend }) => intervalWords(trend.slopeLow, trend.slopeHigh),
            isFigure: true,
          },
          { head: phrase`Chance of the slope`, cell: ({ trend }) => chanceWords(trend.slopeP), isFigure: true },
          {
            head: phrase`Bend`,
            cell: ({ trend }) => (trend.curvature === null ? '–' : fixed(trend.curvature, 2).replace('-', '−')),
            isFigure: true,
          },
          { head: phrase`Chance of the bend`, cell: ({ trend }) => chanceWords(trend.curvatureP), isFigure: true },
          { head: phrase`Page’s L`, cell: ({ trend }) => figureWords(trend.pageL), isFigure: true },
        ]}
      />
      <p className="soft small">
        <Explained words={words.trendsNote} />
      </p>
    </div>
  );
}
