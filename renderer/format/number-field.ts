import { parseNumber } from '#core/units/parse-number.ts';

/** What a person typed into a field for a number: nothing, a number, or something else. */
export type TypedNumber =
  | { readonly kind: 'none' }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'other' };

/** Reads a number the way people write them; the whole text must be the number. @example typedNumber('1,5') */
export function typedNumber(text: string): TypedNumber {
  if (text.trim() === '') return { kind: 'none' };
  const read = parseNumber(text);
  return read === null || read.rest !== '' ? { kind: 'other' } : { kind: 'number', value: read.value };
}
