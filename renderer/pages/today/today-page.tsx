import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useAnswers } from '#renderer/app/use-answers.ts';
import { counted } from '#renderer/format/counted.ts';
import { dayAndTime, wholeDayWords } from '#renderer/format/moments.ts';
import { useNow } from '#renderer/format/use-now.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { FirstSteps } from '#renderer/parts/empty-state/first-steps.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Shelf } from '#renderer/parts/shelf/shelf.tsx';
import { trialShelfJars } from '#renderer/parts/shelf/trial-shelf-jars.tsx';
import { useShelfSurroundings } from '#renderer/parts/shelf/use-shelf-surroundings.ts';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { needTitle, ownZone } from './need.ts';
import { NeedList } from './need-list.tsx';
import { words } from './words.ts';
import './today.css';

type Trial = ValueOf<'trials:open'>;
type Today = ValueOf<'today:read'>;
type Trials = ValueOf<'trials:list'>['trials'];

function StandingTrial({ trial }: { readonly trial: Trial }) {
  const surroundings = useShelfSurroundings();
  const standing = trial.jarsWhole.filter(({ state }) => state === 'fermenting');
  if (standing.length === 0) return null;
  return (
    <div className="subsection">
      <div className="section-head">
        <h3>
          <Link href={`/trials/${trial.id}`}>{trial.question}</Link> <SampleMark when={trial.isSample} />
        </h3>
        <span className="soft">{phrase`${counted(standing.length, 'jar')} standing`}</span>
      </div>
      <Shelf jars={trialShelfJars(trial, standing, surroundings)} label={trial.question} />
    </div>
  );
}

/** The jars that stand, trial by trial. */
function StandingShelf({ trials }: { readonly trials: Trials }) {
  const { values, failure } = useAnswers(
    'trials:open',
    trials.filter(({ state }) => state === 'fermenting').map(({ id }) => ({ trial: id })),
  );
  const isStanding = values.some(({ jarsWhole }) => jarsWhole.some(({ state }) => state === 'fermenting'));
  if (failure !== null) return <p role="alert">{failure.message}</p>;
  if (!isStanding) return null;
  return (
    <section className="section">
      <h2>
        <Explained words={words.shelf} />
      </h2>
      {values.map((trial) => (
        <StandingTrial key={trial.id} trial={trial} />
      ))}
    </section>
  );
}

function WaitingBottles({ count }: { readonly count: number }) {
  if (count === 0) return null;
  return (
    <section className="section">
      <h2>
        <Explained words={words.toBottles} />
      </h2>
      <RowList label={words.toBottles}>
        <Row
          title={words.bottles(count)}
          to="/bottles"
          actions={<ButtonLink to="/bottles">{words.openOne}</ButtonLink>}
        />
      </RowList>
    </section>
  );
}

function NothingDue({ today }: { readonly today: Today }) {
  const next = today.needs.find(({ when }) => when === 'later');
  return (
    <div className="section">
      <p className="soft">
        {words.nothingDue} {next === undefined ? null : words.next(needTitle(next), dayAndTime(next.dueAt))}
      </p>
    </div>
  );
}

function Idle() {
  return (
    <EmptyState
      title={words.idle.title}
      actions={
        <>
          <ButtonLink to="/trials/new" weight="main">
            {words.planTrial}
          </ButtonLink>
          <ButtonLink to="/trials">{words.lookAtTrials}</ButtonLink>
        </>
      }
    >
      <p>
        <Explained words={words.idle.line} />
      </p>
    </EmptyState>
  );
}

function Empty() {
  return (
    <EmptyState title={words.empty.title} actions={<FirstSteps />}>
      {words.empty.lines.map((line) => (
        <p key={line}>
          <Explained words={line} />
        </p>
      ))}
    </EmptyState>
  );
}

function WholeToday({ today, trials, now }: { readonly today: Today; readonly trials: Trials; readonly now: number }) {
  const at = (when: Today['needs'][number]['when']) => today.needs.filter((need) => need.when === when);
  const isQuiet = at('overdue').length + at('today').length === 0;
  const isIdle = trials.every(({ state }) => state !== 'planned' && state !== 'fermenting');
  return (
    <>
      {isQuiet && today.needs.length > 0 ? <NothingDue today={today} /> : null}
      <NeedList title={words.overdue} needs={at('overdue')} now={now} />
      <NeedList title={words.today} needs={at('today')} now={now} />
      <StandingShelf trials={trials} />
      <WaitingBottles count={today.bottlesWaiting} />
      <NeedList title={words.putOffTitle} needs={at('put-off')} now={now} />
      <NeedList title={words.later} needs={at('later')} now={now} />
      {isIdle ? <Idle /> : null}
    </>
  );
}

function todayLead(now: number): string {
  return wholeDayWords(now);
}

/** What the kitchen needs now, each thing done in one touch, and the jars themselves. */
export function TodayPage() {
  const kitchen = useAnswer('kitchen:open', {});
  const trials = useAnswer('trials:list', { only: 'awake' });
  const today = useAnswer('today:read', { zone: ownZone() });
  const now = useNow();
  const read = useRef(now);
  const { refetch } = today;
  // What is due changes with the clock, not only with the rows.
  useEffect(() => {
    if (read.current === now) return;
    read.current = now;
    void refetch();
  }, [now, refetch]);
  return (
    <>
      <PageHead title={words.title} lead={todayLead(now)} />
      <Answer of={kitchen}>
        {({ counts }) => (
          <Answer of={trials}>
            {({ trials: awake }) => (
              <Answer of={today}>
                {(needed) =>
                  counts.trials === 0 && needed.needs.length === 0 && needed.bottlesWaiting === 0 ? (
                    <Empty />
                  ) : (
                    <WholeToday today={needed} trials={awake} now={now} />
                  )
                }
              </Answer>
            )}
          </Answer>
        )}
      </Answer>
    </>
  );
}
