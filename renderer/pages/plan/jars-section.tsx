import { Button } from '#renderer/parts/button/button.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { addLevel } from './change-plan.ts';
import { LevelCard } from './level-card.tsx';
import { usePlan } from './plan-context.ts';
import { PlanChoice, PlanSentence } from './plan-field.tsx';
import { words } from './words.ts';

const replicates = Array.from({ length: 12 }, (_, place) => [String(place + 1), String(place + 1)] as const);

/** The jars: a level each, one of them the control, and how many jars of each. */
export function JarsSection() {
  const { draft, change } = usePlan();
  return (
    <section className="plan-section" data-at="levels">
      <h2>
        <Explained words={words.jars} />
      </h2>
      <p className="soft">
        <Explained words={words.controlHint} />
      </p>
      <ul className="plan-levels">
        {draft.levels.map((level, position) => (
          <LevelCard key={level.key} level={level} position={position} />
        ))}
      </ul>
      <PlanSentence at="levels" />
      <div data-at="control">
        <PlanSentence at="control" />
      </div>
      <div className="plan-levels-end">
        <Button disabled={draft.levels.length >= 24} onClick={() => change(addLevel)}>
          {words.addJar}
        </Button>
        <PlanChoice
          at="replicates"
          label={words.replicates}
          hint={words.replicatesHint}
          value={String(draft.replicates)}
          options={replicates}
          onChoose={(count) => change((plan) => ({ ...plan, replicates: Number(count) }))}
        />
      </div>
    </section>
  );
}
