import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Quantity } from './parse-quantity.ts';

/** A question about a unit that was likely slipped, and what was likely meant. */
export interface UnitDoubt {
  readonly question: string;
  /** The likely amount in the stored unit (g or mL), and how it is written. */
  readonly instead: number;
  readonly insteadWords: string;
}

/** From here on a small-batch kitchen is asked again. Common practice, no source. */
const muchForAKitchen = 25_000;

const smaller: Readonly<Record<string, readonly [symbol: string, factor: number]>> = {
  kg: ['g', 1],
  L: ['mL', 1],
  lb: ['oz', 28.349523125],
};

/**
 * Asks again where a large unit was likely typed for a small one: 75 kg for 75 g.
 *
 * Method: more than 25 kg or 25 L, written in kg, L or lb. Leaves out slips between units that lie closer together.
 *
 * @param quantity as parsed
 * @returns the question, or `null` when nothing is odd
 * @example unitDoubt(parsed('75 kg'))?.question // 'That is 75 kg. Did you mean 75 g?'
 */
export function unitDoubt({ value, unit, stored }: Quantity): UnitDoubt | null {
  const less = smaller[unit.symbol];
  if (less === undefined || stored <= muchForAKitchen) return null;
  const [symbol, factor] = less;
  const insteadWords = `${shownNumber(value)} ${symbol}`;
  return {
    question: phrase`That is ${value} ${unit.symbol}. Did you mean ${insteadWords}?`,
    instead: value * factor,
    insteadWords,
  };
}
