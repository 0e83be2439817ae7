import { Link } from 'wouter';
import { factorWords } from '#core/trial/factor.ts';
import { phrase } from '#core/words/phrase.ts';
import { counted } from '#renderer/format/counted.ts';
import { trialStateWords } from '#renderer/format/words.ts';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import './trial-head.css';

/** The steps of a trial after its plan, in the order of the work. */
export type TrialStep = 'jars' | 'taste' | 'findings' | 'promote';

const steps: readonly { readonly step: TrialStep; readonly name: string; readonly path: string }[] = [
  { step: 'jars', name: phrase`Jars`, path: '' },
  { step: 'taste', name: phrase`Taste`, path: '/taste' },
  { step: 'findings', name: phrase`Findings`, path: '/findings' },
  { step: 'promote', name: phrase`Promote`, path: '/promote' },
];

interface TrialHeadProps {
  readonly trial: ValueOf<'trials:open'>;
  readonly step: TrialStep;
}

/** The head that the steps of one trial share: its question, where it stands, and the way to the other steps. */
export function TrialHead({ trial, step }: TrialHeadProps) {
  return (
    <>
      <PageHead
        above={
          <>
            <Link href="/trials">{phrase`Trials`}</Link>
            <span className="soft">{factorWords[trial.factor]}</span>
            <SampleMark when={trial.isSample} />
          </>
        }
        title={trial.question}
        lead={`${counted(trial.jars, 'jar')}, ${trialStateWords(trial)}`}
      />
      <nav className="trial-steps no-print" aria-label={phrase`Steps of this trial`}>
        <ol>
          {steps.map((each) => (
            <li key={each.step}>
              <Link href={`/trials/${trial.id}${each.path}`} aria-current={each.step === step ? 'step' : undefined}>
                {each.name}
              </Link>
            </li>
          ))}
        </ol>
      </nav>
    </>
  );
}
