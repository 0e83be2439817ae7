import { useId, useState, useTransition } from 'react';
import type { CompositionOf } from '#renderer/parts/shelf/jar-contents.ts';
import { Shelf } from '#renderer/parts/shelf/shelf.tsx';
import { usePlan } from './plan-context.ts';
import { planShelfJars } from './plan-shelf-jars.tsx';
import { words } from './words.ts';

/** How fine the slider pours, as a share of the vessel. */
const pours = 100;

interface PourSliderProps {
  readonly poured_mL: number;
  readonly onPour: (volume_mL: number) => void;
}

/** A slider that pours more or less base into every jar, so that room and fruit can be seen before anything is weighed. */
function PourSlider({ poured_mL, onPour }: PourSliderProps) {
  const id = useId();
  const { judged, measures } = usePlan();
  const step_mL = judged.plan.vessel.capacity_mL / pours;
  return (
    <div className="field plan-pour">
      <label htmlFor={id}>{words.pourSlider}</label>
      <input
        id={id}
        type="range"
        min={0}
        max={pours}
        value={Math.min(pours, Math.round(poured_mL / step_mL))}
        aria-valuetext={measures.volume(poured_mL)}
        onChange={({ target }) => onPour(Math.max(1, Math.round(Number(target.value) * step_mL)))}
      />
    </div>
  );
}

/** Beside the form: the jars as they would stand. While the slider moves they move at once, and the form follows when there is time. */
export function PlanAside({ compositionOf }: { readonly compositionOf: CompositionOf }) {
  const { judged, draft, measures, change } = usePlan();
  const { plan, planned } = judged;
  const [poured, setPoured] = useState(plan.baseEach_mL);
  const [isPouring, startPouring] = useTransition();
  const poured_mL = isPouring ? poured : plan.baseEach_mL;
  const pour = (volume_mL: number) => {
    setPoured(volume_mL);
    const text = draft.measures === 'us' ? `${volume_mL} mL` : String(volume_mL);
    startPouring(() => change((before) => ({ ...before, baseEach: text })));
  };
  return (
    <aside className="plan-aside" aria-label={words.shelf}>
      <h2>{words.shelf}</h2>
      <Shelf
        jars={planShelfJars({ plan: { ...plan, baseEach_mL: poured_mL }, planned, compositionOf, measures })}
        label={words.shelf}
      />
      <PourSlider poured_mL={poured_mL} onPour={pour} />
    </aside>
  );
}
