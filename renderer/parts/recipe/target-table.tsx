import { phrase } from '#core/words/phrase.ts';
import { figureWords } from '#renderer/charts/figure-words.ts';
import { capital } from '#renderer/format/words.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Draft = ValueOf<'recipes:preview'>;

/** How the drink should taste: means, how far the tasters lay apart, and on what it rests. */
export function TargetTable({ version }: { readonly version: Pick<Draft, 'target' | 'basis'> }) {
  if (version.target.length === 0)
    return (
      <p className="soft">
        <Explained words={words.noTarget} />
      </p>
    );
  const isPanel = version.basis === 'panel';
  return (
    <>
      <DataTable
        caption={words.targetTable}
        rows={version.target}
        rowKey={({ attribute }) => attribute}
        columns={[
          { head: phrase`Attribute`, cell: ({ attribute }) => capital(attribute) },
          { head: isPanel ? phrase`Mean` : phrase`Your sips`, cell: ({ mean }) => figureWords(mean), isFigure: true },
          {
            head: phrase`Spread`,
            cell: ({ spread }) => (spread === null ? '–' : `± ${figureWords(spread)}`),
            isFigure: true,
          },
          { head: isPanel ? phrase`Tasters` : phrase`Jars`, cell: ({ n }) => n, isFigure: true },
        ]}
      />
      <p className="soft small">
        <Explained words={isPanel ? words.spreadOfPanel : words.targetOfSips} />
      </p>
    </>
  );
}
