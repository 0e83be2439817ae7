import { useAnswer } from '#renderer/app/use-answer.ts';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { Judgement } from '#renderer/parts/judgement/judgement.tsx';
import { words as judgementWords } from '#renderer/parts/judgement/words.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { words } from './words.ts';

/** Where wishes were said: which level comes closest to them, and how often it would. */
export function Closest({ trial }: { readonly trial: string }) {
  const profile = useAnswer('profiles:open', { trial });
  if (profile.data === undefined || profile.data.wishes.length === 0) return null;
  return (
    <section className="section">
      <h2>
        <Explained words={judgementWords.closest} />
      </h2>
      {profile.data.setAfterReveal ? <p>{judgementWords.late}</p> : null}
      <Judgement trial={trial} isReady={profile.data.closedTastings > 0} />
      <div className="button-row no-print">
        <ButtonLink to={`/trials/${trial}/wishes`} weight="quiet">
          {words.toWishes}
        </ButtonLink>
      </div>
    </section>
  );
}
