import { OutOfDomain, within } from '#core/out-of-domain.ts';
import { risingRoot } from './rising-root.ts';
import { waterDensity_kg_per_m3 } from './water-density.ts';

/** The strongest sugar solution the formulas are asked about, °Bx. */
export const strongest_brix = 80;
/** The warmest, °C. */
const warmest_C = 80;

/**
 * Density of a sugar solution of known strength.
 *
 * Method: the ICUMSA polynomial for pure sucrose. Leaves out acids, minerals, fibre and alcohol: a juice of the same °Bx comes within
 * about 0.001 of it, a fermented drink does not.
 *
 * @param brix sucrose in % by mass, 0–80
 * @param temperature_C 0–80; default 20
 * @returns kg/m³ (true, not weighed in air)
 * @throws OutOfDomain outside those ranges
 * Accuracy: 0.01 kg/m³ up to 30 °Bx.
 * Source: ICUMSA Specifications and Standards SPS-4; Bubnik et al., Sugar Technologists Manual (Bartens 1995), 164.
 * @example sucroseDensity_kg_per_m3(10) // 1038.115
 */
export function sucroseDensity_kg_per_m3(brix: number, temperature_C = 20): number {
  const w = within('brix', brix, 0, strongest_brix) / 100;
  const tau = (within('temperature_C', temperature_C, 0, warmest_C) - 20) / 100;
  const a = w * (385.1761 + w * (135.3705 + w * (40.9299 + w * (-3.9643 + w * (13.4853 - w * 17.289)))));
  const b = w * (-46.272 + w * (-7.172 + w * (1.1597 + w * (5.1126 + w * 17.5254))));
  const c = w * (59.7712 + w * (7.2491 + w * (12.363 - w * 35.4791)));
  const d = w * (-47.2207 + w * (-21.6977 + w * 27.6301));
  const e = w * (18.3184 + w * 12.3081);
  return waterDensity_kg_per_m3(temperature_C) + a + tau * (b + tau * (c + tau * (d + tau * e)));
}

/**
 * The strength whose property, rising with the strength, has the wanted value.
 *
 * Method: `risingRoot` on 0–80 °Bx, to 1e-9 °Bx.
 *
 * @throws OutOfDomain when no strength has that value
 */
export function brixWhere(property: (brix: number) => number, wanted: number, name: string): number {
  const least = property(0);
  const most = property(strongest_brix);
  if (!(wanted >= least - 1e-9 && wanted <= most)) {
    throw new OutOfDomain(name, wanted, `${least.toPrecision(6)} to ${most.toPrecision(6)}`);
  }
  return wanted <= least ? 0 : risingRoot(property, wanted, 0, strongest_brix, 1e-9);
}
