import { useAnswer } from '#renderer/app/use-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { TrialHead } from '#renderer/parts/trial-head/trial-head.tsx';
import { TrialFindings } from './trial-findings.tsx';
import { words } from './words.ts';

/** What a trial's closed tastings say. */
export function FindingsPage({ id }: { readonly id: string }) {
  const trial = useAnswer('trials:open', { trial: id });
  return (
    <Answer of={trial}>
      {(value) => (
        <>
          <TrialHead trial={value} step="findings" />
          <section className="section">
            <h2>{words.findings}</h2>
            <TrialFindings trial={id} factor={value.factor} levels={value.levelsWhole.map(({ name }) => name)} />
          </section>
        </>
      )}
    </Answer>
  );
}
