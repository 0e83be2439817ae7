import { useState } from 'react';
import { Link } from 'wouter';
import { counting } from '#core/words/figures.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { counted } from '#renderer/format/counted.ts';
import { dateWords, timeWords } from '#renderer/format/moments.ts';
import { capital } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { ShowMore } from '#renderer/parts/row-list/show-more.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { EntryLines } from './entry-lines.tsx';
import { ownersWords, wholeName } from './row-words.ts';
import { stepWords as words } from './words.ts';
import './history.css';

type Step = ValueOf<'history:step'>;

function ChangedRow({ changed: { row, ...entry } }: { readonly changed: Step['rows'][number] }) {
  const owners = ownersWords(row);
  return (
    <li className="past">
      <div className="past-what">
        <h2>
          <Link href={`/history/${row.table}/${row.id}`}>{capital(wholeName(row))}</Link>{' '}
          {row.isHere || entry.after === null ? null : <span className="past-kind">({words.isGone})</span>}
        </h2>
        {owners === '' ? null : <p className="past-of">{capital(owners)}</p>}
      </div>
      <EntryLines entry={entry} />
    </li>
  );
}

/** So many of the step's rows, and behind them, when asked, so many more. */
function Rows({ step: { step, rows, withheld, next } }: { readonly step: Step }) {
  const [isLonger, setIsLonger] = useState(false);
  return (
    <>
      {rows.length === 0 ? null : (
        <ol className="pasts" aria-label={words.list}>
          {rows.map((changed) => (
            <ChangedRow key={changed.change} changed={changed} />
          ))}
        </ol>
      )}
      {withheld === 0 ? null : <p className="section soft">{words.withheld(withheld, counting(withheld))}</p>}
      {next === null || isLonger ? null : <ShowMore onMore={() => setIsLonger(true)}>{words.more}</ShowMore>}
      {next !== null && isLonger ? <MoreRows step={step} after={next} /> : null}
    </>
  );
}

function MoreRows({ step, after }: { readonly step: number; readonly after: number }) {
  const more = useAnswer('history:step', { step, after });
  return <Answer of={more}>{(found) => <Rows step={found} />}</Answer>;
}

function Gone() {
  return (
    <>
      <PageHead title={words.gone} />
      <EmptyState title={words.goneLine} actions={<ButtonLink to="/data">{words.toData}</ButtonLink>}>
        {null}
      </EmptyState>
    </>
  );
}

function StepRows({ step }: { readonly step: number }) {
  const answer = useAnswer('history:step', { step });
  if (answer.error?.code === 'not-found') return <Gone />;
  return (
    <Answer of={answer}>
      {(found) => (
        <>
          <PageHead
            above={<Link href="/data">{words.data}</Link>}
            title={capital(found.summary)}
            lead={words.lead(`${dateWords(found.at)}, ${timeWords(found.at)}`, counted(found.total, 'row'))}
          />
          {found.total === 0 ? (
            <p className="section soft">
              <Explained words={words.noRows} />
            </p>
          ) : (
            <Rows step={found} />
          )}
        </>
      )}
    </Answer>
  );
}

/** What one step changed, row by row; each leads to everything that ever happened to it. */
export function StepPage({ step }: { readonly step: string }) {
  return /^[1-9]\d{0,14}$/.test(step) ? <StepRows key={step} step={Number(step)} /> : <Gone />;
}
