import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useLongAnswer } from '#renderer/app/use-long-answer.ts';
import { useLongRequest } from '#renderer/app/use-long-request.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { TableSourceFields } from '#renderer/parts/table-source/table-source.tsx';
import { useTableSource } from '#renderer/parts/table-source/use-table-source.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import { UnderWay } from '#renderer/parts/under-way/under-way.tsx';
import { readingColumns } from '#shared/closed-lists.ts';
import type { AskedOf, ValueOf } from '#shared/contract/all-requests.ts';
import { meaningWords, words } from './words.ts';
import './readings-import.css';

type Mapping = NonNullable<AskedOf<'readings:import'>['mapping']>;
type Told = ValueOf<'readings:import'>;

function Columns(props: { readonly told: Told; readonly onChange: (head: string, meaning: string) => void }) {
  const { told, onChange } = props;
  return (
    <details open={told.accepted === 0}>
      <summary>{words.columns}</summary>
      <div className="readings-columns">
        {told.columns.map(({ head, meaning }, place) => (
          <Field key={`${head} ${String(place)}`} label={head === '' ? `${words.column} ${place + 1}` : head}>
            {(wiring) => (
              <select {...wiring} value={meaning} onChange={({ target }) => onChange(head, target.value)}>
                {['', ...readingColumns].map((each) => (
                  <option key={each} value={each}>
                    {meaningWords[each]}
                  </option>
                ))}
              </select>
            )}
          </Field>
        ))}
      </div>
    </details>
  );
}

function Refused({ told }: { readonly told: Told }) {
  const all = told.refused.length + told.refusedMore;
  if (all === 0) return null;
  return (
    <>
      <p className="field-fault" role="alert">
        {words.bad(all)}
      </p>
      <DataTable
        caption={words.bad(all)}
        rows={told.refused.slice(0, 200).map((one, place) => ({ ...one, place }))}
        rowKey={({ place }) => String(place)}
        columns={[
          { head: words.row, cell: ({ row }) => row },
          { head: words.column, cell: ({ column }) => column ?? '' },
          { head: words.why, cell: ({ message }) => message },
        ]}
      />
      {all > 200 ? <p className="soft small">{words.more(all - 200)}</p> : null}
    </>
  );
}

function ImportForm({ trial }: { readonly trial: string }) {
  const [mapping, setMapping] = useState<Mapping>({});
  const source = useTableSource(() => setMapping({}));
  const [, go] = useLocation();
  const sayWithUndo = useSayWithUndo();
  const preview = useLongAnswer(
    'readings:import',
    { trial, table: source.settled, mapping, preview: true },
    { enabled: source.isGiven, keepLast: true, key: { trial, turn: source.turn, mapping } },
  );
  const take = useLongRequest('readings:import');
  const isCurrent = source.isSettled && !preview.isEarlier;
  const told = preview.value;

  async function keep() {
    const kept = await take.run({ trial, table: source.text, mapping });
    if (kept === null) return;
    void sayWithUndo(words.taken(kept.accepted), { of: 'readings:import' });
    go(`/trials/${trial}`);
  }

  return (
    <div className="section">
      <TableSourceFields
        source={source}
        label={words.paste}
        hint={words.pasteHint}
        example={words.example}
        fileLabel={words.file}
      />
      {source.isGiven ? (
        <section className="section">
          <h2>
            <Explained words={words.preview} />
          </h2>
          {told === undefined || preview.isEarlier || preview.failure !== null ? (
            <UnderWay of={preview} doing={words.looking} />
          ) : null}
          {told === undefined || preview.failure !== null ? null : (
            <>
              <Columns
                told={told}
                onChange={(head, meaning) => setMapping((all) => ({ ...all, [head]: meaning as Mapping[string] }))}
              />
              <p role="status">
                <strong>{told.accepted === 0 ? words.none : words.good(told.accepted)}</strong>
              </p>
              <Refused told={told} />
              <UnderWay of={take} doing={words.taking} />
              {told.accepted === 0 ? null : (
                <div className="button-row">
                  <Button weight="main" disabled={!isCurrent || take.isUnderWay} onClick={() => void keep()}>
                    {words.take(told.accepted)}
                  </Button>
                </div>
              )}
            </>
          )}
        </section>
      ) : null}
    </div>
  );
}

/** Readings of a trial's jars from a table: looked at first, taken only when told. */
export function ReadingsImportPage({ id }: { readonly id: string }) {
  const trial = useAnswer('trials:open', { trial: id });
  return (
    <Answer of={trial}>
      {({ question }) => (
        <>
          <PageHead above={<Link href={`/trials/${id}`}>{question}</Link>} title={words.title} lead={words.lead} />
          <ImportForm trial={id} />
        </>
      )}
    </Answer>
  );
}
