import type { Factor } from '#core/trial/factor.ts';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';

const wantedWords = {
  title: 'What is wanted',
  facts: 'Say before the tasting how the drink should be; afterwards see which jar comes closest.',
} as const;

const apartFacts = 'Serve two jars blind, again and again, and count who finds the difference.';

/** The question that a test of two jars answers, by what the trial varies. */
function apartTitle(factor: Factor): string {
  return factor === 'state' ? 'Is frozen really different from fresh?' : 'Do two of these jars really taste different?';
}

interface TrialMoreProps {
  readonly trial: string;
  readonly factor: Factor;
}

/** What else can be done with a trial, beside its steps. */
export function TrialMore({ trial, factor }: TrialMoreProps) {
  return (
    <section className="section" aria-labelledby="trial-more">
      <h2 id="trial-more">More for this trial</h2>
      <RowList label="More for this trial">
        <Row title={wantedWords.title} to={`/trials/${trial}/wishes`} facts={<span>{wantedWords.facts}</span>} />
        <Row title={apartTitle(factor)} to={`/trials/${trial}/telling-apart`} facts={<span>{apartFacts}</span>} />
      </RowList>
    </section>
  );
}
