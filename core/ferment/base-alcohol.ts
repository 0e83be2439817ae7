import { grams, millilitres } from '#core/units/branded.ts';
import { alcoholByVolume_pct, sucroseYield } from './alcohol.ts';

/** What no live drink passes, and so the most that a jar's sheet takes. */
const most_pctVol = 20;

/** What is written down of a base. */
export interface BaseFigures {
  /** As somebody measured or was told, % vol. */
  readonly alcohol_pctVol: number | null;
  readonly sugarStart_g_per_L: number | null;
  readonly sugarNow_g_per_L: number | null;
}

/** A base's alcohol, and where it comes from. */
export interface BaseAlcohol {
  readonly pctVol: number;
  /** `given` by somebody, or what the sugar that is gone could have become at most. */
  readonly from: 'given' | 'fermented';
}

/**
 * The alcohol that a base holds already: as given, else the most that the sugar gone since its start can have become.
 *
 * Method: Gay-Lussac's equation for sucrose on start less present sugar. A bound: bacteria and acid take their share, and what was
 * strained off or drunk by the culture is counted too.
 *
 * @param base % vol and g/L; the sugar now is at most that of the start
 * @returns 0–20 % vol; `null` where neither its alcohol nor both sugars are known
 * Source: stoichiometry from atomic weights; OIML R 22 (1975), density of ethanol.
 * @example baseAlcohol({ alcohol_pctVol: null, sugarStart_g_per_L: 60, sugarNow_g_per_L: 40 }) // { pctVol: 1.36, from: 'fermented' }
 */
export function baseAlcohol(base: BaseFigures): BaseAlcohol | null {
  const { alcohol_pctVol, sugarStart_g_per_L: start, sugarNow_g_per_L: now } = base;
  if (alcohol_pctVol !== null) return { pctVol: alcohol_pctVol, from: 'given' };
  if (start === null || now === null) return null;
  const gone_g = grams(Math.max(0, start - now));
  const bound_pctVol = alcoholByVolume_pct(grams(gone_g * sucroseYield.ethanol), millilitres(1000));
  return { pctVol: Math.min(most_pctVol, bound_pctVol), from: 'fermented' };
}
