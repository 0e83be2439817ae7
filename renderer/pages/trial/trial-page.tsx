import { Link } from 'wouter';
import { factorWords } from '#core/trial/factor.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { counted, trialStateWords } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Shelf } from '#renderer/parts/shelf/shelf.tsx';
import { trialShelfJars } from '#renderer/parts/shelf/trial-shelf-jars.tsx';
import { useShelfSurroundings } from '#renderer/parts/shelf/use-shelf-surroundings.ts';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { HeldFacts } from './held-facts.tsx';
import { JarTable } from './jar-table.tsx';
import { TrialFindings } from './trial-findings.tsx';
import { words } from './words.ts';

function WholeTrial({ trial }: { readonly trial: ValueOf<'trials:open'> }) {
  const surroundings = useShelfSurroundings();
  return (
    <>
      <PageHead
        above={
          <>
            <Link href="/trials">{words.trials}</Link>
            <span className="soft">{factorWords[trial.factor]}</span>
            <SampleMark when={trial.isSample} />
          </>
        }
        title={trial.question}
        lead={`${counted(trial.jars, 'jar')}, ${trialStateWords(trial)}`}
      />
      <section className="section">
        <h2>{words.jars}</h2>
        <Shelf jars={trialShelfJars(trial, trial.jarsWhole, surroundings)} label={words.jars} />
        <details>
          <summary>{words.jarTable}</summary>
          <JarTable trial={trial} measures={surroundings.measures} />
        </details>
      </section>
      <section className="section">
        <h2>{words.held}</h2>
        <HeldFacts trial={trial} measures={surroundings.measures} />
        {trial.note === null ? null : <p>{trial.note}</p>}
      </section>
      <section className="section">
        <h2>{words.findings}</h2>
        <TrialFindings trial={trial.id} factor={trial.factor} levels={trial.levelsWhole.map(({ name }) => name)} />
      </section>
    </>
  );
}

/** One trial: its question, its jars on the shelf, what is held, and what was found. */
export function TrialPage({ id }: { readonly id: string }) {
  const trial = useAnswer('trials:open', { trial: id });
  return <Answer of={trial}>{(value) => <WholeTrial trial={value} />}</Answer>;
}
