import { useAnswer } from '#renderer/app/use-answer.ts';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { PanelSight } from '#renderer/parts/panel-sight/panel-sight.tsx';
import { tooFewWords } from '#renderer/parts/panel-sight/panel-sight-words.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { rankingSightWords } from './ranking-sight-words.ts';
import { ServingSplit } from './serving-split.tsx';
import type { TastingDraft } from './tasting-draft.ts';
import { words } from './words.ts';

/** Who must not taste what, as soon as jars and people are chosen. */
function EarlyWarnings({ draft }: { readonly draft: TastingDraft }) {
  const isAsked = draft.jars.length > 0 && draft.tasters.length > 0;
  const warned = useAnswer(
    'tastings:warn',
    { jars: [...draft.jars], tasters: [...draft.tasters] },
    { enabled: isAsked, keepLast: true },
  );
  if (!isAsked || warned.data === undefined) return null;
  const lines = warned.data.warnings.flatMap((one) => one.lines);
  return (
    <section className="subsection">
      <h2>
        <Explained words={words.warnings} />
      </h2>
      {lines.length === 0 ? (
        <p className="soft">
          <Explained words={words.noWarnings} />
        </p>
      ) : null}
      {lines.map((line) => (
        <Caution key={line}>{line}</Caution>
      ))}
    </section>
  );
}

/** What the panel will be able to tell: a curve for scores, sentences for a ranking. */
function Sight({ draft }: { readonly draft: TastingDraft }) {
  const panel = { samples: draft.jars.length, tasters: draft.tasters.length, replicates: draft.replicates };
  if (draft.way === 'scored') return <PanelSight {...panel} />;
  const few = tooFewWords(panel);
  return (
    <div className="sight" role="status">
      {(few === null ? rankingSightWords(panel) : [few]).map((line, place) => (
        <p key={line} className={place === 0 ? 'sight-first' : 'soft'}>
          {line}
        </p>
      ))}
    </div>
  );
}

interface BuildAsideProps {
  readonly draft: TastingDraft;
  /** Labels of the jars chosen. */
  readonly labels: readonly string[];
  readonly seed: number;
}

/** Beside the form, moving with it: what the panel can tell, the sittings, and who must not taste what. */
export function BuildAside({ draft, labels, seed }: BuildAsideProps) {
  return (
    <aside className="build-aside" aria-label={words.sight}>
      <section className="subsection">
        <h2>
          <Explained words={words.sight} />
        </h2>
        <Sight draft={draft} />
      </section>
      <ServingSplit jars={labels} tasters={draft.tasters.length} replicates={draft.replicates} seed={seed} />
      <EarlyWarnings draft={draft} />
    </aside>
  );
}
