import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useAnswers } from '#renderer/app/use-answers.ts';
import { dayWords } from '#renderer/format/moments.ts';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { sipWords } from '#renderer/parts/sip-entry/read-sip.ts';
import { SipEntry, SipHint } from '#renderer/parts/sip-entry/sip-entry.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Trial = ValueOf<'trials:open'>;

function StandingSips({ trial }: { readonly trial: Trial }) {
  const sips = useAnswer('sips:byTrial', { trial: trial.id });
  const jars = trial.jarsWhole.filter(({ state }) => state === 'fermenting');
  const lastOf = (jar: string) => sips.data?.sips.filter((sip) => sip.jar === jar).at(-1);
  return (
    <section className="section">
      <h2>
        <Link href={`/trials/${trial.id}/taste`}>{trial.question}</Link> <SampleMark when={trial.isSample} />
      </h2>
      {jars.map((jar) => {
        const last = lastOf(jar.id);
        return (
          <div key={jar.id} className="subsection">
            <p>
              <strong>{jar.label}</strong> {jar.levelName}
              {last === undefined ? null : (
                <span className="soft"> {words.last(sipWords(last), dayWords(last.takenAt))}</span>
              )}
            </p>
            <SipEntry jar={jar} />
          </div>
        );
      })}
    </section>
  );
}

/** The daily round: a sip of every standing jar, whatever trial it belongs to. */
export function SipsPage() {
  const trials = useAnswer('trials:list', { only: 'awake' });
  const awake = trials.data?.trials.filter(({ standing }) => standing > 0) ?? [];
  const { values, isPending, failure } = useAnswers(
    'trials:open',
    awake.map(({ id }) => ({ trial: id })),
  );
  const standing = values.filter(({ jarsWhole }) => jarsWhole.some(({ state }) => state === 'fermenting'));
  const isRead = trials.data !== undefined && !isPending;
  return (
    <>
      <PageHead title={words.title} lead={words.lead} />
      {failure === null ? null : <p role="alert">{failure.message}</p>}
      {standing.length === 0 ? null : <SipHint />}
      {standing.map((trial) => (
        <StandingSips key={trial.id} trial={trial} />
      ))}
      {isRead && standing.length === 0 && failure === null ? (
        <EmptyState title={words.none}>
          <p>
            <Explained words={words.noneLine} />
          </p>
        </EmptyState>
      ) : null}
    </>
  );
}
