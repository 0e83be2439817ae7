import { numberShown } from './figures.ts';

/** A phrase in another language: its text with numbered places, or one text for each plural category of a number in it. */
export type Translation = string | PluralTranslation;

/** Which place's number decides, and what is said for each category of the language (`other` is always there). */
export type PluralTranslation = { readonly by: number; readonly other: string } & {
  readonly [Category in Exclude<Intl.LDMLPluralRule, 'other'>]?: string;
};

/** A text taken apart: words, and the numbers of places. */
type Parts = readonly (string | number)[];

/** Words of a language, ready to be said. */
export interface Laid {
  readonly language: string;
  /** The text of a phrase, taken apart; null where the language has none. */
  partsOf(key: string, values: readonly (string | number)[]): Parts | null;
}

function takenApart(text: string): Parts {
  return text.split(/\{(\d+)\}/).map((part, index) => (index % 2 === 0 ? part : Number(part)));
}

/**
 * Makes the words of a translation ready to be laid in.
 *
 * @param language a BCP 47 tag, such as `de` or `pt-BR`: it decides the plural categories
 * @param texts each phrase's English with its translation; missing ones stay English
 */
export function wordsOf(language: string, texts: Readonly<Record<string, Translation>>): Laid {
  const rules = new Intl.PluralRules(language);
  const plain = new Map<string, Parts>();
  const plural = new Map<string, { by: number; parts: Map<string, Parts> }>();
  for (const [key, text] of Object.entries(texts)) {
    if (typeof text === 'string') plain.set(key, takenApart(text));
    else {
      const { by, ...said } = text;
      plural.set(key, { by, parts: new Map(Object.entries(said).map(([name, words]) => [name, takenApart(words)])) });
    }
  }
  return {
    language,
    partsOf(key, values) {
      const said = plain.get(key);
      if (said !== undefined) return said;
      const forms = plural.get(key);
      if (forms === undefined) return null;
      return forms.parts.get(rules.select(numberShown(values[forms.by] ?? 0))) ?? forms.parts.get('other') ?? null;
    },
  };
}

let laid: Laid | null = null;

/** From now on these words are said; null: English. Whoever boots a page, or answers a request, lays them in first. */
export function layWords(words: Laid | null): void {
  laid = words;
}

export function laidWords(): Laid | null {
  return laid;
}
