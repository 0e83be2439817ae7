import { OutOfDomain } from '#core/out-of-domain.ts';
import {
  type DegreesBrix,
  degreesBrix,
  type GramsPerLitre,
  gramsPerLitre,
  type SpecificGravity,
  specificGravity,
} from '#core/units/branded.ts';
import { brixWhere, sucroseDensity_kg_per_m3 } from './sucrose-density.ts';

/** What is known of a sugar solution: one of its three strengths. `sg` is true (in vacuum), 20/20. */
export type SugarStrength = { readonly brix: number } | { readonly sg: number } | { readonly sugar_g_per_L: number };

/** One sugar solution, said in every way. */
export interface SugarSolution {
  readonly brix: DegreesBrix;
  /** Specific gravity 20/20, true (in vacuum). */
  readonly sg: SpecificGravity;
  /** Specific gravity 20/20 as weighed in air, the one of the USDA and brewing tables. */
  readonly sgInAir: SpecificGravity;
  /** Grams of sucrose in a litre at the temperature asked for. */
  readonly sugar_g_per_L: GramsPerLitre;
  /** At the temperature asked for. */
  readonly density_kg_per_m3: number;
}

/** Density of air over that of water: what weighing in air adds to a specific gravity. Source: USDA AMS file code 135-A-50 (1981). */
const airShare = 0.0012;
const water20_kg_per_m3 = sucroseDensity_kg_per_m3(0, 20);

/**
 * One strength of a sugar solution turned into all the others: °Bx, SG true and in air, g/L, density.
 *
 * Method: ICUMSA density of pure sucrose, inverted to 1e-9 °Bx. SG always compares solution and water at 20 °C; `temperature_C` is
 * where density and grams per litre are wanted (and where a given `sugar_g_per_L` was measured). Leaves out acids and alcohol: once
 * a drink ferments, its SG and °Bx no longer tell its sugar.
 *
 * @param known brix 0–80, or the SG or g/L that this gives
 * @param temperature_C 0–80; default 20
 * @throws OutOfDomain when the value lies outside what sugar in water can have (an SG below 1 holds alcohol)
 * Accuracy: 0.001 °Bx against ICUMSA; round trip below 1e-6 °Bx.
 * Source: ICUMSA SPS-4; air buoyancy SGair = (SG − 0.0012)/(1 − 0.0012), USDA AMS file code 135-A-50 (1981).
 * @example sugarSolution({ brix: 10 }) // sg 1.03998, sgInAir 1.04003, sugar_g_per_L 103.81
 */
export function sugarSolution(known: SugarStrength, temperature_C = 20): SugarSolution {
  const brix = brixOf(known, temperature_C);
  const density_kg_per_m3 = sucroseDensity_kg_per_m3(brix, temperature_C);
  const sg = sucroseDensity_kg_per_m3(brix, 20) / water20_kg_per_m3;
  return {
    brix: degreesBrix(brix),
    sg: specificGravity(sg),
    sgInAir: specificGravity((sg - airShare) / (1 - airShare)),
    sugar_g_per_L: gramsPerLitre((brix / 100) * density_kg_per_m3),
    density_kg_per_m3,
  };
}

function brixOf(known: SugarStrength, temperature_C: number): number {
  if ('brix' in known) return known.brix;
  if ('sg' in known) {
    return brixWhere((brix) => sucroseDensity_kg_per_m3(brix, 20) / water20_kg_per_m3, known.sg, 'sg');
  }
  if (!Number.isFinite(known.sugar_g_per_L)) throw new OutOfDomain('sugar_g_per_L', known.sugar_g_per_L, '0 or more');
  return brixWhere(
    (brix) => (brix / 100) * sucroseDensity_kg_per_m3(brix, temperature_C),
    known.sugar_g_per_L,
    'sugar_g_per_L',
  );
}

/** True SG 20/20 from one weighed in air. @example sgFromSgInAir(1.04003) // 1.03998 */
export function sgFromSgInAir(sgInAir: number): number {
  return sgInAir * (1 - airShare) + airShare;
}

/**
 * The strength at which sucrose no longer dissolves.
 *
 * @param temperature_C 0–80
 * @returns °Bx
 * Accuracy: 0.1 °Bx.
 * Source: Charles (1960), Int. Sugar J. 62, 126 (from memory).
 * @example sucroseSaturation_brix(20) // 66.6
 */
export function sucroseSaturation_brix(temperature_C: number): number {
  const t = temperature_C;
  if (!(t >= 0 && t <= 80)) throw new OutOfDomain('temperature_C', t, '0 to 80');
  return 64.397 + t * (0.07251 + t * (0.0020569 - t * 9.035e-6));
}
