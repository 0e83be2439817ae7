import { decimalMark } from '#core/words/figures.ts';
/** A number as read from what somebody typed, with whatever stood after it. */
export interface ReadNumber {
  readonly value: number;
  readonly rest: string;
}

const vulgar: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

/**
 * Reads the number at the head of a text the way people write amounts.
 *
 * Takes 75, 1.5, 1,5 (decimal comma), .5, 1/2, 1 1/2, 1½, ½ and a leading minus (also the typographic one). "1,500" is refused:
 * it may be fifteen hundred or one and a half, and a person has to say which, unless the comma was chosen as the decimal mark.
 *
 * @returns the number and the rest of the text, or `null` when the text does not begin with a number that can be read in one way
 * @example parseNumber('1 1/2 tbsp') // { value: 1.5, rest: 'tbsp' }
 */
export function parseNumber(text: string): ReadNumber | null {
  const spread = text
    .trim()
    .replace(/[−–]/g, '-')
    .replace(/⁄/g, '/')
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (sign) => {
      const [top, bottom] = vulgar[sign] ?? [0, 1];
      return ` ${top}/${bottom}`;
    })
    .trim()
    .replace(/^-\s+/, '-');
  const mixed = /^(-?)(?:(\d+)\s+)?(\d+)\s*\/\s*(\d+)(?![\d.,/])/.exec(spread);
  if (mixed) {
    const [all, minus, whole, top, bottom] = mixed;
    if (Number(bottom) === 0) return null;
    const value = Number(whole ?? 0) + Number(top) / Number(bottom);
    return { value: minus === '-' ? -value : value, rest: spread.slice(all.length).trim() };
  }
  const decimal = /^-?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?![\d.,/])/.exec(spread);
  if (!decimal) return null;
  const digits = decimal[0];
  if (decimalMark() === '.' && /^-?[1-9]\d{0,2},\d{3}$/.test(digits)) return null;
  return { value: Number(digits.replace(',', '.')), rest: spread.slice(digits.length).trim() };
}
