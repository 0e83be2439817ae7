import { Fragment, useState } from 'react';
import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { dateWords, timeWords } from '#renderer/format/moments.ts';
import { capital } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { ShowMore } from '#renderer/parts/row-list/show-more.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type RecordedTable, recordedTables } from '#shared/recorded-tables.ts';
import { EntryLines } from './entry-lines.tsx';
import { RowParts } from './row-parts.tsx';
import { pagesOf, type RecordedRow, wholeName } from './row-words.ts';
import { words } from './words.ts';
import './history.css';

type Entry = ValueOf<'history:row'>['entries'][number];

const aPage = 40;
const most = 500;

function EntryItem({ entry }: { readonly entry: Entry }) {
  return (
    <li className={entry.isUndone ? 'past is-undone' : 'past'}>
      <p className="past-when">
        <time dateTime={entry.at}>{`${dateWords(entry.at)}, ${timeWords(entry.at)}`}</time>
      </p>
      <div className="past-what">
        <h2>
          <Link className="past-summary" href={`/history/step/${entry.step}`}>
            {capital(entry.summary)}
          </Link>{' '}
          {entry.isUndone ? <span className="past-kind">({words.undone})</span> : null}
        </h2>
        <EntryLines entry={entry} />
      </div>
    </li>
  );
}

function Entries({ of }: { readonly of: RecordedRow }) {
  const [limit, setLimit] = useState(aPage);
  const history = useAnswer('history:row', { table: of.table, id: of.id, limit }, { keepLast: true });
  return (
    <Answer of={history}>
      {({ entries }) => (
        <>
          <ol className="pasts" aria-label={`${words.title}: ${wholeName(of)}`}>
            {entries.map((entry) => (
              <EntryItem key={entry.step} entry={entry} />
            ))}
          </ol>
          {entries.length < limit || limit >= most ? null : (
            <ShowMore onMore={() => setLimit(Math.min(most, limit * 3))}>{words.more}</ShowMore>
          )}
          {entries.length < most ? null : <p className="soft">{words.onlyLatest(most)}</p>}
        </>
      )}
    </Answer>
  );
}

function Gone() {
  return (
    <>
      <PageHead title={words.gone} />
      <EmptyState title={words.goneLine} actions={<ButtonLink to="/">{words.toStart}</ButtonLink>}>
        {null}
      </EmptyState>
    </>
  );
}

/** Where the thing stands: links to the pages of what it is, or is part of. */
function Whereabouts({ row }: { readonly row: RecordedRow }) {
  const hasOwnPage = pagesOf({ ...row, of: [] }).length > 0;
  return (
    <>
      {hasOwnPage ? null : <span>{capital(wholeName(row))}</span>}
      {pagesOf(row).map(({ words: said, path }) => (
        <Fragment key={path}>
          <Link href={path}>{capital(said)}</Link>
        </Fragment>
      ))}
    </>
  );
}

function History({ table, id }: { readonly table: RecordedTable; readonly id: string }) {
  const about = useAnswer('history:about', { table, id });
  return (
    <Answer of={about}>
      {({ row, isVeiled, parts }) =>
        row === null ? (
          <Gone />
        ) : (
          <>
            <PageHead above={<Whereabouts row={row} />} title={words.title} lead={words.lead} />
            {row.isHere ? null : (
              <div className="section">
                <p className="soft">
                  <Explained words={words.notHere} />
                </p>
              </div>
            )}
            {isVeiled ? (
              <div className="section">
                <p>
                  <Explained words={words.veiled} />
                </p>
              </div>
            ) : (
              <Entries of={row} />
            )}
            <RowParts of={row} parts={parts} />
          </>
        )
      }
    </Answer>
  );
}

/** Everything that ever happened to one thing: before and after, the newest first, with what was undone and what belongs to it. */
export function HistoryPage({ table, id }: { readonly table: string; readonly id: string }) {
  const known = recordedTables.find((each) => each === table);
  return known === undefined ? <Gone /> : <History key={`${known} ${id}`} table={known} id={id} />;
}
