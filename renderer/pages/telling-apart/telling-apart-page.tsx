import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { dateWords } from '#renderer/format/moments.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { SetUpForm } from './set-up-form.tsx';
import { answeredWords, wayOf, wayWords, words } from './words.ts';
import './telling-apart.css';

/** The tests of one trial, open and closed. */
function TestsOfTrial({ trial }: { readonly trial: string }) {
  const tests = useAnswer('discriminations:list', {});
  return (
    <Answer of={tests}>
      {({ discriminations }) => {
        const own = discriminations.filter((test) => test.trial === trial);
        if (own.length === 0) return null;
        return (
          <section className="section">
            <h2>
              <Explained words={words.before} />
            </h2>
            <RowList label={words.before}>
              {own.map((test) => (
                <Row
                  key={test.id}
                  title={test.name}
                  to={`/telling-apart/${test.id}`}
                  marks={<SampleMark when={test.isSample} />}
                  facts={
                    <>
                      <span>{wayWords[wayOf(test.method)].title}</span> <span>{dateWords(test.heldAt)}</span>{' '}
                      <span>{answeredWords(test.answered, test.presentations)}</span>
                    </>
                  }
                  end={test.closedAt === null ? words.open : words.closed}
                />
              ))}
            </RowList>
          </section>
        );
      }}
    </Answer>
  );
}

/** Where a trial's two jars are put to the test: what was tested, and a new test. */
export function TellingApartPage({ id }: { readonly id: string }) {
  const trial = useAnswer('trials:open', { trial: id });
  const tasters = useAnswer('tasters:list', {});
  return (
    <Answer of={trial}>
      {(value) => (
        <>
          <PageHead
            above={<Link href={`/trials/${value.id}`}>{value.question}</Link>}
            title={words.title}
            lead={words.lead}
          />
          <TestsOfTrial trial={value.id} />
          <section className="section">
            <h2>
              <Explained words={words.setUp} />
            </h2>
            <Answer of={tasters}>{({ tasters: all }) => <SetUpForm trial={value} tasters={all} />}</Answer>
          </section>
        </>
      )}
    </Answer>
  );
}
