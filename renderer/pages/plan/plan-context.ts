import { createContext, useContext } from 'react';
import type { Measures } from '#renderer/format/use-measures.ts';
import type { PlanChange } from './change-plan.ts';
import type { JudgedPlan, Sentence } from './judge-plan.ts';
import type { PlanDraft } from './plan-draft.ts';

/** What every part of the form needs: the plan as typed, what it comes to, and how to change it. */
export interface PlanWork {
  readonly draft: PlanDraft;
  readonly judged: JudgedPlan;
  readonly measures: Measures;
  readonly change: (change: PlanChange) => void;
  /** The sentence to show at a place now; what is merely missing is shown once saving was tried. */
  readonly sentenceAt: (at: string) => Sentence | undefined;
}

export const PlanContext = createContext<PlanWork | null>(null);

export function usePlan(): PlanWork {
  const work = useContext(PlanContext);
  if (work === null) throw new Error('usePlan is used inside a plan only');
  return work;
}
