import type { MeasureSystem } from '#core/units/format-quantity.ts';
import { parseNumber } from '#core/units/parse-number.ts';
import { parseQuantity } from '#core/units/parse-quantity.ts';
import type { Dimension, Unit } from '#core/units/unit-table.ts';
import { units } from '#core/units/unit-table.ts';
import { phrase } from '#core/words/phrase.ts';

/** What a field holds: nothing, a number in the stored unit, or a text that is none, with the sentence that says so. */
export type Typed =
  | { readonly kind: 'none' }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'fault'; readonly message: string };

/** The unit of a bare number, in each kitchen's measures. */
export const bareUnits: Readonly<
  Record<'volume' | 'temperature' | 'pressure' | 'length', Readonly<Record<MeasureSystem, Unit>>>
> = {
  volume: { metric: units.mL, us: units.cup },
  temperature: { metric: units.celsius, us: units.fahrenheit },
  pressure: { metric: units.bar, us: units.psi },
  length: { metric: units.mm, us: units.inch },
};

function readIn(text: string, dimension: keyof typeof bareUnits & Dimension, system: MeasureSystem): Typed {
  if (text.trim() === '') return { kind: 'none' };
  const read = parseQuantity(text, dimension, bareUnits[dimension][system]);
  if (!read.ok) return { kind: 'fault', message: read.problem.message };
  if (read.value.rest !== '')
    return { kind: 'fault', message: phrase`“${read.value.rest}” is too much here: one amount is enough.` };
  return { kind: 'number', value: read.value.stored };
}

/** A volume in mL, above zero. @example readVolume('1/2 gal', 'metric') // 1892.7 mL */
export function readVolume(text: string, system: MeasureSystem): Typed {
  const read = readIn(text, 'volume', system);
  if (read.kind !== 'number' || (read.value > 0 && read.value <= 1_000_000)) return read;
  return { kind: 'fault', message: phrase`Write a volume above zero, up to 1,000 L.` };
}

/** A temperature in °C. */
export function readTemperature(text: string, system: MeasureSystem): Typed {
  const read = readIn(text, 'temperature', system);
  if (read.kind !== 'number' || (read.value >= -40 && read.value <= 110)) return read;
  return { kind: 'fault', message: phrase`That is outside a kitchen’s range (−40 to 110 °C).` };
}

/** A pressure in bar. */
export function readPressure(text: string, system: MeasureSystem): Typed {
  const read = readIn(text, 'pressure', system);
  if (read.kind !== 'number' || (read.value > 0 && read.value <= 100)) return read;
  return {
    kind: 'fault',
    message: phrase`Write the pressure that stands on the bottle or in its data sheet, above zero.`,
  };
}

/** A length in millimetres, 1 to 5000: "85", "3 1/2 in", "8.5 cm". A bare number is mm, or inches in a US kitchen. */
export function readDiameter(text: string, system: MeasureSystem): Typed {
  const read = readIn(text, 'length', system);
  if (read.kind !== 'number' || (read.value >= 1 && read.value <= 5000)) return read;
  return { kind: 'fault', message: phrase`Write the inner diameter; permitted: 1 to 5000 mm (${0.04} to 196 in).` };
}

/** Days; "36 h" and "1 week" will do too. Zero and less pass: the plan itself says why they can't be. */
export function readDays(text: string): Typed {
  if (text.trim() === '') return { kind: 'none' };
  const read = parseNumber(text);
  const scale = read === null ? undefined : dayScale(read.rest);
  if (read === null || scale === undefined)
    return { kind: 'fault', message: phrase`Write days as a number, such as 2 or ${1.5} (or 36 h).` };
  const days = read.value * scale;
  if (Math.abs(days) <= 100_000) return { kind: 'number', value: days };
  return { kind: 'fault', message: phrase`That is more days than a trial can stand.` };
}

function dayScale(unit: string): number | undefined {
  if (/^(d|days?)?$/i.test(unit)) return 1;
  if (/^(h|hrs?|hours?)$/i.test(unit)) return 1 / 24;
  return /^(w|weeks?)$/i.test(unit) ? 7 : undefined;
}
