import { useState } from 'react';
import { Link } from 'wouter';
import { counting } from '#core/words/figures.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { capital } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { ShowMore } from '#renderer/parts/row-list/show-more.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { manyWords, type RecordedRow, wholeName } from './row-words.ts';
import { words } from './words.ts';

type Part = ValueOf<'history:about'>['parts'][number];

interface PartsProps {
  readonly of: Pick<RecordedRow, 'table' | 'id'>;
  readonly part: Part['table'];
}

/** So many of them, and behind them, when asked, so many more. */
function SomeParts({ of: { table, id }, part, after }: PartsProps & { readonly after?: string | undefined }) {
  const [isLonger, setIsLonger] = useState(false);
  const parts = useAnswer('history:parts', { table, id, part, ...(after === undefined ? {} : { after }) });
  return (
    <Answer of={parts}>
      {({ rows, more }) => {
        const last = rows.at(-1)?.id;
        return (
          <>
            <ul className="past-parts">
              {rows.map((row) => (
                <li key={row.id}>
                  <Link href={`/history/${row.table}/${row.id}`}>{capital(wholeName(row))}</Link>
                </li>
              ))}
            </ul>
            {more && !isLonger ? <ShowMore onMore={() => setIsLonger(true)}>{words.moreParts}</ShowMore> : null}
            {more && isLonger ? <SomeParts of={{ table, id }} part={part} after={last} /> : null}
          </>
        );
      }}
    </Answer>
  );
}

function PartsOfTable({ of, part: { table, rows } }: { readonly of: RecordedRow; readonly part: Part }) {
  // What a house recipe is stands in its versions: they are shown at once.
  const [isOpen, setIsOpen] = useState(of.table === 'house_recipes');
  return (
    <details open={isOpen} onToggle={({ currentTarget }) => setIsOpen(currentTarget.open)}>
      <summary>{words.partsOf(manyWords(table), counting(rows))}</summary>
      {isOpen ? <SomeParts of={of} part={table} /> : null}
    </details>
  );
}

/** What is part of a thing, each with the way to its own history; read only when it is opened. */
export function RowParts({ of, parts }: { readonly of: RecordedRow; readonly parts: readonly Part[] }) {
  if (parts.length === 0) return null;
  return (
    <section className="section past-belongs" aria-labelledby="past-parts">
      <h2 id="past-parts">
        <Explained words={words.parts} />
      </h2>
      <p className="soft">
        <Explained words={words.partsLine} />
      </p>
      {parts.map((part) => (
        <PartsOfTable key={part.table} of={of} part={part} />
      ))}
    </section>
  );
}
