import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useAnswers } from '#renderer/app/use-answers.ts';
import { dayWords } from '#renderer/format/moments.ts';
import { counted } from '#renderer/format/words.ts';
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
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { dueJars } from './due-jars.ts';
import { DueList } from './due-list.tsx';
import { words } from './words.ts';

type Trial = ValueOf<'trials:open'>;

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
        <span className="soft">{counted(standing.length, 'jar')} standing</span>
      </div>
      <Shelf jars={trialShelfJars(trial, standing, surroundings)} label={trial.question} />
    </div>
  );
}

function OpenTastings() {
  const tastings = useAnswer('tastings:list', {});
  const open = tastings.data?.tastings.filter(({ closedAt }) => closedAt === null) ?? [];
  if (open.length === 0) return null;
  return (
    <section className="section">
      <h2>{words.tastings}</h2>
      <RowList label={words.tastings}>
        {open.map((tasting) => (
          <Row
            key={tasting.id}
            title={tasting.name}
            {...(tasting.trial === null ? {} : { to: `/trials/${tasting.trial}` })}
            marks={<SampleMark when={tasting.isSample} />}
            facts={`${counted(tasting.samples, 'sample')}, ${counted(tasting.tasters, 'taster')}, ${dayWords(tasting.heldAt)}`}
            end={`${tasting.scores} of ${tasting.expected} scores`}
          />
        ))}
      </RowList>
    </section>
  );
}

function TodayShelf({ trials }: { readonly trials: ValueOf<'trials:list'>['trials'] }) {
  const { now } = useShelfSurroundings();
  const awake = trials.filter(({ state }) => state === 'planned' || state === 'fermenting');
  const { values, failure } = useAnswers(
    'trials:open',
    awake.map(({ id }) => ({ trial: id })),
  );
  const due = dueJars(values, now);
  const at = (when: string) => due.filter((one) => one.when === when);
  const isStanding = values.some(({ jarsWhole }) => jarsWhole.some(({ state }) => state === 'fermenting'));
  return (
    <>
      {failure === null ? null : <p role="alert">{failure.message}</p>}
      <DueList title={words.overdue} due={at('overdue')} now={now} />
      <DueList title={words.today} due={at('today')} now={now} />
      {isStanding ? (
        <section className="section">
          <h2>{words.shelf}</h2>
          {values.map((trial) => (
            <StandingTrial key={trial.id} trial={trial} />
          ))}
        </section>
      ) : null}
      <OpenTastings />
      <DueList title={words.later} due={at('later')} now={now} />
      {awake.length === 0 ? (
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
          <p>{words.idle.line}</p>
        </EmptyState>
      ) : null}
    </>
  );
}

function todayLead(now: number): string {
  return new Intl.DateTimeFormat('en-GB', { weekday: 'long', day: 'numeric', month: 'long' }).format(now);
}

/** What the jars want today, and the jars themselves. */
export function TodayPage() {
  const trials = useAnswer('trials:list', {});
  const { now } = useShelfSurroundings();
  return (
    <>
      <PageHead title={words.title} lead={todayLead(now)} />
      <Answer of={trials}>
        {(value) =>
          value.trials.length === 0 ? (
            <EmptyState title={words.empty.title} actions={<FirstSteps />}>
              {words.empty.lines.map((line) => (
                <p key={line}>{line}</p>
              ))}
            </EmptyState>
          ) : (
            <TodayShelf trials={value.trials} />
          )
        }
      </Answer>
    </>
  );
}
