import { formatQuantity } from '#core/units/format-quantity.ts';
import { phrase } from '#core/words/phrase.ts';

/** A volume in the measures of both kinds of kitchen: a refusal reaches either. @example bothVolumes(946.35) // '946.4 mL (1 qt)' */
export function bothVolumes(volume_mL: number): string {
  return phrase`${Number(volume_mL.toFixed(1))} mL (${formatQuantity(volume_mL, 'volume', 'us')})`;
}
