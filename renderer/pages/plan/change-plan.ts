import { type AdditionDraft, freshKey, type LevelDraft, newAddition, newLevel, type PlanDraft } from './plan-draft.ts';

// The steps by which a plan is changed: each takes a plan and gives the next.

export type PlanChange = (plan: PlanDraft) => PlanDraft;

export function changeLevel(position: number, change: Partial<LevelDraft>): PlanChange {
  return (plan) => ({
    ...plan,
    levels: plan.levels.map((level, place) => (place === position ? { ...level, ...change } : level)),
  });
}

export const addLevel: PlanChange = (plan) => {
  const level = newLevel(plan.levels);
  // A second fruit is weighed like the first: only the fruit is to move.
  const like = plan.factor === 'fruit' ? plan.levels[0]?.additions[0] : undefined;
  const additions =
    like === undefined ? level.additions : [{ ...newAddition([]), amount: like.amount, weight: like.weight }];
  return plan.levels.length >= 24 ? plan : { ...plan, levels: [...plan.levels, { ...level, additions }] };
};

export function removeLevel(position: number): PlanChange {
  return (plan) => {
    const gone = plan.levels[position];
    const levels = plan.levels.filter((_, place) => place !== position);
    return { ...plan, levels, control: gone?.key === plan.control ? '' : plan.control };
  };
}

export function changeHeld(change: Partial<PlanDraft['held']>): PlanChange {
  return (plan) => ({ ...plan, held: { ...plan.held, ...change } });
}

export function changeVessel(change: Partial<PlanDraft['vessel']>): PlanChange {
  return (plan) => ({ ...plan, vessel: { ...plan.vessel, ...change } });
}

export function addAlso(name = ''): PlanChange {
  return (plan) => {
    const { also } = plan.held;
    return also.length >= 40 ? plan : changeHeld({ also: [...also, { key: freshKey(also), name, value: '' }] })(plan);
  };
}

/** Rows of additions after a change; the last row can be emptied but not taken away. */
export function withAddition(
  rows: readonly AdditionDraft[],
  place: number,
  change: Partial<AdditionDraft> | null,
): AdditionDraft[] {
  const next =
    change === null
      ? rows.filter((_, at) => at !== place)
      : rows.map((row, at) => (at === place ? { ...row, ...change } : row));
  return next.length === 0 ? [newAddition([])] : [...next];
}
