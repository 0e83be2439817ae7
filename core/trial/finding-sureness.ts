import { holm } from '#core/panel/compare/holm.ts';
import type { AttributeAnalysis } from '#core/panel/panel-analysis.ts';
import { phrase } from '#core/words/phrase.ts';
import { countWords } from './finding-words.ts';
import type { Sureness } from './sureness.ts';

/**
 * How likely chance alone makes levels differ this much, for every attribute, with the number of questions allowed for.
 *
 * Method: Holm over the attributes whose test could be computed: who asks six questions finds something by luck more easily.
 *
 * @returns adjusted chances by attribute; null where there was no test
 * Source: as `holm`.
 */
export function adjustedChances(attributes: readonly AttributeAnalysis[]): Map<string, number | null> {
  const tested = attributes.flatMap(({ attribute, test }) => (test === null ? [] : [{ attribute, p: test.p }]));
  const adjusted = holm(tested.map(({ p }) => p));
  const known = new Map(tested.map(({ attribute }, place) => [attribute, adjusted[place] ?? 1]));
  return new Map(attributes.map(({ attribute }) => [attribute, known.get(attribute) ?? null]));
}

/** The word for a chance. Steps at 1 in 1,000, in 100 and in 20: common practice, no source. */
export function surenessOf(chance: number | null): Sureness {
  if (chance === null) return 'unknown';
  if (chance < 0.001) return 'very';
  if (chance < 0.01) return 'quite';
  return chance < 0.05 ? 'fairly' : 'unclear';
}

/** How often luck alone would do as much. */
export const oftenWords = {
  get very() {
    return phrase`fewer than 1 in 1,000`;
  },
  get quite() {
    return phrase`fewer than 1 in 100`;
  },
  get fairly() {
    return phrase`fewer than 1 in 20`;
  },
} as const;

/** How sure, in words with their meaning (`alike`: "liked alike"); null where nothing is clear enough to be sure of. */
export function surenessSentence(chance: number | null, questions: number, alike: string): string | null {
  const sure = surenessOf(chance);
  if (sure === 'unclear' || sure === 'unknown') return null;
  const asked = questions > 1 ? phrase`, with ${countWords(questions)} attributes asked about` : '';
  return phrase`${sure === 'very' ? phrase`Very` : sure === 'quite' ? phrase`Quite` : phrase`Fairly`} sure: had all been ${alike}, luck alone would set them this far apart in ${oftenWords[sure]} such tastings${asked}.`;
}
