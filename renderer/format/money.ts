import { formatQuantity, type MeasureSystem } from '#core/units/format-quantity.ts';
import { units } from '#core/units/unit-table.ts';
import { fixed, shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';

/** @example moneyWords(3.5, '€') // '€3.50' @example moneyWords(3.5, 'SEK') // '3.50 SEK' */
export function moneyWords(value: number, currency: string | null): string {
  const figure = value !== 0 && Math.abs(value) < 0.1 ? shownNumber(Number(value.toPrecision(2))) : fixed(value, 2);
  if (currency === null) return figure;
  return currency.length === 1 ? `${currency}${figure}` : `${figure} ${currency}`;
}

interface KeptPrice {
  readonly price_per_kg: number | null;
  readonly price_per_L: number | null;
}

/** A price as it is written in this kitchen, such as "12.50 per kg"; null where there is none. */
export function priceWords(
  { price_per_kg, price_per_L }: KeptPrice,
  system: MeasureSystem,
  currency: string | null,
): string | null {
  if (price_per_kg !== null) {
    return system === 'us'
      ? phrase`${moneyWords((price_per_kg * units.lb.factor) / 1000, currency)} per lb`
      : phrase`${moneyWords(price_per_kg, currency)} per kg`;
  }
  if (price_per_L === null) return null;
  return system === 'us'
    ? phrase`${moneyWords((price_per_L * units.quart.factor) / 1000, currency)} per qt`
    : phrase`${moneyWords(price_per_L, currency)} per L`;
}

/** What a measure weighs: grams, and ounces beside them in a US kitchen. */
export function measureWeight(mass_g: number, system: MeasureSystem): string {
  const grams = `${shownNumber(Number(mass_g.toPrecision(4)))} g`;
  return system === 'us' ? `${grams} (${formatQuantity(mass_g, 'mass', 'us')})` : grams;
}
