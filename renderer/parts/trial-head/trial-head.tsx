import { Link } from 'wouter';
import { factorWords } from '#core/trial/factor.ts';
import { phrase } from '#core/words/phrase.ts';
import { counted } from '#renderer/format/counted.ts';
import { trialStateWords } from '#renderer/format/words.ts';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { useExplainedLabel } from '#renderer/parts/term/explained-label.tsx';
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

function StepLink({ to, name, isHere }: { readonly to: string; readonly name: string; readonly isHere: boolean }) {
  const { mark, words, describedBy } = useExplainedLabel<HTMLAnchorElement>(name);
  return (
    <Link {...mark} href={to} aria-current={isHere ? 'step' : undefined} aria-describedby={describedBy}>
      {words}
    </Link>
  );
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
        isTitleTheirs
        lead={`${counted(trial.jars, 'jar')}, ${trialStateWords(trial)}`}
      />
      <nav className="trial-steps no-print" aria-label={phrase`Steps of this trial`}>
        <ol>
          {steps.map((each) => (
            <li key={each.step}>
              <StepLink to={`/trials/${trial.id}${each.path}`} name={each.name} isHere={each.step === step} />
            </li>
          ))}
        </ol>
      </nav>
    </>
  );
}
