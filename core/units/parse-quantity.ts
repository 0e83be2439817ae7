import { phrase } from '#core/words/phrase.ts';
import { absoluteZero_C } from './branded.ts';
import { parseNumber } from './parse-number.ts';
import { type Dimension, type Unit, unitSpellings } from './unit-table.ts';

/** A quantity as typed: its value in the unit it was written in, in the stored unit, and what stood after it. */
export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
  /** In mL, g, °C, °Bx, SG, g/L or bar. */
  readonly stored: number;
  readonly rest: string;
}

export type QuantityProblemCode =
  | 'not-a-number'
  | 'unit-missing'
  | 'unit-unknown'
  | 'wrong-kind'
  | 'negative'
  | 'below-absolute-zero'
  | 'out-of-range';

/** Why an amount could not be read: a sentence for the person who typed it. */
export interface QuantityProblem {
  readonly code: QuantityProblemCode | 'ingredient-unknown' | 'form-unknown' | 'form-missing' | 'measure-unknown';
  readonly message: string;
}

export type Parsed<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: QuantityProblem };

/**
 * Reads an amount with its unit: "75 g", "1/2 cup", "1 1/2 tbsp", "½ qt", "1,5 L", "72 °F", "15 psi".
 *
 * The unit must stand right after the number; what follows it is handed back in `rest` ("sliced strawberries"). A bare number takes
 * `assumed`, when given. Nothing negative but a temperature, nothing below absolute zero.
 *
 * @param text what somebody typed
 * @param wanted the kind of quantity asked for, when only one will do
 * @param assumed the unit of a bare number, such as the unit shown beside the field
 * @example parseQuantity('½ qt') // stored 473.176473 (mL)
 */
export function parseQuantity(text: string, wanted?: Dimension, assumed?: Unit): Parsed<Quantity> {
  const number = parseNumber(text);
  if (!number) {
    return refused(
      'not-a-number',
      phrase`"${text.trim()}" does not begin with one clear number; write 75, ${1.5}, 1/2 or 1 1/2.`,
    );
  }
  const found = unitAtHead(number.rest) ?? (number.rest === '' && assumed ? { unit: assumed, rest: '' } : null);
  if (!found && number.rest === '') return refused('unit-missing', phrase`Say of what: ${text.trim()} g, mL, cup …?`);
  if (!found)
    return refused(
      'unit-unknown',
      phrase`"${number.rest}" does not begin with a unit we know (g, kg, oz, lb, mL, L, tsp, tbsp, cup, qt …).`,
    );
  const { unit, rest } = found;
  if (wanted && unit.dimension !== wanted) {
    return refused(
      'wrong-kind',
      phrase`${unit.symbol || phrase`a count`} is a ${unit.dimension}; a ${wanted} is needed here.`,
    );
  }
  const stored = number.value * unit.factor + unit.offset;
  if (unit.dimension === 'temperature') {
    if (stored < absoluteZero_C) {
      return refused(
        'below-absolute-zero',
        phrase`${number.value} ${unit.symbol} lies below absolute zero (−${273.15} °C, −${459.67} °F).`,
      );
    }
  } else if (stored < 0 && unit.dimension !== 'pressure') {
    return refused('negative', phrase`${number.value} ${unit.symbol} is negative; permitted: zero or more.`);
  }
  return { ok: true, value: { value: number.value, unit, stored, rest } };
}

function unitAtHead(text: string): { unit: Unit; rest: string } | null {
  const plain = text
    .replace(/º/g, '°')
    .replace(/^°\s+/, '°')
    .replace(/(\p{L})\./gu, '$1');
  const lower = plain.toLowerCase();
  for (const [spelling, unit] of unitSpellings) {
    if (!lower.startsWith(spelling)) continue;
    const after = plain.slice(spelling.length);
    if (/^[\p{L}\d/]/u.test(after)) continue;
    return { unit, rest: after.replace(/^[.,\s]+/, '').trim() };
  }
  return null;
}

function refused(code: QuantityProblemCode, message: string): { ok: false; problem: QuantityProblem } {
  return { ok: false, problem: { code, message } };
}
