import { Link, useLocation } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { dateWords } from '#renderer/format/moments.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { HistoryLink } from '#renderer/parts/history-link/history-link.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { ApartResult } from './apart-result.tsx';
import { PouringList } from './pouring-list.tsx';
import { RevealButton } from './reveal-button.tsx';
import { Trays } from './trays.tsx';
import { taskWords, wayOf, wayWords, words } from './words.ts';
import './telling-apart.css';

type Test = ValueOf<'discriminations:open'>;

function OpenTest({ test }: { readonly test: Test }) {
  return (
    <>
      {test.warnings.map((line) => (
        <Caution key={line}>{line}</Caution>
      ))}
      <section className="section apart-answers">
        <h2>
          <Explained words={words.answers} />
        </h2>
        <Trays test={test} />
      </section>
      <section className="section">
        <h2>
          <Explained words={words.pouring} />
        </h2>
        <PouringList test={test} />
      </section>
      <section className="section">
        <h2>
          <Explained words={words.reveal} />
        </h2>
        <p className="soft">
          <Explained words={words.revealLine} />
        </p>
        <RevealButton test={test} />
      </section>
    </>
  );
}

function RemoveButton({ test }: { readonly test: Test }) {
  const [, go] = useLocation();
  const remove = useRequest('discriminations:remove', { done: () => words.removed(test.name) });
  const after = test.trial === null ? '/trials' : `/trials/${test.trial}/telling-apart`;
  return (
    <Button
      weight="quiet"
      disabled={remove.isPending}
      onClick={() => remove.mutate({ discrimination: test.id }, { onSuccess: () => go(after) })}
    >
      {words.remove}
    </Button>
  );
}

/** One test: blind while it is open, and what it found once the cups are revealed. */
export function ApartTestPage({ id }: { readonly id: string }) {
  const test = useAnswer('discriminations:open', { discrimination: id });
  return (
    <Answer of={test}>
      {(value) => (
        <>
          <PageHead
            above={
              <>
                {value.trial === null ? null : (
                  <>
                    <Link href={`/trials/${value.trial}`}>{words.trial}</Link>
                    <Link href={`/trials/${value.trial}/telling-apart`}>{words.allTests}</Link>
                  </>
                )}
                <span className="soft">
                  {wayWords[wayOf(value.method)].title}, {dateWords(value.heldAt)}
                </span>
                <SampleMark when={value.isSample} />
              </>
            }
            title={value.name}
            lead={value.closedAt === null ? taskWords(value.method, value.asked) : undefined}
          />
          {value.closedAt === null ? <OpenTest test={value} /> : <ApartResult test={value} />}
          <div className="button-row no-print">
            {value.closedAt !== null && value.trial !== null ? (
              <ButtonLink to={`/trials/${value.trial}/telling-apart`}>{words.again}</ButtonLink>
            ) : null}
            <RemoveButton test={value} />
          </div>
          <HistoryLink table="discriminations" id={value.id} />
        </>
      )}
    </Answer>
  );
}
