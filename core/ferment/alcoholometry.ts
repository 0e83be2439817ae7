import { within } from '#core/out-of-domain.ts';
import { A, B, C } from './alcoholometric-table.ts';

/**
 * Density of a mixture of ethanol and water.
 *
 * Method: the general formula of the International Alcoholometric Tables. Leaves out sugar and acids: it is for distilled or dry drinks.
 *
 * @param massFraction ethanol by mass, 0–1
 * @param temperature_C −20 to 40; default 20
 * @returns kg/m³
 * @throws OutOfDomain outside those ranges
 * Accuracy: the formula itself, 0.01 kg/m³.
 * Source: OIML R 22 (1975).
 * @example ethanolWaterDensity_kg_per_m3(0.5) // 913.7706
 */
export function ethanolWaterDensity_kg_per_m3(massFraction: number, temperature_C = 20): number {
  const p = within('massFraction', massFraction, 0, 1);
  const dt = within('temperature_C', temperature_C, -20, 40) - 20;
  const atTwenty = polynomial(A, p);
  const water = dt * polynomial(B, dt);
  let mixed = 0;
  let power = dt;
  for (const row of C) {
    mixed += power * p * polynomial(row, p);
    power *= dt;
  }
  return atTwenty + water + mixed;
}

/**
 * Mass fraction of ethanol in a mixture of known strength by volume at 20 °C.
 *
 * Method: q = p ρ(p) / ρ(1), solved for p by bisection to 1e-12.
 *
 * @param strength_pctVol 0–100
 * @throws OutOfDomain outside that range
 * Source: OIML R 22 (1975).
 * @example massFractionOfEthanol(5) // 0.039818
 */
export function massFractionOfEthanol(strength_pctVol: number): number {
  const wanted = (within('strength_pctVol', strength_pctVol, 0, 100) / 100) * ethanolWaterDensity_kg_per_m3(1);
  let low = 0;
  let high = 1;
  while (high - low > 1e-12) {
    const middle = (low + high) / 2;
    if (middle * ethanolWaterDensity_kg_per_m3(middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}
