import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { scaleWord } from '#renderer/format/scale-words.ts';
import { hedonicWords } from '#shared/hedonic-words.ts';

// A sip in four digits: tang, fizz, sweetness, liking.

export const sipParts = ['tang', 'fizz', 'sweetness', 'liking'] as const;
type SipPart = (typeof sipParts)[number];

/** What a sip says; a part that was left out is not there. */
export type SipScores = { readonly [Part in SipPart]?: number };

export type SipReading =
  | { readonly kind: 'none' }
  | { readonly kind: 'sip'; readonly scores: SipScores }
  | { readonly kind: 'fault'; readonly message: string };

const scales: Readonly<Record<SipPart, readonly [number, number]>> = {
  tang: [0, 10],
  fizz: [0, 10],
  sweetness: [0, 10],
  liking: [1, 9],
};
const numeral = /^\d+(?:[.,]\d+)?$/;

/**
 * Reads a sip as the maker types it: four digits in a row, or four numbers with spaces between them; a dash leaves one out.
 *
 * @example readSip('5637') // tang 5, fizz 6, sweetness 3, liking 7
 * @example readSip('10 6 - 7,5') // tang 10, fizz 6, liking 7.5
 */
export function readSip(text: string): SipReading {
  const written = text.trim();
  if (written === '') return { kind: 'none' };
  const hasSpaces = /\s/.test(written);
  const pieces = hasSpaces ? written.split(/\s+/) : [...written];
  if (pieces.length < sipParts.length) {
    return { kind: 'fault', message: phrase`Still to come: ${sipParts.slice(pieces.length).join(', ')}.` };
  }
  if (pieces.length > sipParts.length) {
    const message = hasSpaces
      ? phrase`A sip has four numbers (${sipParts.join(', ')}); here are ${pieces.length}.`
      : phrase`That is more than four digits. Put spaces between the numbers when one of them is 10 or has a decimal.`;
    return { kind: 'fault', message };
  }
  const scores: Partial<Record<SipPart, number>> = {};
  for (const [place, part] of sipParts.entries()) {
    const piece = pieces[place] ?? '';
    if (piece === '-' || piece === '–') continue;
    if (!numeral.test(piece)) return { kind: 'fault', message: phrase`“${piece}” is not a number.` };
    const score = Number(piece.replace(',', '.'));
    const [low, high] = scales[part];
    if (score < low || score > high) {
      return { kind: 'fault', message: phrase`${part} goes from ${low} to ${high}; ${piece} is outside.` };
    }
    scores[part] = score;
  }
  if (Object.keys(scores).length === 0) return { kind: 'fault', message: phrase`Give at least one of the four.` };
  return { kind: 'sip', scores };
}

/** A sip in words, as it is shown back before it is kept. @example sipWords({ tang: 5, liking: 7 }) // 'tang 5, liking 7 (like moderately)' */
export function sipWords(scores: { readonly [Part in SipPart]?: number | null }): string {
  return sipParts
    .flatMap((part) => {
      const score = scores[part] ?? null;
      if (score === null) return [];
      const word = part === 'liking' ? hedonicWords[score - 1] : undefined;
      return [`${part} ${shownNumber(score)}${word === undefined ? '' : ` (${scaleWord(word)})`}`];
    })
    .join(', ');
}
