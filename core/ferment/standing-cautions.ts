import { within } from '#core/out-of-domain.ts';
import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { type Caution, caution, commonPractice } from './caution.ts';

// What is said of every live drink, whatever its figures.

const waterBasis = () =>
  phrase`EPA, 40 CFR 141.65 (up to ${fixed(4, 1)} mg/L as Cl₂ in tap water); its effect on cultures is common practice, no source`;
const waterAdvice = () =>
  phrase`Letting water stand or boiling it drives off chlorine, not chloramine; a carbon filter takes both.`;

/**
 * The caution of mould: when to discard, what film yeast looks like, what keeps mould away.
 *
 * Source: common practice, no source.
 */
export function mouldCaution(): Caution {
  return caution(
    'mould',
    phrase`Mould is dry and fuzzy, in spots of white, green, blue, black or pink: discard the whole jar, do not skim or taste. Film yeast is not mould: a flat, wet, cream-coloured skin without fuzz. When in doubt, discard. Stir an open jar daily and push floating fruit under.`,
    commonPractice(),
  );
}

/**
 * The caution of a jar whose base was seen with mould.
 *
 * @param base the base's name
 * Source: common practice, no source.
 */
export function baseMouldCaution(base: string): Caution {
  return caution(
    'base-mould',
    phrase`Its base, “${base}”, was seen with mould. What was poured from it may carry the same: throw this jar away, don’t taste it, and pour nothing more from that base.`,
    commonPractice(),
  );
}

/**
 * The caution of treated water for a culture.
 *
 * @param residual_mg_per_L chlorine or chloramine as Cl₂, 0–20
 * @returns none at zero
 * @throws OutOfDomain outside that range
 * Source: EPA, 40 CFR 141.65: up to 4.0 mg/L may stand in tap water.
 */
export function waterCautions(residual_mg_per_L: number): Caution[] {
  if (within('residual_mg_per_L', residual_mg_per_L, 0, 20) === 0) return [];
  return [
    caution(
      'chlorinated-water',
      phrase`${residual_mg_per_L} mg/L of chlorine may hold the culture back. ${waterAdvice()}`,
      waterBasis(),
    ),
  ];
}

/** The same where nobody measured the water. */
export function tapWaterCaution(): Caution {
  return caution(
    'chlorinated-water',
    phrase`Tap water may hold up to 4 mg/L of chlorine or chloramine, which can hold a culture back. ${waterAdvice()}`,
    waterBasis(),
  );
}

/** What stands on everything that might be sold or given away as a product. */
export function sellingCaution(): Caution {
  return caution(
    'selling',
    phrase`Selling is another matter: ask your local authority or a licensed process authority before you do. These sheets are kitchen estimates.`,
    commonPractice(),
  );
}
