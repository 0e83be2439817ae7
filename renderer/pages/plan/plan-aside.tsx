import type { CompositionOf } from '#renderer/parts/shelf/jar-contents.ts';
import { Shelf } from '#renderer/parts/shelf/shelf.tsx';
import { usePlan } from './plan-context.ts';
import { planShelfJars } from './plan-shelf-jars.tsx';
import { words } from './words.ts';

/** Beside the form: the jars as they would stand. */
export function PlanAside({ compositionOf }: { readonly compositionOf: CompositionOf }) {
  const { judged, measures } = usePlan();
  const { plan, planned } = judged;
  return (
    <aside className="plan-aside" aria-label={words.shelf}>
      <h2>{words.shelf}</h2>
      <Shelf jars={planShelfJars({ plan, planned, compositionOf, measures })} label={words.shelf} />
    </aside>
  );
}
