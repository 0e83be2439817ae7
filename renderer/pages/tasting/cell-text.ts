// What a score's cell makes of each key. One digit is enough; a second one counts only where the scale goes that far.

export interface Scale {
  readonly name: string;
  readonly low: number;
  readonly high: number;
}

export type CellReading =
  | { readonly kind: 'none' }
  | { readonly kind: 'score'; readonly score: number }
  | { readonly kind: 'fault'; readonly message: string };

const numeral = /^-?\d+(?:[.,]\d*)?$/;

/**
 * The text of a cell after a key.
 *
 * Taking a letter back takes the whole score back. A digit that would leave the scale begins a new score.
 *
 * @example typeInto('1', '10', { name: 'tang', low: 0, high: 10 }) // '10'
 * @example typeInto('5', '57', { name: 'tang', low: 0, high: 10 }) // '7'
 */
export function typeInto(before: string, after: string, scale: Scale, isDeleting = false): string {
  if (isDeleting) return '';
  const written = after.replace(/\s/g, '');
  const key = written.slice(before.length);
  const isOneDigitMore = before !== '' && written.startsWith(before) && /^\d$/.test(key);
  if (isOneDigitMore && !/[.,]/.test(before) && Number(written) > scale.high) return key;
  return written;
}

/** Reads a cell: nothing, a score on its scale, or why it can't be kept. @example readCell('7,5', tang) // score 7.5 */
export function readCell(text: string, { name, low, high }: Scale): CellReading {
  if (text === '') return { kind: 'none' };
  if (!numeral.test(text)) return { kind: 'fault', message: `“${text.slice(0, 20)}” is not a number.` };
  const score = Number(text.replace(',', '.'));
  if (score < low || score > high) {
    return { kind: 'fault', message: `${name} goes from ${low} to ${high}; ${text} is outside.` };
  }
  return { kind: 'score', score };
}
