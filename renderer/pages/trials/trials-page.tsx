import { useState } from 'react';
import { factorWords } from '#core/trial/factor.ts';
import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { counted } from '#renderer/format/counted.ts';
import { dateWords } from '#renderer/format/moments.ts';
import { joined, trialStateWords } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { FirstSteps } from '#renderer/parts/empty-state/first-steps.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { ShowMore } from '#renderer/parts/row-list/show-more.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { words } from './words.ts';

/** So many at first, and so many more each time. */
const shownAtOnce = 60;

/** Every trial, the newest first. */
export function TrialsPage() {
  const [limit, setLimit] = useState(shownAtOnce);
  const trials = useAnswer('trials:list', { limit }, { keepLast: true });
  return (
    <>
      <PageHead
        title={words.title}
        lead={words.lead}
        actions={
          trials.data?.trials.length === 0 ? null : (
            <ButtonLink to="/trials/new" weight="main">
              {words.plan}
            </ButtonLink>
          )
        }
      />
      <Answer of={trials}>
        {({ trials: all, more }) =>
          all.length === 0 ? (
            <EmptyState title={words.empty.title} actions={<FirstSteps />}>
              {words.empty.lines.map((line) => (
                <p key={line}>
                  <Explained words={line} />
                </p>
              ))}
            </EmptyState>
          ) : (
            <>
              <RowList label={words.title}>
                {all.map((trial) => (
                  <Row
                    key={trial.id}
                    title={trial.question}
                    to={`/trials/${trial.id}`}
                    marks={<SampleMark when={trial.isSample} />}
                    facts={
                      <>
                        <span>{factorWords[trial.factor]}</span> <span>{joined(trial.levels)}</span>{' '}
                        <span>{counted(trial.jars, 'jar')}</span>{' '}
                        <span>{phrase`from ${dateWords(trial.startsAt)}`}</span>
                      </>
                    }
                    end={trialStateWords(trial)}
                  />
                ))}
              </RowList>
              {more === true ? <ShowMore onMore={() => setLimit(limit + shownAtOnce)}>{words.more}</ShowMore> : null}
            </>
          )
        }
      </Answer>
    </>
  );
}
