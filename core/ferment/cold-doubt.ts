import type { ColdStart } from './cold-start.ts';
import { stillAir_W_per_m2K } from './warming.ts';

/** What the heat that still air brings to a jar may be, W/(m²·K). Common practice, no source. */
export const stillAirRange_W_per_m2K = [5, 12] as const;

/** How far the figures of a cold start may be off. */
export interface ColdDoubt {
  readonly hoursToWithinOneDegree: { readonly low: number; readonly high: number | null };
  readonly lostEquivalentHours: { readonly low: number; readonly high: number | null };
}

/**
 * The range of a cold start's hours, from how well its warming is known.
 *
 * Method: both hours grow in proportion to the jar's time constant, which is that of still air (5 to 12 W/(m²·K) about the 8 reckoned with)
 * or the jar's own with its thermometer's doubt; the lost hours' range over yeast's minimum temperature is widened by it.
 *
 * @param cold as reckoned with the middle time constant
 * @param own the jar's own time constant, where it was measured
 * @returns an open end where the readings leave it open
 */
export function coldDoubt(
  cold: ColdStart,
  own: { readonly low: number; readonly middle: number; readonly high: number | null } | null,
): ColdDoubt {
  const [poor, strong] = stillAirRange_W_per_m2K;
  const less = own === null ? stillAir_W_per_m2K / strong : own.low / own.middle;
  const more = own === null ? stillAir_W_per_m2K / poor : own.high === null ? null : own.high / own.middle;
  const widened = (low: number, high: number) => ({ low: low * less, high: more === null ? null : high * more });
  const { hoursToWithinOneDegree: hours, lostEquivalentHours: lost } = cold;
  return { hoursToWithinOneDegree: widened(hours, hours), lostEquivalentHours: widened(lost.low, lost.high) };
}
