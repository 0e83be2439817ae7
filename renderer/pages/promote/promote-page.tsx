import { useState } from 'react';
import { ingredientName } from '#core/trial/formula.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { capital, joined } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { useJudgement } from '#renderer/parts/judgement/use-judgement.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { TrialHead } from '#renderer/parts/trial-head/trial-head.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { LevelChoice } from './level-choice.tsx';
import { PromoteForm } from './promote-form.tsx';
import { RecipePreview } from './recipe-preview.tsx';
import { words } from './words.ts';
import './promote.css';

type Trial = ValueOf<'trials:open'>;

/** "Pears and ginger root, 3 days": what a recipe of this level might be called. */
function suggestedName(trial: Trial, level: Trial['levelsWhole'][number] | undefined): string {
  if (level === undefined) return '';
  if (trial.factor === 'formula') return level.name;
  const added = joined(level.formula.additions.map(({ ingredient }) => ingredientName(ingredient)));
  return added === '' || level.name.toLowerCase() === added.toLowerCase()
    ? capital(level.name)
    : `${capital(added)}, ${level.name}`;
}

interface PromotionProps {
  readonly trial: Trial;
  readonly findings: ValueOf<'findings:read'>;
  readonly rankings: ValueOf<'findings:places'>['rankings'];
  readonly sips: ValueOf<'sips:byTrial'>['sips'];
}

function Promotion({ trial, findings, rankings, sips }: PromotionProps) {
  const profile = useAnswer('profiles:open', { trial: trial.id });
  const hasWishes = (profile.data?.wishes.length ?? 0) > 0 && (profile.data?.closedTastings ?? 0) > 0;
  const judged = useJudgement(trial.id, hasWishes);
  const wished = judged.value?.levels.find(({ level }) => level === judged.value?.winner) ?? null;
  const winner = wished?.level ?? findings.headline?.winner?.level;
  const best = trial.levelsWhole.find(({ name }) => name === winner)?.id ?? null;
  const [picked, setPicked] = useState<string | null>(null);
  const chosen = picked ?? best;
  const preview = useAnswer('recipes:preview', { trial: trial.id, level: chosen ?? '-' }, { enabled: chosen !== null });
  const level = trial.levelsWhole.find(({ id }) => id === chosen);
  return (
    <>
      <div className="promote-choose">
        <LevelChoice
          wished={wished}
          trial={trial}
          findings={findings}
          rankings={rankings}
          sips={sips}
          chosen={chosen}
          onChoose={setPicked}
        />
        <PromoteForm trial={trial.id} level={chosen} draft={preview.data} suggestion={suggestedName(trial, level)} />
      </div>
      <section className="section">
        <h2>
          <Explained words={words.preview} />
        </h2>
        {chosen === null ? (
          <p className="soft">
            <Explained words={words.choose} />
          </p>
        ) : (
          <Answer of={preview}>{(draft) => <RecipePreview draft={draft} />}</Answer>
        )}
      </section>
    </>
  );
}

/** The last step of a trial: one level becomes a house recipe. */
export function PromotePage({ id }: { readonly id: string }) {
  const trial = useAnswer('trials:open', { trial: id });
  const findings = useAnswer('findings:read', { trial: id });
  const places = useAnswer('findings:places', { trial: id });
  const sips = useAnswer('sips:byTrial', { trial: id });
  return (
    <Answer of={trial}>
      {(value) => (
        <>
          <TrialHead trial={value} step="promote" />
          <Answer of={findings}>
            {(found) => (
              <Answer of={places}>
                {({ rankings }) => (
                  <Answer of={sips}>
                    {(own) => <Promotion trial={value} findings={found} rankings={rankings} sips={own.sips} />}
                  </Answer>
                )}
              </Answer>
            )}
          </Answer>
        </>
      )}
    </Answer>
  );
}
