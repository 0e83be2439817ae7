import { within } from '#core/out-of-domain.ts';

/**
 * Density of pure, air-free water at 1 atm.
 *
 * Method: Kell's rational polynomial, as ICUMSA and the alcohol tables use it.
 *
 * @param temperature_C 0–100
 * @returns kg/m³
 * @throws OutOfDomain outside 0–100 °C
 * Accuracy: 0.01 kg/m³ against IAPWS-95 from 0 to 40 °C.
 * Source: Kell (1975), J. Chem. Eng. Data 20, 97; in Bubnik et al., Sugar Technologists Manual (1995), 164.
 * @example waterDensity_kg_per_m3(20) // 998.203
 */
export function waterDensity_kg_per_m3(temperature_C: number): number {
  const t = within('temperature_C', temperature_C, 0, 100);
  const above =
    999.83952 + t * (16.952577 + t * (-7.9905127e-3 + t * (-46.241757e-6 + t * (105.84601e-9 - t * 281.03006e-12))));
  return above / (1 + 16.887236e-3 * t);
}
