import { within } from '#core/out-of-domain.ts';
import {
  type Grams,
  type GramsPerLitre,
  gramsPerLitre,
  type Millilitres,
  type PercentVolume,
  percentVolume,
} from '#core/units/branded.ts';
import { molarMass_g_per_mol as molar } from './molar-mass.ts';

/** Ethanol and carbon dioxide from a gram of sugar, in grams. */
export interface FermentYield {
  readonly ethanol: number;
  readonly carbonDioxide: number;
}

/** Gay-Lussac's equation, one hexose to two ethanol and two CO2: 0.51143 and 0.48857 g per gram. */
export const hexoseYield: FermentYield = {
  ethanol: (2 * molar.ethanol) / molar.hexose,
  carbonDioxide: (2 * molar.carbonDioxide) / molar.hexose,
};

/** The same for sucrose, which takes up one water first: 0.53835 and 0.51428 g per gram. */
export const sucroseYield: FermentYield = {
  ethanol: (4 * molar.ethanol) / molar.sucrose,
  carbonDioxide: (4 * molar.carbonDioxide) / molar.sucrose,
};

/** Balling's balance: 2.0665 g of extract give 1 g of ethanol, 0.9565 g of CO2 and 0.11 g of yeast. Source: Nielsen et al., Brauwelt Int. (2007). */
export const ballingYield: FermentYield = { ethanol: 1 / 2.0665, carbonDioxide: 0.9565 / 2.0665 };

/** Density of pure ethanol at 20 °C, kg/m³. Source: OIML R 22 (1975). */
export const ethanolDensity20_kg_per_m3 = 789.2391;

/** The line below which a drink counts as free of alcohol in the United States, % vol. Source: 27 CFR parts 16 and 25; TTB G 2010-3A. */
export const alcoholLine_pctVol = 0.5;

/**
 * Alcohol by volume of so much ethanol in so much drink.
 *
 * Method: volume of the pure ethanol at 20 °C over the drink's. Leaves out the contraction on mixing (below 0.1 % vol under 12 % vol).
 *
 * @param ethanol_g at least 0
 * @param volume_mL more than 0
 * @returns % vol
 * @throws OutOfDomain outside those ranges
 * Source: OIML R 22 (1975), density of ethanol.
 * @example alcoholByVolume_pct(grams(7.892), millilitres(1000)) // 1.0
 */
export function alcoholByVolume_pct(ethanol_g: Grams, volume_mL: Millilitres): PercentVolume {
  within('ethanol_g', ethanol_g, 0, Number.MAX_VALUE);
  within('volume_mL', volume_mL, Number.MIN_VALUE, Number.MAX_VALUE);
  return percentVolume(((ethanol_g / (ethanolDensity20_kg_per_m3 / 1000)) * 100) / volume_mL);
}

/**
 * How much sugar a drink may still ferment before it reaches 0.5 % vol, by Gay-Lussac's equation for sucrose (the sugar that gives most).
 *
 * @param alcoholNow_pctVol what it already holds, 0–100
 * @returns grams per litre, 0 when the line is already passed
 * @throws OutOfDomain outside that range
 * @example sugarToHalfPercent_g_per_L(percentVolume(0)) // 7.33
 */
export function sugarToHalfPercent_g_per_L(alcoholNow_pctVol: PercentVolume): GramsPerLitre {
  const room = alcoholLine_pctVol - within('alcoholNow_pctVol', alcoholNow_pctVol, 0, 100);
  return gramsPerLitre(Math.max(0, (room / 100) * (ethanolDensity20_kg_per_m3 / sucroseYield.ethanol)));
}

/**
 * Original extract of a fermented drink from its alcohol and real extract.
 *
 * Method: Balling's formula OE = 100 (2.0665 A + ER) / (100 + 1.0665 A). For yeast alone; bacteria take their share.
 *
 * @param alcohol_pctMass 0–20
 * @param realExtract_brix 0–80
 * @returns °Plato
 * @throws OutOfDomain outside those ranges
 * Source: C. J. N. Balling, in Nielsen et al., Brauwelt Int. (2007).
 * @example originalExtract_plato(4, 4) // 11.7641
 */
export function originalExtract_plato(alcohol_pctMass: number, realExtract_brix: number): number {
  const A = within('alcohol_pctMass', alcohol_pctMass, 0, 20);
  const ER = within('realExtract_brix', realExtract_brix, 0, 80);
  return (100 * (2.0665 * A + ER)) / (100 + 1.0665 * A);
}
