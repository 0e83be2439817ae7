import { OutOfDomain } from '#core/out-of-domain.ts';
import type { Addition } from '#core/trial/formula.ts';

/** A drink as it was made once: what was poured, what was weighed in, what it came to. */
export interface MadeDrink {
  readonly base_mL: number;
  readonly volume_mL: number;
  readonly additions: readonly Addition[];
}

/**
 * The same drink for another volume: base and every addition grow in one proportion, unrounded.
 *
 * Method: volumes of base and additions add up, so one factor serves all. Leaves out losses on straining, and that a larger vessel
 * warms and cools more slowly.
 *
 * @param made each volume more than 0 mL
 * @param wanted_mL the finished drink, more than 0 mL
 * @throws OutOfDomain when a volume is 0 or less
 * @example scaleToVolume({ base_mL: 900, volume_mL: 1000, additions: [] }, 3000).base_mL // 2700
 */
export function scaleToVolume(made: MadeDrink, wanted_mL: number): MadeDrink {
  for (const [name, value] of [
    ['wanted_mL', wanted_mL],
    ['volume_mL', made.volume_mL],
  ] as const) {
    if (!(value > 0 && value < Number.POSITIVE_INFINITY)) throw new OutOfDomain(name, value, 'more than 0');
  }
  const factor = wanted_mL / made.volume_mL;
  return {
    base_mL: made.base_mL * factor,
    volume_mL: wanted_mL,
    additions: made.additions.map((addition) => ({ ...addition, mass_g: addition.mass_g * factor })),
  };
}
