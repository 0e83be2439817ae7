import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { figureWords, intervalWords } from '#renderer/charts/figure-words.ts';
import { capital } from '#renderer/format/words.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { ExplainedSummary } from '#renderer/parts/term/explained-label.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { chanceWords } from './chance-words.ts';
import { JarDetails } from './jar-details.tsx';
import { RankDetails } from './rank-details.tsx';
import { TrendDetails } from './trend-details.tsx';
import { words } from './words.ts';

type Findings = ValueOf<'findings:read'>;
type Attribute = NonNullable<Findings['analysis']>['attributes'][number];

function Comparisons({ attribute, control }: { readonly attribute: Attribute; readonly control: string | null }) {
  const name = capital(attribute.attribute);
  const interval = (row: { low: number; high: number }) => intervalWords(row.low, row.high);
  return (
    <div className="subsection">
      <h3>{name}</h3>
      {attribute.versusControl === null || control === null ? null : (
        <DataTable
          caption={words.control(name, control)}
          rows={attribute.versusControl}
          rowKey={({ sample }) => sample}
          columns={[
            { head: phrase`Against “${control}”`, cell: ({ sample }) => sample },
            { head: phrase`Difference`, cell: ({ difference }) => figureWords(difference), isFigure: true },
            { head: phrase`95 % interval`, cell: interval, isFigure: true },
          ]}
        />
      )}
      {attribute.pairs === null ? null : (
        <DataTable
          caption={words.pairs(name)}
          rows={attribute.pairs}
          rowKey={({ a, b }) => `${a}\n${b}`}
          columns={[
            { head: phrase`Pair`, cell: ({ a, b }) => phrase`${a} less ${b}` },
            { head: phrase`Difference`, cell: ({ difference }) => figureWords(difference), isFigure: true },
            { head: phrase`95 % interval`, cell: interval, isFigure: true },
          ]}
        />
      )}
    </div>
  );
}

interface FigureDetailsProps {
  readonly findings: Findings;
  readonly scored: ValueOf<'findings:places'>['scored'];
  readonly order: readonly string[];
}

/** Pairs, letters, intervals and the tests, folded away. */
export function FigureDetails({ findings, scored, order }: FigureDetailsProps) {
  const attributes = order.flatMap(
    (name) => findings.analysis?.attributes.filter(({ attribute }) => attribute === name) ?? [],
  );
  const sureness = (name: string) => findings.sentences.find(({ attribute }) => attribute === name);
  return (
    <details>
      <ExplainedSummary words={words.details} />
      <div className="figure-details">
        <div className="subsection">
          <h3>
            <Explained words={words.tests} />
          </h3>
          <DataTable
            caption={words.tests}
            rows={attributes}
            rowKey={({ attribute }) => attribute}
            columns={[
              { head: phrase`Attribute`, cell: ({ attribute }) => capital(attribute) },
              { head: phrase`Tasters`, cell: ({ tasters }) => tasters, isFigure: true },
              { head: phrase`Scores`, cell: ({ scores }) => scores, isFigure: true },
              { head: phrase`Missing`, cell: ({ missing }) => missing, isFigure: true },
              { head: phrase`F`, cell: ({ test }) => (test === null ? '–' : fixed(test.f, 2)), isFigure: true },
              {
                head: phrase`Degrees of freedom`,
                cell: ({ test }) => (test === null ? '–' : phrase`${test.dfSample} and ${figureWords(test.dfError)}`),
                isFigure: true,
              },
              { head: phrase`Chance`, cell: ({ test }) => chanceWords(test?.p ?? null), isFigure: true },
              {
                head: phrase`Adjusted`,
                cell: ({ attribute }) => chanceWords(sureness(attribute)?.chance ?? null),
                isFigure: true,
              },
            ]}
          />
          <p className="soft small">
            <Explained words={words.testsNote} />
          </p>
          <p className="soft small">
            <Explained words={words.letters} />
          </p>
          <JarDetails attributes={attributes} />
          <TrendDetails attributes={attributes} />
          <RankDetails scored={scored} order={order} />
        </div>
        {attributes.map((attribute) => (
          <Comparisons key={attribute.attribute} attribute={attribute} control={findings.control} />
        ))}
      </div>
    </details>
  );
}
