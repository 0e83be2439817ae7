import { useId } from 'react';
import type { CompositionOf } from '#renderer/parts/shelf/jar-contents.ts';
import { Shelf } from '#renderer/parts/shelf/shelf.tsx';
import { usePlan } from './plan-context.ts';
import { planShelfJars } from './plan-shelf-jars.tsx';
import { words } from './words.ts';

/** How fine the slider pours, as a share of the vessel. */
const pours = 100;

/** A slider that pours more or less base into every jar, so that room and fruit can be seen before anything is weighed. */
function PourSlider() {
  const id = useId();
  const { judged, draft, measures, change } = usePlan();
  const { plan } = judged;
  const step_mL = plan.vessel.capacity_mL / pours;
  const pour = (share: number) => {
    const volume_mL = Math.max(1, Math.round(share * step_mL));
    const text = draft.measures === 'us' ? `${volume_mL} mL` : String(volume_mL);
    change((before) => ({ ...before, baseEach: text }));
  };
  return (
    <div className="field plan-pour">
      <label htmlFor={id}>{words.pourSlider}</label>
      <input
        id={id}
        type="range"
        min={0}
        max={pours}
        value={Math.min(pours, Math.round(plan.baseEach_mL / step_mL))}
        aria-valuetext={measures.volume(plan.baseEach_mL)}
        onChange={({ target }) => pour(Number(target.value))}
      />
    </div>
  );
}

/** Beside the form: the jars as they would stand. */
export function PlanAside({ compositionOf }: { readonly compositionOf: CompositionOf }) {
  const { judged, measures } = usePlan();
  const { plan, planned } = judged;
  return (
    <aside className="plan-aside" aria-label={words.shelf}>
      <h2>{words.shelf}</h2>
      <Shelf jars={planShelfJars({ plan, planned, compositionOf, measures })} label={words.shelf} />
      <PourSlider />
    </aside>
  );
}
