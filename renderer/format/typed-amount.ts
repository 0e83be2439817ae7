import { parseStrength } from '#core/ferment/parse-strength.ts';
import { sugarSolution } from '#core/ferment/sugar-solution.ts';
import type { MeasureSystem } from '#core/units/format-quantity.ts';
import { kitchenAmount, type MeasuredIngredient } from '#core/units/kitchen-amount.ts';
import { parseNumber } from '#core/units/parse-number.ts';
import { parseQuantity } from '#core/units/parse-quantity.ts';
import { unitDoubt } from '#core/units/unit-doubt.ts';
import { type Unit, units } from '#core/units/unit-table.ts';
import { phrase } from '#core/words/phrase.ts';

/** What a field for an amount holds, in the stored unit. A doubt is an amount that is asked about before it counts. */
export type TypedAmount =
  | { readonly kind: 'none' }
  | { readonly kind: 'amount'; readonly value: number }
  | { readonly kind: 'fault'; readonly message: string }
  | { readonly kind: 'doubt'; readonly question: string; readonly insteadWords: string; readonly value: number };

const fault = (message: string): TypedAmount => ({ kind: 'fault', message });
const mostOfAnything = 1_000_000;

/** Units of a bare number in each kitchen, as the fields say. */
export const bareVolume: Readonly<Record<MeasureSystem, Unit>> = { metric: units.mL, us: units.cup };
export const bareStrength: Readonly<Record<MeasureSystem, Unit>> = { metric: units.gPerL, us: units.ozPerGal };
const bareTemperature: Readonly<Record<MeasureSystem, Unit>> = { metric: units.celsius, us: units.fahrenheit };

/** A weight of an ingredient in grams, by scale or by its own measures: "1.2 kg", "1/2 cup sliced". */
export function typedMass(text: string, ingredient: MeasuredIngredient): TypedAmount {
  if (text.trim() === '') return { kind: 'none' };
  const read = kitchenAmount(text, ingredient);
  if (!read.ok) return fault(read.problem.message);
  const { mass_g, measure } = read.value;
  if (mass_g > mostOfAnything) return fault(phrase`That is ${Math.round(mass_g / 1000)} kg; permitted: 0 to 1,000 kg.`);
  const quantity = measure === null ? parseQuantity(text) : null;
  if (quantity?.ok && quantity.value.rest !== '') return fault(phrase`“${quantity.value.rest}” is too much here.`);
  const doubt = quantity?.ok ? unitDoubt(quantity.value) : null;
  return doubt === null ? { kind: 'amount', value: mass_g } : { kind: 'doubt', ...doubt, value: mass_g };
}

/** A volume in mL, above zero: "4 L", "1/2 gal", "½ qt". */
export function typedVolume(text: string, system: MeasureSystem): TypedAmount {
  if (text.trim() === '') return { kind: 'none' };
  const read = parseQuantity(text, 'volume', bareVolume[system]);
  if (!read.ok) return fault(read.problem.message);
  const { stored, rest } = read.value;
  if (rest !== '') return fault(phrase`“${rest}” is too much here: one amount is enough.`);
  if (!(stored > 0 && stored <= mostOfAnything))
    return fault(phrase`Write a volume above zero, up to 1,000 L (about 264 gal).`);
  const doubt = unitDoubt(read.value);
  return doubt === null ? { kind: 'amount', value: stored } : { kind: 'doubt', ...doubt, value: stored };
}

/** A temperature of kitchen work in °C. */
export function typedTemperature(text: string, system: MeasureSystem): TypedAmount {
  if (text.trim() === '') return { kind: 'none' };
  const read = parseQuantity(text, 'temperature', bareTemperature[system]);
  if (!read.ok) return fault(read.problem.message);
  const { stored, rest } = read.value;
  if (rest !== '') return fault(phrase`“${rest}” is too much here.`);
  return stored >= -40 && stored <= 110
    ? { kind: 'amount', value: stored }
    : fault(phrase`That is outside a kitchen’s range; permitted: −40 to 110 °C (−40 to 230 °F).`);
}

/** Sugar in g/L, however it was measured. */
export function typedStrength(text: string, system: MeasureSystem): TypedAmount {
  if (text.trim() === '') return { kind: 'none' };
  const read = parseStrength(text, bareStrength[system]);
  return read.ok ? { kind: 'amount', value: read.value } : fault(read.problem.message);
}

/** How sweet a drink should be in °Bx, as an instrument shows it: "3", "3 brix", "1.012", "30 g/L", "4 oz/gal"; a bare number is °Bx. */
export function typedSweetness(text: string): TypedAmount {
  if (text.trim() === '') return { kind: 'none' };
  const read = parseStrength(text, units.brix);
  if (!read.ok) return fault(read.problem.message);
  const { brix } = sugarSolution({ sugar_g_per_L: read.value });
  return brix > 0 ? { kind: 'amount', value: brix } : fault(phrase`Write a sweetness above zero, such as 3 brix.`);
}

/** Grams in 100 g: "8.5", "8.5 g", "8,5 %". */
export function typedShare(text: string): TypedAmount {
  if (text.trim() === '') return { kind: 'none' };
  const read = parseNumber(text);
  if (read === null || !/^(g|%|g\s*(\/|per)\s*100\s*g)?$/i.test(read.rest)) {
    return fault(phrase`Write grams in 100 g, such as 8.5.`);
  }
  return read.value >= 0 && read.value <= 100
    ? { kind: 'amount', value: read.value }
    : fault(phrase`${read.value} g cannot be in 100 g; permitted: 0 to 100.`);
}

interface Within {
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  /** Zero itself, or whatever `low` is, will not do. */
  readonly isAbove?: boolean;
  readonly example: string;
}

/** A number whose unit stands beside its field, within a range. */
export function typedWithin(text: string, { unit, low, high, isAbove = false, example }: Within): TypedAmount {
  if (text.trim() === '') return { kind: 'none' };
  const read = parseNumber(text);
  if (read === null || (read.rest !== '' && read.rest.toLowerCase() !== unit.toLowerCase())) {
    return fault(phrase`Write it in ${unit}, such as ${example}.`);
  }
  const fits = (isAbove ? read.value > low : read.value >= low) && read.value <= high;
  return fits
    ? { kind: 'amount', value: read.value }
    : fault(
        isAbove
          ? phrase`${read.value} is out of range; permitted: more than ${low} to ${high} ${unit}.`
          : phrase`${read.value} is out of range; permitted: ${low} to ${high} ${unit}.`,
      );
}

/** The amount, or undefined where there is none that counts. */
export function amountOf(typed: TypedAmount): number | undefined {
  return typed.kind === 'amount' ? typed.value : undefined;
}

/** Whether a form may go on with it: an amount, or left empty where that will do. */
export function isClear(typed: TypedAmount, mayBeEmpty = true): boolean {
  return typed.kind === 'amount' || (mayBeEmpty && typed.kind === 'none');
}
