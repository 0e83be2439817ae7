import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { scaleWord } from '#renderer/format/scale-words.ts';
import { hedonicWord } from '#shared/hedonic-words.ts';
import { justAboutRightWord, justAboutRightWords } from '#shared/just-about-right-words.ts';

// What a score's cell makes of each key. One digit is enough; a second one counts only where the scale goes that far. The five steps
// of a just-about-right answer are the keys 1 to 5, from "much too little" to "much too much".

export interface Scale {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly kind?: 'scale' | 'just-about-right' | 'place';
  readonly lowWord?: string | null;
}

/** The middle key of a just-about-right answer, stored as 0. */
const justRightKey = 3;

/** What a stored score looks like in its cell. @example cellText({ kind: 'just-about-right', … }, -1) // '2' */
export function cellText({ kind }: Pick<Scale, 'kind'>, score: number): string {
  return shownNumber(kind === 'just-about-right' ? score + justRightKey : score);
}

/** The word that a scale has for a score; null where it has none. */
export function cellWord(scale: Scale, score: number): string | null {
  const word = scale.kind === 'just-about-right' ? justAboutRightWord(score) : hedonicWord(scale, score);
  return word === null ? null : scaleWord(word);
}

/** What can be chosen with the mouse: each step's key and its word, or each place. Empty for a plain scale. */
export function cellSteps({ kind, high }: Scale): { readonly text: string; readonly word: string }[] {
  if (kind === 'just-about-right')
    return justAboutRightWords.map((word, step) => ({ text: String(step + 1), word: scaleWord(word) }));
  if (kind !== 'place') return [];
  return Array.from({ length: high }, (_, place) => ({ text: String(place + 1), word: phrase`place ${place + 1}` }));
}

/** Whether a place needs no further digit. @example isWholePlace('1', { kind: 'place', high: 12, … }) // false: 10 to 12 may follow */
export function isWholePlace(text: string, { kind, high }: Scale): boolean {
  return kind === 'place' && /^[1-9]\d*$/.test(text) && Number(text) <= high && Number(text) * 10 > high;
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
  if (isOneDigitMore && scale.kind === 'just-about-right') return key;
  if (isOneDigitMore && !/[.,]/.test(before) && Number(written) > scale.high) return key;
  return written;
}

function readStep(text: string, name: string): CellReading {
  if (/^[1-5]$/.test(text)) return { kind: 'score', score: Number(text) - justRightKey };
  const [first, , middle, , last] = justAboutRightWords;
  const message = phrase`${name} takes the keys 1 to 5: 1 is “${first}”, 3 “${middle}”, 5 “${last}”.`;
  return { kind: 'fault', message };
}

function readPlace(text: string, high: number): CellReading {
  const place = Number(text);
  if (/^\d+$/.test(text) && place >= 1 && place <= high) return { kind: 'score', score: place };
  return { kind: 'fault', message: phrase`Places go from 1, the best, to ${high}.` };
}

/** Reads a cell: nothing, a score on its scale, or why it can't be kept. @example readCell('7,5', tang) // score 7.5 */
export function readCell(text: string, { name, kind, low, high }: Scale): CellReading {
  if (text === '') return { kind: 'none' };
  if (kind === 'just-about-right') return readStep(text, name);
  if (kind === 'place') return readPlace(text, high);
  if (!numeral.test(text)) return { kind: 'fault', message: phrase`“${text.slice(0, 20)}” is not a number.` };
  const score = Number(text.replace(',', '.'));
  if (score < low || score > high) {
    return { kind: 'fault', message: phrase`${name} goes from ${low} to ${high}; ${text} is outside.` };
  }
  return { kind: 'score', score };
}
