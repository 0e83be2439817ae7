import { fixed, shownNumber } from '#core/words/figures.ts';
import { type Dimension, type Unit, units } from './unit-table.ts';

export type MeasureSystem = 'metric' | 'us';

/** What is stored of each dimension, and so what `formatQuantity` is given. */
type Shown = Exclude<Dimension, 'count'>;

/**
 * Shows a stored quantity in the chosen system.
 *
 * Metric: mL up to a litre, then L; g up to a kilogram, then kg; °C; bar; g/L; mm. US: teaspoons, tablespoons, cups and quarts in kitchen
 * fractions (to the nearest quarter spoon or eighth of a cup); ounces and pounds; °F; psi; oz/gal; inches. Brix and SG are the same in both.
 * Leaves out: which spoon you own; the stored value is not rounded.
 *
 * @param stored in mL, g, °C, °Bx, SG, g/L, bar or mm
 * @param dimension what it measures
 * @param system 'metric' or 'us'
 * @example formatQuantity(236.588, 'volume', 'us') // '1 cup'
 */
export function formatQuantity(stored: number, dimension: Shown, system: MeasureSystem): string {
  if (!Number.isFinite(stored)) return '–';
  switch (dimension) {
    case 'volume':
      return system === 'us' ? usVolume(stored) : metric(stored, units.mL, units.L);
    case 'mass':
      return system === 'us' ? usMass(stored) : metric(stored, units.g, units.kg);
    case 'temperature':
      return inUnit(stored, system === 'us' ? units.fahrenheit : units.celsius, system === 'us' ? 0 : 1);
    case 'pressure':
      return inUnit(stored, system === 'us' ? units.psi : units.bar, system === 'us' ? 0 : 2);
    case 'concentration':
      return inUnit(stored, system === 'us' ? units.ozPerGal : units.gPerL, system === 'us' ? 2 : 1);
    case 'length':
      return system === 'us' ? inUnit(stored, units.inch, 2) : inUnit(stored, units.mm, 0);
    case 'brix':
      return inUnit(stored, units.brix, 1);
    case 'sg':
      return fixed(stored, 3);
  }
}

/** The value of a stored quantity in a unit. @example inUnitOf(20, units.fahrenheit) // 68 */
export function inUnitOf(stored: number, unit: Unit): number {
  return (stored - unit.offset) / unit.factor;
}

function inUnit(stored: number, unit: Unit, decimals: number): string {
  return `${trimmed(inUnitOf(stored, unit), decimals)} ${unit.symbol}`;
}

function metric(stored: number, small: Unit, large: Unit): string {
  const shown = Math.abs(stored) < 10 ? 1 : 0;
  return Math.round(Math.abs(stored)) < 1000
    ? `${trimmed(stored, shown)} ${small.symbol}`
    : `${trimmed(stored / large.factor, 2)} ${large.symbol}`;
}

function usMass(stored: number): string {
  const ounces = inUnitOf(stored, units.oz);
  return ounces < 15.95 ? `${trimmed(ounces, ounces < 1 ? 2 : 1)} oz` : `${trimmed(inUnitOf(stored, units.lb), 2)} lb`;
}

function usVolume(stored: number): string {
  const ladder: readonly (readonly [Unit, number, number])[] = [
    [units.tsp, 4, 3],
    [units.tbsp, 4, 4],
    [units.cup, 8, 4],
    [units.quart, 8, Number.POSITIVE_INFINITY],
  ];
  for (const [unit, parts, below] of ladder) {
    const eighths = Math.round(inUnitOf(stored, unit) * parts);
    if (eighths / parts < below) return `${fraction(eighths, parts)} ${plural(unit.symbol, eighths > parts)}`;
  }
  return `${trimmed(inUnitOf(stored, units.quart), 2)} qt`;
}

function plural(symbol: string, many: boolean): string {
  return symbol === 'cup' && many ? 'cups' : symbol;
}

function fraction(count: number, parts: number): string {
  const whole = Math.floor(count / parts);
  let top = count % parts;
  let bottom = parts;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return String(whole);
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

/** Rounded, without trailing zeros and without a minus zero, with a true minus sign. */
function trimmed(value: number, decimals: number): string {
  const text = shownNumber(Number(value.toFixed(decimals)) + 0);
  return text.startsWith('-') ? `−${text.slice(1)}` : text;
}
