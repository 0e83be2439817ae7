import { useState } from 'react';
import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { dateWords, timeWords } from '#renderer/format/moments.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { capital } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { ShowMore } from '#renderer/parts/row-list/show-more.tsx';
import type { Recorded } from './recorded.ts';
import { type Change, type Entry, whatChanged } from './what-changed.ts';
import { places, words } from './words.ts';
import './history.css';

const aPage = 40;
const most = 500;

function ChangeLine({ change }: { readonly change: Change }) {
  return (
    <div>
      <dt>{change.name}</dt>
      <dd>
        {change.before === null ? null : (
          <>
            <span className="was">{change.before}</span> <span className="unseen">{words.became}</span>
            <span aria-hidden="true">→</span>{' '}
          </>
        )}
        <span>{change.after}</span>
      </dd>
    </div>
  );
}

function EntryLines({ entry }: { readonly entry: Entry }) {
  const measures = useMeasures();
  if (entry.isErased) return <p className="soft">{words.erased}</p>;
  if (entry.after === null) return <p className="soft">{words.removed}</p>;
  const changes = whatChanged(entry, measures);
  if (changes.length === 0) return <p className="soft">{words.unchanged}</p>;
  return (
    <dl className="cell-changes">
      {changes.map((change) => (
        <ChangeLine key={change.column} change={change} />
      ))}
    </dl>
  );
}

function EntryItem({ entry }: { readonly entry: Entry }) {
  return (
    <li className={entry.isUndone ? 'past is-undone' : 'past'}>
      <p className="past-when">
        <time dateTime={entry.at}>{`${dateWords(entry.at)}, ${timeWords(entry.at)}`}</time>
      </p>
      <div className="past-what">
        <h2>
          <span className="past-summary">{capital(entry.summary)}</span>{' '}
          {entry.isUndone ? <span className="past-kind">({words.undone})</span> : null}
        </h2>
        <EntryLines entry={entry} />
      </div>
    </li>
  );
}

/** What the row was called last. */
function nameOf(entries: readonly Entry[]): string {
  for (const { after, before } of entries) {
    const row = after ?? before;
    const name = row?.label ?? row?.question ?? row?.name;
    if (typeof name === 'string') return name;
  }
  return '';
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

/** Everything that ever happened to one thing: before and after, the newest first, with what was undone. */
export function HistoryPage({ table, id }: { readonly table: string; readonly id: string }) {
  const [limit, setLimit] = useState(aPage);
  const place = places[table as Recorded];
  const history = useAnswer('history:row', { table, id, limit }, { keepLast: true, enabled: place !== undefined });
  if (place === undefined || history.data?.entries.length === 0) return <Gone />;
  return (
    <Answer of={history}>
      {({ entries }) => {
        const what = place.what(nameOf(entries));
        return (
          <>
            <PageHead
              above={<Link href={place.path(id)}>{capital(what)}</Link>}
              title={words.title}
              lead={words.lead}
            />
            <ol className="pasts" aria-label={`${words.title}: ${what}`}>
              {entries.map((entry) => (
                <EntryItem key={entry.step} entry={entry} />
              ))}
            </ol>
            {entries.length < limit || limit >= most ? null : (
              <ShowMore onMore={() => setLimit(Math.min(most, limit * 3))}>{words.more}</ShowMore>
            )}
          </>
        );
      }}
    </Answer>
  );
}
