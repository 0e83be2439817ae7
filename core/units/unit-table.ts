/** What a unit measures. */
export type Dimension =
  | 'volume'
  | 'mass'
  | 'temperature'
  | 'brix'
  | 'sg'
  | 'concentration'
  | 'pressure'
  | 'length'
  | 'count';

export interface Unit {
  /** How it is shown. */
  readonly symbol: string;
  readonly dimension: Dimension;
  /** How many of the stored unit (mL, g, °C, °Bx, SG, g/L, bar, mm) one of it is. */
  readonly factor: number;
  /** Added after multiplying; only temperatures have one. */
  readonly offset: number;
  /** How people write it, in lower case and without full stops. */
  readonly spellings: readonly string[];
}

// The US gallon is 231 cubic inches, the inch 2.54 cm: every US volume follows exactly.
// Source: NIST Special Publication 811 (2008), appendix B; NIST Handbook 44, appendix C.
const gallon_mL = 231 * 2.54 ** 3;
/** The avoirdupois pound. Source: NIST SP 811, appendix B. */
const pound_g = 453.59237;

/** The US measures in millilitres (cup 236.588…, tablespoon 14.786…, teaspoon 4.928…). */
export const usMeasure_mL = {
  gallon: gallon_mL,
  quart: gallon_mL / 4,
  pint: gallon_mL / 8,
  cup: gallon_mL / 16,
  fluidOunce: gallon_mL / 128,
  tablespoon: gallon_mL / 256,
  teaspoon: gallon_mL / 768,
} as const;

function unit(symbol: string, dimension: Dimension, factor: number, spellings: string, offset = 0): Unit {
  return { symbol, dimension, factor, offset, spellings: spellings.split('|') };
}

export const units = {
  mL: unit('mL', 'volume', 1, 'ml|millilitre|millilitres|milliliter|milliliters|cc'),
  cL: unit('cL', 'volume', 10, 'cl|centilitre|centilitres|centiliter|centiliters'),
  dL: unit('dL', 'volume', 100, 'dl|decilitre|decilitres|deciliter|deciliters'),
  L: unit('L', 'volume', 1000, 'l|litre|litres|liter|liters'),
  tsp: unit('tsp', 'volume', usMeasure_mL.teaspoon, 'tsp|tsps|teaspoon|teaspoons'),
  tbsp: unit('tbsp', 'volume', usMeasure_mL.tablespoon, 'tbsp|tbsps|tbs|tablespoon|tablespoons'),
  flOz: unit('fl oz', 'volume', usMeasure_mL.fluidOunce, 'fl oz|floz|fluid ounce|fluid ounces'),
  cup: unit('cup', 'volume', usMeasure_mL.cup, 'cup|cups'),
  pint: unit('pt', 'volume', usMeasure_mL.pint, 'pt|pts|pint|pints'),
  quart: unit('qt', 'volume', usMeasure_mL.quart, 'qt|qts|quart|quarts'),
  gallon: unit('gal', 'volume', usMeasure_mL.gallon, 'gal|gals|gallon|gallons'),
  mg: unit('mg', 'mass', 0.001, 'mg|milligram|milligrams'),
  g: unit('g', 'mass', 1, 'g|gr|gram|grams|gramme|grammes'),
  kg: unit('kg', 'mass', 1000, 'kg|kgs|kilo|kilos|kilogram|kilograms'),
  oz: unit('oz', 'mass', pound_g / 16, 'oz|ounce|ounces'),
  lb: unit('lb', 'mass', pound_g, 'lb|lbs|pound|pounds'),
  celsius: unit('°C', 'temperature', 1, '°c|c|celsius|degrees c|degrees celsius'),
  fahrenheit: unit('°F', 'temperature', 5 / 9, '°f|f|fahrenheit|degrees f|degrees fahrenheit', -160 / 9),
  brix: unit('°Bx', 'brix', 1, '°bx|bx|brix|°brix|degrees brix|°p|plato|°plato'),
  sg: unit('SG', 'sg', 1, 'sg|specific gravity'),
  gPerL: unit('g/L', 'concentration', 1, 'g/l|g per l|g per litre|g per liter|grams per litre|grams per liter'),
  ozPerGal: unit('oz/gal', 'concentration', pound_g / 16 / (gallon_mL / 1000), 'oz/gal|oz per gal|ounces per gallon'),
  bar: unit('bar', 'pressure', 1, 'bar|bars'),
  kPa: unit('kPa', 'pressure', 0.01, 'kpa'),
  // Pound-force per square inch: 6894.757293 Pa. Source: NIST SP 811, appendix B.
  psi: unit('psi', 'pressure', 0.06894757293, 'psi'),
  mm: unit('mm', 'length', 1, 'mm|millimetre|millimetres|millimeter|millimeters'),
  cm: unit('cm', 'length', 10, 'cm|centimetre|centimetres|centimeter|centimeters'),
  // Source: NIST SP 811, appendix B.
  inch: unit('in', 'length', 25.4, 'in|inch|inches|"|″'),
  each: unit('', 'count', 1, 'each|piece|pieces|whole'),
} as const satisfies Record<string, Unit>;

/** Every unit by each of its spellings, longest spelling first, so that "fl oz" is read before "oz". */
export const unitSpellings: readonly (readonly [string, Unit])[] = Object.values(units)
  .flatMap((one) => one.spellings.map((spelling) => [spelling, one] as const))
  .sort((a, b) => b[0].length - a[0].length);
