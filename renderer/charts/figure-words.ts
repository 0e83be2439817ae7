import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';

/** A score's figure: one decimal, a true minus. */
export function figureWords(value: number | null): string {
  return value === null ? '–' : fixed(value, 1).replace('-', '−');
}

/** An interval in words that a table can hold. @example intervalWords(4.1, 5.9) // '4.1 to 5.9' */
export function intervalWords(low: number | null, high: number | null): string {
  return low === null || high === null ? '–' : phrase`${figureWords(low)} to ${figureWords(high)}`;
}
