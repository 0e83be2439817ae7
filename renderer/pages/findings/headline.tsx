import { glued } from '#renderer/format/glued.ts';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';
import './findings.css';

interface HeadlineProps {
  readonly trial: string;
  readonly headline: NonNullable<ValueOf<'findings:read'>['headline']>;
}

/** The answer to the trial's question: one sentence to be read from across the table, how sure it is, and its doubts. */
export function Headline({ trial, headline }: HeadlineProps) {
  return (
    <section className="section headline" aria-labelledby="answer">
      <h2 id="answer" className="unseen">
        {words.answer}
      </h2>
      <p className="headline-sentence">
        <Explained words={headline.sentence} />
      </p>
      {headline.sureness === null ? null : (
        <p>
          <Explained words={headline.sureness} />
        </p>
      )}
      {headline.also === null ? null : (
        <p>
          {words.alsoShown}: {glued(headline.also)}
        </p>
      )}
      {headline.doubts.length === 0 ? null : (
        <div>
          <h3>
            <Explained words={words.doubts} />
          </h3>
          <ul className="headline-doubts">
            {headline.doubts.map((doubt) => (
              <li key={doubt}>{glued(doubt)}</li>
            ))}
          </ul>
        </div>
      )}
      {headline.small.map((line) => (
        <p key={line} className="soft small">
          <Explained words={line} />
        </p>
      ))}
      <div className="button-row no-print">
        <ButtonLink to={`/trials/${trial}/promote`} weight={headline.winner === null ? 'plain' : 'main'}>
          {headline.winner === null ? words.promoteAny : words.promote}
        </ButtonLink>
      </div>
    </section>
  );
}
