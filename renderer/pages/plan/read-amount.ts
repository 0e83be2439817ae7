import { kitchenAmount } from '#core/units/kitchen-amount.ts';
import { parseNumber } from '#core/units/parse-number.ts';
import { parseQuantity } from '#core/units/parse-quantity.ts';
import { units } from '#core/units/unit-table.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Measures } from '#renderer/format/use-measures.ts';

/** How much of an ingredient, as typed. */
export type TypedAmount =
  | { readonly kind: 'none' }
  /** `fromMeasure`: a cup or a spoon that the food table has a weight for. */
  | { readonly kind: 'grams'; readonly mass_g: number; readonly fromMeasure: boolean }
  /** A measure without a weight of its own, such as a handful: the scale has to say. */
  | { readonly kind: 'unweighed'; readonly why: string }
  | { readonly kind: 'fault'; readonly message: string };

export interface AmountReading {
  /** Where a jar without any is meant. */
  readonly mayBeZero?: boolean;
  /** What the owner's own measures weigh. */
  readonly measured?: Measures['measured'] | undefined;
}

const startsLikeNumber = /^[-−–+.,\d½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/;

function inRange(mass_g: number, least: number): boolean {
  return mass_g >= least && mass_g <= 1_000_000;
}

/**
 * Reads an amount of an ingredient: a weight, a kitchen measure, or words that need a scale.
 *
 * A bare number is grams. What begins like a number but is none ("1,500", "-3 g") is a fault; other words are kept as they are written.
 *
 * @param ingredient as named; measures go by its own weights
 */
export function readAmount(
  text: string,
  ingredient: string,
  { mayBeZero = false, measured }: AmountReading = {},
): TypedAmount {
  const written = text.trim();
  if (written === '') return { kind: 'none' };
  const bare = parseNumber(written);
  const asMass = bare?.rest === '' ? parseQuantity(written, 'mass', units.g) : null;
  const read = asMass?.ok
    ? { ok: true as const, value: { mass_g: asMass.value.stored, measure: null } }
    : (asMass ?? kitchenAmount(written, measured?.(ingredient) ?? ingredient));
  if (read.ok) {
    const { mass_g, measure } = read.value;
    const least = mayBeZero ? 0 : Number.MIN_VALUE;
    if (!inRange(mass_g, least)) return { kind: 'fault', message: phrase`Write a weight above zero, up to 1,000 kg.` };
    return { kind: 'grams', mass_g, fromMeasure: measure !== null };
  }
  const { code, message } = read.problem;
  const isBadNumber = (code === 'not-a-number' && startsLikeNumber.test(written)) || code === 'negative';
  if (isBadNumber || code === 'wrong-kind') return { kind: 'fault', message };
  return { kind: 'unweighed', why: code === 'not-a-number' || code === 'unit-unknown' ? '' : message };
}
