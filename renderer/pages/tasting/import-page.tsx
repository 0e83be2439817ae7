import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useLongAnswer } from '#renderer/app/use-long-answer.ts';
import { useLongRequest } from '#renderer/app/use-long-request.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { TableSourceFields } from '#renderer/parts/table-source/table-source.tsx';
import { useTableSource } from '#renderer/parts/table-source/use-table-source.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import { UnderWay } from '#renderer/parts/under-way/under-way.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { ImportColumns } from './import-columns.tsx';
import { ImportPreview } from './import-preview.tsx';
import { importWords } from './import-words.ts';
import './import.css';

type Tasting = ValueOf<'tastings:open'>;

/** Codes of a refusal that says a column's name was not understood. */
const headerCodes = ['no-header', 'unknown-attribute', 'column-twice'];

function ImportForm({ tasting }: { readonly tasting: Tasting }) {
  const [mapping, setMapping] = useState<Readonly<Record<string, string>>>({});
  const source = useTableSource(() => setMapping({}));
  const [, go] = useLocation();
  const sayWithUndo = useSayWithUndo();
  const kinds = {
    isRanked: tasting.isRanked,
    isRepeated: tasting.replicates > 1,
    steps: tasting.attributes.filter(({ kind }) => kind === 'just-about-right').map(({ name }) => name),
  };
  const { isGiven } = source;
  const input = { table: source.settled, mapping: { ...mapping } };
  const key = { tasting: tasting.id, turn: source.turn, mapping };
  const columns = useAnswer('scores:columns', input, { enabled: isGiven, keepLast: true, key });
  const preview = useLongAnswer(
    'scores:import',
    { tasting: tasting.id, ...input, preview: true },
    { enabled: isGiven, keepLast: true, key },
  );
  const take = useLongRequest('scores:import');
  const isAsking = preview.value?.refused.some(({ row, code }) => row === 1 && headerCodes.includes(code)) ?? false;
  const isCurrent = source.isSettled && !preview.isEarlier && !columns.isPlaceholderData;

  async function keep() {
    const kept = await take.run({ tasting: tasting.id, ...input });
    if (kept === null) return;
    void sayWithUndo(importWords.taken(kept.accepted), { of: 'scores:import' });
    go(`/tastings/${tasting.id}`);
  }

  const columnChoice =
    columns.data === undefined ? null : (
      <ImportColumns
        columns={columns.data.columns}
        attributes={tasting.attributes.map(({ name }) => name)}
        onChange={(head, meaning) => setMapping((all) => ({ ...all, [head]: meaning }))}
      />
    );

  return (
    <>
      <TableSourceFields
        source={source}
        label={importWords.paste}
        hint={importWords.pasteHint(kinds)}
        example={tasting.isRanked ? importWords.rankedExample : importWords.example}
        fileLabel={importWords.file}
      />
      {isGiven && columnChoice !== null ? (
        <section className="section">
          {isAsking ? (
            <>
              <h2>
                <Explained words={importWords.columns} />
              </h2>
              <p>
                <Explained words={importWords.columnsAsk} />
              </p>
              {columnChoice}
            </>
          ) : (
            <details>
              <summary>{importWords.columns}</summary>
              {columnChoice}
            </details>
          )}
        </section>
      ) : null}
      {isGiven && (preview.value === undefined || preview.isEarlier || preview.failure !== null) ? (
        <UnderWay of={preview} doing={importWords.reading} />
      ) : null}
      {isGiven && preview.value !== undefined && preview.failure === null ? (
        <>
          <ImportPreview
            preview={preview.value}
            rows={columns.data?.rows ?? 0}
            isTaking={take.isUnderWay || !isCurrent}
            onTake={() => void keep()}
          />
          <UnderWay of={take} doing={importWords.keeping} />
        </>
      ) : null}
    </>
  );
}

/** Scores from a spreadsheet: pasted or from a file, looked at first, taken only when told. */
export function ImportPage({ id }: { readonly id: string }) {
  const tasting = useAnswer('tastings:open', { tasting: id });
  return (
    <Answer of={tasting}>
      {(value) => (
        <>
          <PageHead
            above={<Link href={`/tastings/${id}`}>{value.name}</Link>}
            title={importWords.title}
            lead={importWords.lead}
          />
          {value.closedAt === null ? <ImportForm tasting={value} /> : <p>{importWords.closed}</p>}
        </>
      )}
    </Answer>
  );
}
