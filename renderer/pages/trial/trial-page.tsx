import { useAnswer } from '#renderer/app/use-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { BaseMould } from '#renderer/parts/caution/base-mould.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { Shelf } from '#renderer/parts/shelf/shelf.tsx';
import { trialShelfJars } from '#renderer/parts/shelf/trial-shelf-jars.tsx';
import { useShelfSurroundings } from '#renderer/parts/shelf/use-shelf-surroundings.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { TrialHead } from '#renderer/parts/trial-head/trial-head.tsx';
import { TrialMore } from '#renderer/parts/trial-more/trial-more.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { HeldFacts } from './held-facts.tsx';
import { JarTable } from './jar-table.tsx';
import { JarWorkList } from './jar-work-list.tsx';
import { TrialScience } from './trial-science.tsx';
import { TrialShelf } from './trial-shelf.tsx';
import { TrialTimeline } from './trial-timeline.tsx';
import { words } from './words.ts';

function WholeTrial({ trial }: { readonly trial: ValueOf<'trials:open'> }) {
  const surroundings = useShelfSurroundings();
  return (
    <>
      <TrialHead trial={trial} step="jars" />
      <section className="section">
        <h2>
          <Explained words={words.jars} />
        </h2>
        <BaseMould mould={trial.baseMould} />
        <TrialShelf trial={trial}>
          <Shelf jars={trialShelfJars(trial, trial.jarsWhole, surroundings)} label={words.jars} />
        </TrialShelf>
        <JarWorkList trial={trial} now={surroundings.now} />
        <details>
          <summary>{words.jarTable}</summary>
          <JarTable trial={trial} measures={surroundings.measures} />
        </details>
      </section>
      <TrialTimeline trial={trial.id} now={surroundings.now} />
      <TrialScience trial={trial} measures={surroundings.measures} />
      <section className="section">
        <h2>
          <Explained words={words.held} />
        </h2>
        <HeldFacts trial={trial} measures={surroundings.measures} />
        {trial.note === null ? null : <p>{trial.note}</p>}
        <div className="button-row no-print">
          <ButtonLink to={`/trials/${trial.id}/labels`}>{words.printLabels}</ButtonLink>
          <ButtonLink to={`/trials/${trial.id}/again`}>{words.again}</ButtonLink>
        </div>
      </section>
      <TrialMore trial={trial.id} factor={trial.factor} />
    </>
  );
}

/** One trial: its question, its jars on the shelf with what to do next, and what is held. */
export function TrialPage({ id }: { readonly id: string }) {
  const trial = useAnswer('trials:open', { trial: id });
  if (trial.error?.code === 'not-found') {
    return (
      <EmptyState title={words.gone.title} actions={<ButtonLink to="/trials">{words.gone.back}</ButtonLink>}>
        <p>
          <Explained words={words.gone.line} />
        </p>
      </EmptyState>
    );
  }
  return <Answer of={trial}>{(value) => <WholeTrial trial={value} />}</Answer>;
}
