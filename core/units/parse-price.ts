import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { parseNumber } from './parse-number.ts';
import type { Parsed } from './parse-quantity.ts';
import { parseQuantity } from './parse-quantity.ts';

/** A price by mass or by volume, in whatever currency the kitchen writes. */
export type Price = { readonly price_per_kg: number } | { readonly price_per_L: number };

const most = 100_000;

/**
 * Reads a price the way people note it: "12.50 per kg", "€3 / L", "4.99 a lb", "3 for 500 g".
 *
 * Method: the number, then what it buys; a currency sign or word beside the number is passed over, for the kitchen has one currency. Leaves
 * out prices by the piece.
 *
 * @param text what somebody typed
 * @returns the price per kilogram or per litre, at least 0 and at most 100,000, or a sentence that says what is unclear
 * @example parsePrice('3 for 500 g') // { price_per_kg: 6 }
 */
export function parsePrice(text: string): Parsed<Price> {
  const plain = text
    .trim()
    .replace(/^[^\d.,½¼¾⅓⅔+\-−–]+/u, '')
    .replace(/(\d)\s*\/\s*(?=\p{L})/gu, '$1 per ');
  const number = parseNumber(plain);
  if (number === null)
    return refused('not-a-number', phrase`“${text.trim()}” has no clear price; write ${fixed(12.5, 2)} per kg.`);
  if (number.value < 0)
    return refused('negative', phrase`A price of ${number.value} is negative; permitted: zero or more.`);
  const what = /^[^\d/]*?(?:\/|\bper\b|\bfor\b|\ba\b|\bthe\b)\s*(.+)$/iu.exec(number.rest)?.[1];
  if (what === undefined) {
    return refused(
      'unit-missing',
      phrase`${number.value} for how much? Write ${number.value} per kg, per L or for 500 g.`,
    );
  }
  const bought = parseQuantity(/^[\d.,½¼¾⅓⅔]/u.test(what) ? what : `1 ${what}`);
  if (!bought.ok) return bought;
  const { unit, stored, rest } = bought.value;
  if (rest !== '') return refused('unit-unknown', phrase`“${rest}” is too much here; write ${fixed(12.5, 2)} per kg.`);
  if ((unit.dimension !== 'mass' && unit.dimension !== 'volume') || stored === 0) {
    return refused('wrong-kind', phrase`A price goes by weight or by volume; write it per kg, per lb or per L.`);
  }
  const perThousand = (1000 * number.value) / stored;
  if (perThousand > most) {
    const by = unit.dimension === 'mass' ? 'kg' : 'L';
    return refused(
      'out-of-range',
      phrase`That is ${Math.round(perThousand)} per ${by}; permitted: 0 to ${most} per ${by}.`,
    );
  }
  return {
    ok: true,
    value: unit.dimension === 'mass' ? { price_per_kg: perThousand } : { price_per_L: perThousand },
  };
}

function refused(
  code: 'not-a-number' | 'negative' | 'unit-missing' | 'unit-unknown' | 'wrong-kind' | 'out-of-range',
  message: string,
): Parsed<never> {
  return { ok: false, problem: { code, message } };
}
