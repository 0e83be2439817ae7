import type { MeasureSystem } from '#core/units/format-quantity.ts';
import { parseNumber } from '#core/units/parse-number.ts';
import { parseQuantity } from '#core/units/parse-quantity.ts';
import { unitDoubt } from '#core/units/unit-doubt.ts';
import { type Unit, units } from '#core/units/unit-table.ts';
import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { TypedAmount } from './typed-amount.ts';

// Amounts of the cellar as people write them: weights, spans of time, pressures.

const fault = (message: string): TypedAmount => ({ kind: 'fault', message });
const bareWeight: Readonly<Record<MeasureSystem, Unit>> = { metric: units.g, us: units.oz };
const barePressure: Readonly<Record<MeasureSystem, Unit>> = { metric: units.bar, us: units.psi };

/** A weight in grams, above zero: "210 g", "7 1/2 oz", "½ lb". */
export function typedWeight(text: string, system: MeasureSystem): TypedAmount {
  if (text.trim() === '') return { kind: 'none' };
  const read = parseQuantity(text, 'mass', bareWeight[system]);
  if (!read.ok) return fault(read.problem.message);
  const { stored, rest } = read.value;
  if (rest !== '') return fault(phrase`“${rest}” is too much here: one weight is enough.`);
  if (!(stored >= 0.001 && stored <= 1_000_000)) return fault(phrase`Write a weight above zero, up to 1,000 kg.`);
  const doubt = unitDoubt(read.value);
  return doubt === null ? { kind: 'amount', value: stored } : { kind: 'doubt', ...doubt, value: stored };
}

/** A pressure above the air's in bar: "4 bar", "60 psi". */
export function typedPressure(text: string, system: MeasureSystem): TypedAmount {
  if (text.trim() === '') return { kind: 'none' };
  const read = parseQuantity(text, 'pressure', barePressure[system]);
  if (!read.ok) return fault(read.problem.message);
  const { stored, rest } = read.value;
  if (rest !== '') return fault(phrase`“${rest}” is too much here.`);
  return stored > 0 && stored <= 100
    ? { kind: 'amount', value: stored }
    : fault(phrase`Permitted: above 0, up to 100 bar (1,450 psi).`);
}

const hoursOf: readonly (readonly [RegExp, number])[] = [
  [/^(d|day|days)$/i, 24],
  [/^(h|hr|hrs|hour|hours)$/i, 1],
  [/^(w|wk|week|weeks)$/i, 168],
];

/** A span of time in hours: "2 days", "36 h", "1 week"; a bare number is days. */
export function typedSpan(text: string, low_h: number, high_h: number): TypedAmount {
  if (text.trim() === '') return { kind: 'none' };
  const read = parseNumber(text);
  if (read === null) return fault(phrase`Write how long, such as 2 days or 36 h.`);
  const factor = read.rest === '' ? 24 : hoursOf.find(([name]) => name.test(read.rest))?.[1];
  if (factor === undefined)
    return fault(phrase`“${read.rest}” is no span of time known here; write days, hours or weeks.`);
  const hours = read.value * factor;
  return hours >= low_h && hours <= high_h
    ? { kind: 'amount', value: hours }
    : fault(phrase`Permitted: ${low_h} hours to ${high_h / 24} days.`);
}

/** A span as a field holds it, to be read again: "2 days", "36 h". */
export function shownSpan(hours: number): string {
  const days = hours / 24;
  return Number.isInteger(days) && days > 0
    ? `${days} ${days === 1 ? 'day' : 'days'}`
    : `${shownNumber(Number(hours.toFixed(2)))} h`;
}
