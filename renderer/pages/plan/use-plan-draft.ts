import type { MeasureSystem } from '#core/units/format-quantity.ts';
import { ask } from '#renderer/app/ask.ts';
import { type HeldDraft, useDraft } from '#renderer/app/use-draft.ts';
import { nextFullHour } from './local-moment.ts';
import { isUntouched, keptPlan, newPlan, type PlanDraft } from './plan-draft.ts';

const draftName = 'plan';

/** An empty plan, with a seed of its own. */
export function freshPlan(system: MeasureSystem): PlanDraft {
  const [seed = 1] = crypto.getRandomValues(new Uint32Array(1));
  return newPlan(system, nextFullHour(new Date()), seed);
}

/** Keeps a plan for the next time the form is opened. */
export function keepPlan(draft: PlanDraft): Promise<unknown> {
  return ask('drafts:keep', { name: draftName, body: draft });
}

/** The half-made plan. */
export function usePlanDraft(system: MeasureSystem | undefined): HeldDraft<PlanDraft> {
  return useDraft(
    system === undefined ? null : { name: draftName, read: keptPlan, begin: () => freshPlan(system), isUntouched },
  );
}
