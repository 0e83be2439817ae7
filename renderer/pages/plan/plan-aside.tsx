import { useId, useState, useTransition } from 'react';
import type { MeasureSystem } from '#core/units/format-quantity.ts';
import { units } from '#core/units/unit-table.ts';
import { shownNumber } from '#core/words/figures.ts';
import type { CompositionOf } from '#renderer/parts/shelf/jar-contents.ts';
import { Shelf } from '#renderer/parts/shelf/shelf.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { usePlan } from './plan-context.ts';
import { planShelfJars } from './plan-shelf-jars.tsx';
import { words } from './words.ts';

/** How fine the slider pours: a hundredth of the vessel, or an eighth of a cup. */
function stepOf(vessel_mL: number, system: MeasureSystem): number {
  return system === 'us' ? units.cup.factor / 8 : vessel_mL / 100;
}

/** What the slider writes into the plan's field. */
function pouredText(steps: number, step_mL: number, system: MeasureSystem): string {
  return system === 'us' ? `${shownNumber(steps / 8)} cups` : String(Math.max(1, Math.round(steps * step_mL)));
}

interface PourSliderProps {
  readonly poured_mL: number;
  readonly onPour: (volume_mL: number, text: string) => void;
}

/** A slider that pours more or less base into every jar, so that room and fruit can be seen before anything is weighed. */
function PourSlider({ poured_mL, onPour }: PourSliderProps) {
  const id = useId();
  const { judged, draft, measures } = usePlan();
  const { capacity_mL } = judged.plan.vessel;
  const step_mL = stepOf(capacity_mL, draft.measures);
  const most = Math.max(1, Math.floor(capacity_mL / step_mL + 1e-9));
  const pour = (steps: number) => {
    const poured = Math.max(1, steps);
    onPour(poured * step_mL, pouredText(poured, step_mL, draft.measures));
  };
  return (
    <div className="field plan-pour">
      <label htmlFor={id}>{words.pourSlider}</label>
      <input
        id={id}
        type="range"
        min={0}
        max={most}
        value={Math.min(most, Math.round(poured_mL / step_mL))}
        aria-valuetext={measures.volume(poured_mL)}
        onChange={({ target }) => pour(Number(target.value))}
      />
    </div>
  );
}

/** Beside the form: the jars as they would stand. While the slider moves they move at once, and the form follows when there is time. */
export function PlanAside({ compositionOf }: { readonly compositionOf: CompositionOf }) {
  const { judged, measures, change } = usePlan();
  const { plan, planned } = judged;
  const [poured, setPoured] = useState(plan.baseEach_mL);
  const [isPouring, startPouring] = useTransition();
  const poured_mL = isPouring ? poured : plan.baseEach_mL;
  const pour = (volume_mL: number, text: string) => {
    setPoured(volume_mL);
    startPouring(() => change((before) => ({ ...before, baseEach: text })));
  };
  return (
    <aside className="plan-aside" aria-label={words.shelf}>
      <h2>
        <Explained words={words.shelf} />
      </h2>
      <Shelf
        jars={planShelfJars({ plan: { ...plan, baseEach_mL: poured_mL }, planned, compositionOf, measures })}
        label={words.shelf}
      />
      <PourSlider poured_mL={poured_mL} onPour={pour} />
    </aside>
  );
}
