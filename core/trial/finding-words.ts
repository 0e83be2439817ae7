import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';

// How findings say numbers: one decimal, a true minus, points of the scale.

/** @example pointsWords(-1.04) // '1.0 point' */
export function pointsWords(value: number): string {
  const size = fixed(Math.abs(value), 1);
  return size === '1.0' ? phrase`${size} point` : phrase`${size} points`;
}

/** A score or a level to one decimal; whole levels without it where `isLevel`. */
export function scoreWords(value: number): string {
  const text = fixed(value, 1);
  return text === '-0.0' ? '0.0' : text.replace('-', '−');
}

/** @example rangeWords(-0.2, 1.4) // '−0.2 to 1.4' */
export function rangeWords(low: number, high: number): string {
  return phrase`${scoreWords(low)} to ${scoreWords(high)}`;
}

/** First letter up, for a sentence's head. */
export function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** @example listed(['a', 'b', 'c']) // 'a, b and c' */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : phrase`${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
}

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** Small counts as words, as a cook says them. @example countWords(3) // 'three' */
export function countWords(count: number): string {
  return small[count] ?? String(count);
}
