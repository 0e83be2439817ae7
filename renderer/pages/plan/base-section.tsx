import { useState } from 'react';
import { vesselKinds } from '#core/trial/formula.ts';
import { capital, vesselWords } from '#renderer/format/words.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { changeVessel } from './change-plan.ts';
import { usePlan } from './plan-context.ts';
import { PlanChoice, PlanText } from './plan-field.tsx';
import type { Base } from './read-plan.ts';
import { bareUnits } from './read-quantity.ts';
import { words } from './words.ts';

const kinds = vesselKinds.map((kind) => [kind, capital(vesselWords[kind])] as const);

/** Where the base comes from, how much goes into each jar, and what the jars are. */
export function BaseSection({ bases }: { readonly bases: readonly Base[] }) {
  const { draft, judged, measures, change } = usePlan();
  const { vessel } = draft;
  const chosen = judged.base;
  const options = [
    ['', words.atHand] as const,
    ...bases.map(({ id, name, left_mL }) => [id, words.baseLeft(name, measures.volume(left_mL))] as const),
  ];
  const [isMoreOpen, setIsMoreOpen] = useState(vessel.diameter !== '' || vessel.rated !== '');
  return (
    <section className="plan-section">
      <h2>
        <Explained words={words.base} />
      </h2>
      {bases.length === 0 ? null : (
        <PlanChoice
          at={chosen === null ? 'base' : 'baseAvailable_mL'}
          label={words.whichBase}
          value={chosen?.id ?? ''}
          options={options}
          onChoose={(base) => change((plan) => ({ ...plan, base }))}
        />
      )}
      <div className="field-grid">
        {chosen === null ? (
          <PlanText
            at="baseAvailable_mL"
            label={words.available}
            value={draft.baseAvailable}
            onType={(baseAvailable) => change((plan) => ({ ...plan, baseAvailable }))}
          />
        ) : null}
        <PlanText
          at="baseEach_mL"
          label={words.each}
          value={draft.baseEach}
          onType={(baseEach) => change((plan) => ({ ...plan, baseEach }))}
        />
      </div>
      <div className="field-grid">
        <PlanChoice
          at="vessel.kind"
          label={words.vessel}
          value={vessel.kind}
          options={kinds}
          onChoose={(kind) => change(changeVessel({ kind }))}
        />
        <PlanText
          at="vessel.capacity_mL"
          label={words.capacity}
          value={vessel.capacity}
          onType={(capacity) => change(changeVessel({ capacity }))}
        />
      </div>
      <p className="soft small">{words.volumeHint[draft.measures]}</p>
      <details open={isMoreOpen} onToggle={({ currentTarget }) => setIsMoreOpen(currentTarget.open)}>
        <summary>{words.more}</summary>
        <div className="field-grid">
          <PlanText
            at="vessel.diameter_mm"
            label={words.diameter}
            hint={words.diameterHint(bareUnits.length[draft.measures].symbol)}
            inputMode="decimal"
            value={vessel.diameter}
            onType={(diameter) => change(changeVessel({ diameter }))}
          />
          <PlanText
            at="vessel.ratedGauge_bar"
            label={words.rated}
            hint={words.ratedHint(bareUnits.pressure[draft.measures].symbol)}
            inputMode="decimal"
            value={vessel.rated}
            onType={(rated) => change(changeVessel({ rated }))}
          />
        </div>
      </details>
    </section>
  );
}
