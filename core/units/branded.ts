import { within } from '#core/out-of-domain.ts';

declare const brand: unique symbol;

/** A number that carries its unit in its type, so that grams and millilitres cannot be mixed up. At run time it is a plain number. */
export type Branded<Unit extends string> = number & { readonly [brand]: Unit };

export type Millilitres = Branded<'mL'>;
export type Grams = Branded<'g'>;
export type Celsius = Branded<'°C'>;
export type DegreesBrix = Branded<'°Bx'>;
export type SpecificGravity = Branded<'SG'>;
export type GramsPerLitre = Branded<'g/L'>;
export type Bar = Branded<'bar'>;
export type PercentVolume = Branded<'% vol'>;
export type Hours = Branded<'h'>;

/** Absolute zero: no temperature lies below it. */
export const absoluteZero_C = -273.15;

/** @throws OutOfDomain when it is negative or not finite */
export const millilitres = (value: number): Millilitres => amount('volume_mL', value) as Millilitres;
/** @throws OutOfDomain when it is negative or not finite */
export const grams = (value: number): Grams => amount('mass_g', value) as Grams;
/** @throws OutOfDomain below absolute zero or when not finite */
export const celsius = (value: number): Celsius =>
  within('temperature_C', value, absoluteZero_C, Number.MAX_VALUE) as Celsius;
/** @throws OutOfDomain outside 0–100 */
export const degreesBrix = (value: number): DegreesBrix => within('brix', value, 0, 100) as DegreesBrix;
/** @throws OutOfDomain outside 0.7–1.6 (dry ethanol to beyond any syrup) */
export const specificGravity = (value: number): SpecificGravity => within('sg', value, 0.7, 1.6) as SpecificGravity;
/** @throws OutOfDomain when it is negative or not finite */
export const gramsPerLitre = (value: number): GramsPerLitre => amount('g_per_L', value) as GramsPerLitre;
/** A pressure above or below the air's. @throws OutOfDomain when not finite or below a vacuum */
export const bar = (value: number): Bar => within('pressure_bar', value, -1.01325, Number.MAX_VALUE) as Bar;
/** @throws OutOfDomain outside 0–100 */
export const percentVolume = (value: number): PercentVolume => within('pctVol', value, 0, 100) as PercentVolume;
/** @throws OutOfDomain when it is negative or not finite */
export const hours = (value: number): Hours => amount('hours', value) as Hours;

function amount(name: string, value: number): number {
  return within(name, value, 0, Number.MAX_VALUE);
}
