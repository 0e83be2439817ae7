import { within } from '#core/out-of-domain.ts';
import { phrase } from '#core/words/phrase.ts';
import { outOfReach, type Worked, type WrittenStrength } from './worked.ts';

/**
 * How much water brings a drink down to a wanted strength, be it sugar, acid or alcohol.
 *
 * Method: V (now/target − 1). Leaves out the small contraction on mixing.
 *
 * @param drink its volume (above 0 mL) and its strength now, in any unit per volume
 * @param target in the same unit, above 0 and at most the strength now
 * @param written how sentences write a strength; as a bare number unless said
 * @returns millilitres of water and the volume after, or why not
 * @throws OutOfDomain when an amount is negative or not finite
 * Accuracy: 0.5 % under 60 g/L of sugar or 12 % vol of alcohol.
 * @example dilute({ volume_mL: 1000, strength: 50 }, 40) // 250 mL
 */
export function dilute(
  drink: { readonly volume_mL: number; readonly strength: number },
  target: number,
  written: WrittenStrength = String,
): Worked<{ water_mL: number; volume_mL: number }> {
  const volume = within('volume_mL', drink.volume_mL, Number.MIN_VALUE, Number.MAX_VALUE);
  const now = within('strength', drink.strength, 0, Number.MAX_VALUE);
  within('target', target, 0, Number.MAX_VALUE);
  if (target > now)
    return outOfReach(phrase`Water only weakens: it is ${written(now)} now, the target ${written(target)} lies above.`);
  if (target === 0 && now > 0) return outOfReach(phrase`No amount of water brings it to nothing.`);
  const water_mL = now === 0 ? 0 : volume * (now / target - 1);
  return { ok: true, value: { water_mL, volume_mL: volume + water_mL } };
}
