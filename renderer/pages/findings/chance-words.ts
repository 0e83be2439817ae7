import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';

/** A chance never stands as more exact than it is. */
export function chanceWords(chance: number | null): string {
  if (chance === null) return '–';
  return chance < 0.001 ? phrase`below ${0.001}` : fixed(chance, 3);
}
