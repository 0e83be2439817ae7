import { type LongAnswer, useLongAnswer } from '#renderer/app/use-long-answer.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

/** Redrawn panels: shares then move by about a percent from seed to seed. */
const draws = 5000;

/** Which level comes closest to the wishes, and how often it would if the panel were drawn again. */
export function useJudgement(trial: string, enabled: boolean): LongAnswer<ValueOf<'profiles:judge'>> {
  return useLongAnswer('profiles:judge', { trial, draws }, { enabled });
}
