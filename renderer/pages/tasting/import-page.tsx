import { useEffect, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useHandedFile } from '#renderer/app/use-handed-file.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { fileFaultWords, readTextFile } from '#renderer/format/read-text-file.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { ImportColumns } from './import-columns.tsx';
import { ImportPreview } from './import-preview.tsx';
import { importWords } from './import-words.ts';
import './import.css';

type Tasting = ValueOf<'tastings:open'>;

/** Codes of a refusal that says a column's name was not understood. */
const headerCodes = ['no-header', 'unknown-attribute', 'column-twice'];

function headingOf(table: string): string {
  return table.split(/\r?\n/, 1)[0] ?? '';
}

function useSettled(value: string, pause_ms: number): string {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), pause_ms);
    return () => clearTimeout(timer);
  }, [value, pause_ms]);
  return settled;
}

function ImportForm({ tasting }: { readonly tasting: Tasting }) {
  const [table, setTable] = useState('');
  const [mapping, setMapping] = useState<Readonly<Record<string, string>>>({});
  const [fileFault, setFileFault] = useState<string | undefined>(undefined);
  const [, go] = useLocation();
  const settled = useSettled(table, 200);
  const kinds = {
    isRanked: tasting.isRanked,
    isRepeated: tasting.replicates > 1,
    steps: tasting.attributes.filter(({ kind }) => kind === 'just-about-right').map(({ name }) => name),
  };
  const isGiven = settled.trim() !== '';
  const input = { table: settled, mapping: { ...mapping } };
  const columns = useAnswer('scores:columns', input, { enabled: isGiven, keepLast: true });
  const preview = useAnswer(
    'scores:import',
    { tasting: tasting.id, ...input, preview: true },
    { enabled: isGiven, keepLast: true },
  );
  const take = useRequest('scores:import', { done: ({ accepted }) => importWords.taken(accepted) });
  const isAsking = preview.data?.refused.some(({ row, code }) => row === 1 && headerCodes.includes(code)) ?? false;
  const isCurrent = settled === table && !preview.isPlaceholderData && !columns.isPlaceholderData;

  async function readFile(file: File | undefined) {
    if (file === undefined) return;
    const read = await readTextFile(file);
    setFileFault(read.kind === 'fault' ? fileFaultWords[read.why] : undefined);
    if (read.kind !== 'text') return;
    setMapping({});
    setTable(read.text);
  }

  useHandedFile((file) => void readFile(file));

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
      <div className="section import-form">
        <Field label={importWords.paste} hint={importWords.pasteHint(kinds)}>
          {(wiring) => (
            <textarea
              {...wiring}
              className="import-table"
              rows={8}
              spellCheck={false}
              placeholder={tasting.isRanked ? importWords.rankedExample : importWords.example}
              value={table}
              onChange={({ target }) => {
                // Another heading row is another table: what was said of the old columns does not hold.
                if (headingOf(target.value) !== headingOf(table)) setMapping({});
                setTable(target.value);
              }}
            />
          )}
        </Field>
        <Field label={importWords.file} fault={fileFault}>
          {(wiring) => (
            <input
              {...wiring}
              type="file"
              accept=".csv,.tsv,.txt,.json,application/json,text/csv,text/tab-separated-values,text/plain"
              onChange={({ target }) => void readFile(target.files?.[0])}
            />
          )}
        </Field>
      </div>
      {isGiven && columnChoice !== null ? (
        <section className="section">
          {isAsking ? (
            <>
              <h2>{importWords.columns}</h2>
              <p>{importWords.columnsAsk}</p>
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
      {isGiven ? (
        <Answer of={preview}>
          {(value) => (
            <ImportPreview
              preview={value}
              rows={columns.data?.rows ?? 0}
              isTaking={take.isPending || !isCurrent}
              onTake={() =>
                take.mutate({ tasting: tasting.id, ...input }, { onSuccess: () => go(`/tastings/${tasting.id}`) })
              }
            />
          )}
        </Answer>
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
