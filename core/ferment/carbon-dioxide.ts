import { within } from '#core/out-of-domain.ts';
import { type Bar, bar, type Celsius, type GramsPerLitre, type Millilitres } from '#core/units/branded.ts';
import { molarMass_g_per_mol as molar } from './molar-mass.ts';

/** One standard atmosphere, bar. */
export const atmosphere_bar = 1.01325;
/** A mole of CO2 at 0 °C and 1 atm, litres: the real gas. Source: CO2 density at STP 1.977 g/L, as the IUPAC–NIST solubility series. */
export const molarVolume_L = 22.263;
/** Gas constant, L·atm/(mol·K). Source: CODATA 2018, 8.314462618 J/(mol·K). */
const gasConstant = 0.082057366;
const kelvin = 273.15;

/**
 * How much CO2 water takes up per atmosphere of it.
 *
 * Method: ln K₀ = −58.0931 + 90.5069 (100/T) + 22.2940 ln(T/100), zero salinity. Leaves out sugar and alcohol (a few per cent less gas in
 * a sweet drink, hence a little more pressure).
 *
 * @param temperature_C −1 to 45
 * @returns mol per litre and atmosphere
 * @throws OutOfDomain outside that range
 * Accuracy: 3 % against other published series from 0 to 40 °C, beyond that extrapolated.
 * Source: Weiss (1974), Marine Chemistry 2, 203.
 * @example carbonDioxideSolubility_mol_per_L_atm(20) // 0.03910
 */
export function carbonDioxideSolubility_mol_per_L_atm(temperature_C: number): number {
  const hundredth = (within('temperature_C', temperature_C, -1, 45) + kelvin) / 100;
  return Math.exp(-58.0931 + 90.5069 / hundredth + 22.294 * Math.log(hundredth));
}

/** A closed vessel: what is in it, what room is left, and the sugar it was closed with. */
export interface ClosedVessel {
  readonly contents_mL: Millilitres;
  readonly headspace_mL: Millilitres;
  /** Sucrose per litre of contents that may still ferment. */
  readonly sugar_g_per_L: GramsPerLitre;
  /** Temperature at closing. */
  readonly closing_C: Celsius;
}

/**
 * The most pressure the sugar left in a closed vessel can make, at each temperature asked for.
 *
 * Method: all of it ferments, each mole of sucrose to four of CO2 (Gay-Lussac); liquid (Weiss 1974) and headspace (ideal gas) share that
 * and what both held at closing, CO2 at 1 atm. An upper bound: bacteria make less gas, yeast builds itself from sugar, seals leak.
 * Leaves out water vapour, expansion of glass and liquid, and gas above ideal (low by 2 % at 5 bar).
 *
 * @param vessel contents more than 0 mL, headspace at least 0 mL, sugar at least 0 g/L, closing −1 to 45 °C
 * @param temperature_C −1 to 45
 * @returns the CO2 dissolved, in volumes of gas (0 °C, 1 atm) per volume of drink, and the pressure above the air's in bar
 * @throws OutOfDomain outside those ranges
 * Accuracy: 3 % of the absolute pressure, as an upper bound.
 * Source: Weiss (1974); IUPAC atomic weights.
 * @example closedPressure({ contents_mL: 925, headspace_mL: 75, sugar_g_per_L: 8, closing_C: 22 }, 22).gauge_bar // 2.35, units branded
 */
export function closedPressure(vessel: ClosedVessel, temperature_C: Celsius): { volumes: number; gauge_bar: Bar } {
  const contents_L = within('contents_mL', vessel.contents_mL, Number.MIN_VALUE, Number.MAX_VALUE) / 1000;
  const headspace_L = within('headspace_mL', vessel.headspace_mL, 0, Number.MAX_VALUE) / 1000;
  const sugar_g = within('sugar_g_per_L', vessel.sugar_g_per_L, 0, Number.MAX_VALUE) * contents_L;
  const made_mol = (4 * sugar_g) / molar.sucrose;
  const held_mol = uptake_mol_per_atm(contents_L, headspace_L, vessel.closing_C);
  const pressure_atm = (made_mol + held_mol) / uptake_mol_per_atm(contents_L, headspace_L, temperature_C);
  return {
    volumes: pressure_atm * carbonDioxideSolubility_mol_per_L_atm(temperature_C) * molarVolume_L,
    gauge_bar: bar((pressure_atm - 1) * atmosphere_bar),
  };
}

function uptake_mol_per_atm(contents_L: number, headspace_L: number, temperature_C: number): number {
  const inLiquid = carbonDioxideSolubility_mol_per_L_atm(temperature_C) * contents_L;
  return inLiquid + headspace_L / (gasConstant * (temperature_C + kelvin));
}

/**
 * Pressure of a drink that holds so many volumes, without headspace: the relation behind every carbonation chart.
 *
 * @param volumes gas at 0 °C and 1 atm per volume of drink, 0–10
 * @param temperature_C −1 to 45
 * @returns bar above the air's
 * @throws OutOfDomain outside those ranges
 * @example gaugeOfVolumes_bar(2.5, 20) // 1.90
 */
export function gaugeOfVolumes_bar(volumes: number, temperature_C: number): number {
  const perAtmosphere = carbonDioxideSolubility_mol_per_L_atm(temperature_C) * molarVolume_L;
  return (within('volumes', volumes, 0, 10) / perAtmosphere - 1) * atmosphere_bar;
}
