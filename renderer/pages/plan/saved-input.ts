import type { AskedOf } from '#shared/contract/all-requests.ts';
import type { JudgedPlan } from './judge-plan.ts';

/** What is asked of the desk to keep this plan. */
export function savedInput({ plan, base }: JudgedPlan): AskedOf<'trials:save'> {
  return {
    ...plan,
    levels: plan.levels.map(({ additions, ...level }) => ({
      ...level,
      ...(additions === undefined ? {} : { additions: [...additions] }),
    })),
    held: { ...plan.held, additions: [...plan.held.additions], also: { ...plan.held.also } },
    ...(base === null ? {} : { base: base.id }),
  };
}
