import { type Celsius, celsius, type Grams, grams, type Hours } from '#core/units/branded.ts';
import { foodHeat } from './food-heat.ts';
import type { JarInput, JarVessel } from './jar-input.ts';
import { jarVolume_mL } from './jar-volume.ts';
import { type MixPart, mixEnthalpy_kJ, mixing } from './mixing.ts';
import { type ResolvedAddition, resolveAddition } from './resolve-addition.ts';
import { sugarSolution } from './sugar-solution.ts';
import { stillAir_W_per_m2K, warming } from './warming.ts';

/** The temperature whose hours a cold start is counted in, °C. */
export const coldStartReference_C = 22;
/** A jar whose diameter nobody gave: half again as tall as wide. */
const usualTallness = 1.5;

/** What frozen fruit does to the start of a jar. */
export interface ColdStart {
  readonly mix_C: Celsius;
  readonly ice_g: Grams;
  readonly hoursToWithinOneDegree: Hours;
  readonly lostEquivalentHours: { readonly low: number; readonly high: number; readonly reference_C: number };
}

/**
 * How cold the jar starts, the ice that is left, when it is back within a degree of the room, and the hours this costs.
 *
 * Method: `mixing`, then `warming` through the jar's whole surface at 8 W/(m²·K), or at the jar's own time constant when it was measured.
 *
 * @param input the jar @param additions as resolved @param volume_mL the contents
 * @param timeConstant_h the jar's own, from `calibratedTimeConstant_h`
 */
export function coldStart(
  input: JarInput,
  additions: readonly ResolvedAddition[],
  volume_mL: number,
  timeConstant_h?: number,
): ColdStart {
  const parts = partsOf(input, additions);
  const { mix_C, ice_g } = mixing(parts);
  const capacity_kJ_per_K = capacityOf(parts);
  const conductance_W_per_K =
    timeConstant_h === undefined
      ? stillAir_W_per_m2K * surface_m2(input.vessel, volume_mL)
      : capacity_kJ_per_K / (3.6 * timeConstant_h);
  const found = warming(
    parts,
    mix_C,
    { ambient_C: celsius(input.ambient_C), conductance_W_per_K },
    coldStartReference_C,
  );
  return {
    mix_C,
    ice_g,
    hoursToWithinOneDegree: found.hoursToWithinOneDegree,
    lostEquivalentHours: { ...found.lost, reference_C: coldStartReference_C },
  };
}

/**
 * How fast a jar comes to the room's temperature in still air: the time constant that a measured one is held against.
 *
 * Method: heat capacity of the contents over 8 W/(m²·K) times the jar's surface.
 *
 * @param input a jar without a problem (`jarProblem` returns null)
 * @returns hours; after one of them the gap to the room is down to 37 %
 * Accuracy: the coefficient is common practice for a jar standing in a room, 5 to 12.
 */
export function stillAirTimeConstant_h(input: JarInput): number {
  const additions = input.additions.flatMap((one) => resolveAddition(one, input.ambient_C) ?? []);
  const conductance_W_per_K =
    stillAir_W_per_m2K * surface_m2(input.vessel, jarVolume_mL(input.base.volume_mL, additions));
  return capacityOf(partsOf(input, additions)) / (3.6 * conductance_W_per_K);
}

function partsOf(input: JarInput, additions: readonly ResolvedAddition[]): MixPart[] {
  return [basePart(input), ...additions.filter((one) => one.mass_g > 0).map(additionPart)];
}

function capacityOf(parts: readonly MixPart[]): number {
  return mixEnthalpy_kJ(parts, 21) - mixEnthalpy_kJ(parts, 20);
}

function basePart({ base }: JarInput): MixPart {
  const { brix, density_kg_per_m3 } = sugarSolution({ sugar_g_per_L: base.sugar_g_per_L ?? 0 });
  return {
    mass_g: grams((base.volume_mL * density_kg_per_m3) / 1000),
    temperature_C: celsius(base.temperature_C),
    food: foodHeat({ water_g: 100 - brix, sugars_g: brix, sucrose_g: brix }),
  };
}

function additionPart({ mass_g, temperature_C, composition, freezingPoint_C }: ResolvedAddition): MixPart {
  return { mass_g: grams(mass_g), temperature_C: celsius(temperature_C), food: foodHeat(composition, freezingPoint_C) };
}

/** Wall, bottom and top of the contents as a cylinder. */
function surface_m2({ capacity_mL, diameter_mm }: JarVessel, volume_mL: number): number {
  const width_cm =
    diameter_mm === undefined ? Math.cbrt((4 * capacity_mL) / (Math.PI * usualTallness)) : diameter_mm / 10;
  const end_cm2 = (Math.PI * width_cm ** 2) / 4;
  const height_cm = volume_mL / end_cm2;
  return (2 * end_cm2 + Math.PI * width_cm * height_cm) / 1e4;
}
