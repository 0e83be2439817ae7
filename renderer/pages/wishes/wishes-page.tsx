import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { HistoryLink } from '#renderer/parts/history-link/history-link.tsx';
import { Judgement } from '#renderer/parts/judgement/judgement.tsx';
import { words as judgementWords } from '#renderer/parts/judgement/words.ts';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { BeforeTasting } from './before-tasting.tsx';
import { useWishes } from './use-wishes.ts';
import { wishPlaces } from './wish.ts';
import { WishRow } from './wish-row.tsx';
import { words } from './words.ts';
import './wishes.css';

interface WishesProps {
  readonly trial: ValueOf<'trials:open'>;
  readonly profile: ValueOf<'profiles:open'>;
}

function Wishes({ trial, profile }: WishesProps) {
  const keeper = useWishes(trial.id);
  const isTasted = profile.closedTastings > 0;
  const hasWishes = profile.wishes.length > 0;
  return (
    <>
      <section className="section">
        <h2>
          <Explained words={words.wishes} />
        </h2>
        <p className="soft">
          <Explained words={words.wishesLine} />
        </p>
        <div className="wishes">
          {wishPlaces(profile).map((place) => (
            <WishRow key={place.attribute.name} place={place} keeper={keeper} />
          ))}
        </div>
      </section>
      <section className="section">
        <h2>
          <Explained words={judgementWords.closest} />
        </h2>
        {profile.setAfterReveal ? <p className="wish-late">{judgementWords.late}</p> : null}
        {isTasted ? null : (
          <p className="soft">
            <Explained words={words.notYet} />
          </p>
        )}
        {isTasted && !hasWishes ? (
          <p className="soft">
            <Explained words={words.noWishes} />
          </p>
        ) : null}
        <Judgement trial={trial.id} isReady={isTasted && hasWishes} />
      </section>
      <section className="section">
        <h2>
          <Explained words={words.before} />
        </h2>
        <p className="soft">
          <Explained words={words.beforeLine} />
        </p>
        <BeforeTasting levels={trial.levels.length} />
      </section>
      <HistoryLink table="trials" id={trial.id} />
    </>
  );
}

/** What is wanted of a trial's drink, which level comes closest, and what the panel will be able to see. */
export function WishesPage({ id }: { readonly id: string }) {
  const trial = useAnswer('trials:open', { trial: id });
  const profile = useAnswer('profiles:open', { trial: id });
  return (
    <Answer of={trial}>
      {(value) => (
        <>
          <PageHead
            above={
              <>
                <Link href={`/trials/${value.id}`}>{value.question}</Link>
                <SampleMark when={value.isSample} />
              </>
            }
            title={words.title}
            lead={words.lead}
          />
          <Answer of={profile}>{(wanted) => <Wishes trial={value} profile={wanted} />}</Answer>
        </>
      )}
    </Answer>
  );
}
