import { isOrdered } from '#core/trial/factor.ts';
import type { TrialWhole } from '#store/rows/trials.ts';

/** Each level's number on the factor's line; null where the factor has none or a level lacks one. */
export function levelNumbers(trial: TrialWhole): Record<string, number> | null {
  const values = trial.levelsWhole.flatMap(({ name, value }) => (value === null ? [] : [[name, value] as const]));
  return isOrdered(trial.factor) && values.length === trial.levelsWhole.length ? Object.fromEntries(values) : null;
}
