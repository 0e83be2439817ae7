import { useAnswer } from '#renderer/app/use-answer.ts';
import { assumedError, hopedGap, sightWords } from './panel-sight-words.ts';
import type { TastingDraft } from './tasting-draft.ts';
import { words } from './words.ts';

/** While a tasting is built: what this panel will be able to see. */
export function PanelSight({ draft }: { readonly draft: Pick<TastingDraft, 'jars' | 'tasters' | 'replicates'> }) {
  const { jars, tasters, replicates } = draft;
  const isAsked = jars.length >= 2 && tasters.length >= 1;
  const design = useAnswer(
    'panel:design',
    {
      samples: [...jars],
      tasters: Math.max(1, tasters.length),
      replicates,
      errorSd: assumedError,
      difference: hopedGap,
      seed: 1,
    },
    { enabled: isAsked, keepLast: true },
  );
  const known = isAsked ? design.data : undefined;
  if (isAsked && known === undefined) {
    return design.error === null ? (
      <p className="soft">{words.reckoning}</p>
    ) : (
      <p role="alert">{design.error.message}</p>
    );
  }
  const [first, ...others] = sightWords({
    samples: jars.length,
    tasters: tasters.length,
    replicates,
    detectableDifference: known?.detectableDifference ?? null,
    tastersNeeded: known?.tastersNeeded ?? null,
  });
  return (
    <div className="sight" role="status">
      <p className="sight-first">{first}</p>
      {others.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {isAsked && tasters.length > 1 ? <p className="small soft">{words.sightBasis(assumedError)}</p> : null}
    </div>
  );
}
