import { within } from '#core/out-of-domain.ts';
import { brixWhere, sucroseDensity_kg_per_m3 } from './sucrose-density.ts';
import { type SugarSolution, sugarSolution } from './sugar-solution.ts';

/** Cubic expansion of soda-lime hydrometer glass, per kelvin. Source: ISO 387, reference value 25e-6. */
const glassExpansion_per_K = 25e-6;

/**
 * The sugar solution behind a hydrometer reading in a sample that is warmer or colder than the hydrometer's own temperature.
 *
 * Method: the reading gives the density at which the instrument floats at its calibration temperature; the glass shrinks or swells
 * with temperature; the ICUMSA density at the sample's temperature then gives the strength. Leaves out surface tension and alcohol.
 *
 * @param reading_sg what the stem shows, as true SG against water at the calibration temperature, 1.000–1.3
 * @param sample_C temperature of the sample, 5–35
 * @param calibration_C what is printed on the stem, 15–20; default 20
 * @throws OutOfDomain outside those ranges, or for a reading lighter than water at the sample's temperature
 * Accuracy: 0.01 °Bx in the arithmetic; a kitchen hydrometer reads to about 0.25 °Bx.
 * Source: ICUMSA SPS-4; ISO 387 (glass).
 * @example hydrometer(1.038, 30).brix // 10.2: the warm sample was stronger than it looked
 */
export function hydrometer(reading_sg: number, sample_C: number, calibration_C = 20): SugarSolution {
  const sg = within('reading_sg', reading_sg, 0.98, 1.3);
  const sample = within('sample_C', sample_C, 5, 35);
  const calibration = within('calibration_C', calibration_C, 15, 20);
  const floating = sg * sucroseDensity_kg_per_m3(0, calibration);
  const density = floating * (1 - glassExpansion_per_K * (sample - calibration));
  const brix = brixWhere((strength) => sucroseDensity_kg_per_m3(strength, sample), density, 'density_kg_per_m3');
  return sugarSolution({ brix }, sample);
}
