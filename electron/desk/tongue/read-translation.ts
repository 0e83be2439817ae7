import type { Translation } from '#core/words/laid-words.ts';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';

const categories: ReadonlySet<string> = new Set(['zero', 'one', 'two', 'few', 'many', 'other']);

function fits(text: unknown, places: number): text is string {
  if (typeof text !== 'string') return false;
  return [...text.matchAll(/\{(\d+)\}/g)].every(([, place]) => Number(place) < places);
}

/** One text, or one for each plural category and the place that decides; null for anything else. */
function translation(value: unknown, places: number): Translation | null {
  if (fits(value, places)) return value;
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return null;
  const { by, ...said } = value as Record<string, unknown>;
  if (!Number.isInteger(by) || (by as number) < 0 || (by as number) >= places || said.other === undefined) return null;
  const isWhole = Object.entries(said).every(([name, text]) => categories.has(name) && fits(text, places));
  return isWhole ? (value as Translation) : null;
}

/**
 * Reads a translation's file, and keeps what belongs to a phrase and fits its places.
 *
 * @param phrases each phrase of the program with the number of its places
 * @returns the words, and how many texts were left out
 * @throws Failure with a sentence where the file is no list of words
 */
export function readTranslation(
  text: string,
  phrases: ReadonlyMap<string, number>,
  language: string,
): { readonly words: Readonly<Record<string, Translation>>; readonly unknown: number } {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    throw new Failure(
      'ill-formed-json',
      phrase`The words in ${language}.json can’t be read: the file is no whole JSON.`,
    );
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw new Failure(
      'invalid-input',
      phrase`The words in ${language}.json can’t be used: they must be phrases with their translations.`,
    );
  }
  const words: Record<string, Translation> = {};
  let unknown = 0;
  for (const [key, said] of Object.entries(value)) {
    const places = phrases.get(key);
    const read = places === undefined ? null : translation(said, places);
    if (read === null) unknown += 1;
    else words[key] = read;
  }
  return { words, unknown };
}
