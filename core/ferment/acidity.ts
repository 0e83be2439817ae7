import { OutOfDomain, within } from '#core/out-of-domain.ts';
import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { molarMass_g_per_mol as molar } from './molar-mass.ts';

export type TitratedAcid = 'lactic' | 'acetic' | 'citric' | 'malic' | 'tartaric';

/** Grams of acid that one milliequivalent of alkali neutralises. Citric is the anhydrous acid (AOAC's 0.070 is the monohydrate). */
export const acidFactor_g_per_meq: Readonly<Record<TitratedAcid, number>> = {
  lactic: molar.lactic / 1000,
  acetic: molar.acetic / 1000,
  citric: molar.citric / 3000,
  malic: molar.malic / 2000,
  tartaric: molar.tartaric / 2000,
};

/** Where the titration ends; results to different end points do not compare. */
export const titrationEndPoints = {
  get aoac() {
    return phrase`pH ${8.1} (AOAC 942.15, fruit products), about where phenolphthalein turns`;
  },
  get oiv() {
    return phrase`pH ${fixed(7, 1)}, carbon dioxide removed (OIV-MA-AS313-01, wine)`;
  },
} as const;

/** The same in so few letters that a closed choice shows them whole. */
export const endPointsInShort: Readonly<Record<keyof typeof titrationEndPoints, string>> = {
  get aoac() {
    return phrase`pH ${8.1}, fruit`;
  },
  get oiv() {
    return phrase`pH ${fixed(7, 1)}, wine`;
  },
};

/**
 * Titratable acidity from a titration, as one named acid.
 *
 * Method: meq/L = 1000 · V · N / sample; g/L = meq/L · grams per milliequivalent. Shake or boil the gas out first: CO2 counts as acid.
 * Leaves out which acids they really are; it never tells the pH.
 *
 * @param titration titrant in mL (at least 0), its normality (0.001–2), the sample in mL (more than 0), and the acid to express it as
 * @returns grams per litre and milliequivalents per litre
 * @throws OutOfDomain outside those ranges
 * Accuracy: exact in the arithmetic; about 2 % for a careful kitchen titration.
 * Source: AOAC 942.15; OIV-MA-AS313-01; molar masses from IUPAC atomic weights.
 * @example acidity({ titrant_mL: 12, normality: 0.1, sample_mL: 15, acid: 'tartaric' }) // 6.0 g/L, 80 meq/L
 */
export function acidity(titration: {
  readonly titrant_mL: number;
  readonly normality: number;
  readonly sample_mL: number;
  readonly acid: TitratedAcid;
}): { g_per_L: number; meq_per_L: number } {
  const titrant = within('titrant_mL', titration.titrant_mL, 0, 1000);
  const normality = within('normality', titration.normality, 0.001, 2);
  if (!(titration.sample_mL > 0)) throw new OutOfDomain('sample_mL', titration.sample_mL, 'more than 0 to 1000');
  const sample = within('sample_mL', titration.sample_mL, 0, 1000);
  const meq_per_L = (1000 * titrant * normality) / sample;
  return { g_per_L: meq_per_L * acidFactor_g_per_meq[titration.acid], meq_per_L };
}
