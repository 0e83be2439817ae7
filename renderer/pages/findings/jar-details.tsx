import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { capital } from '#renderer/format/words.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { chanceWords } from './chance-words.ts';
import { words } from './words.ts';

type Attribute = NonNullable<ValueOf<'findings:read'>['analysis']>['attributes'][number];

/** Where a level had several jars: levels against jars of one level. */
export function JarDetails({ attributes }: { readonly attributes: readonly Attribute[] }) {
  const rows = attributes.flatMap(({ attribute, jars }) => (jars === null ? [] : [{ attribute, jars }]));
  if (rows.length === 0) return null;
  return (
    <div className="subsection">
      <h3>
        <Explained words={words.jars} />
      </h3>
      <DataTable
        caption={words.jars}
        rows={rows}
        rowKey={({ attribute }) => attribute}
        columns={[
          { head: phrase`Attribute`, cell: ({ attribute }) => capital(attribute) },
          { head: phrase`F`, cell: ({ jars }) => fixed(jars.f, 2), isFigure: true },
          {
            head: phrase`Degrees of freedom`,
            cell: ({ jars }) => phrase`${jars.dfLevel} and ${jars.dfJar}`,
            isFigure: true,
          },
          { head: phrase`Chance`, cell: ({ jars }) => chanceWords(jars.p), isFigure: true },
        ]}
      />
      <p className="soft small">
        <Explained words={words.jarsNote} />
      </p>
    </div>
  );
}
