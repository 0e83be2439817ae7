import { phrase } from '#core/words/phrase.ts';
import type { hedonicWords } from '#shared/hedonic-words.ts';
import type { justAboutRightWords } from '#shared/just-about-right-words.ts';

type KnownWord = (typeof hedonicWords)[number] | (typeof justAboutRightWords)[number];

/** The known scales' words are kept with an attribute as they are called in English, and said in the window's language. */
const said: Readonly<Record<KnownWord, string>> = {
  'dislike extremely': phrase`dislike extremely`,
  'dislike very much': phrase`dislike very much`,
  'dislike moderately': phrase`dislike moderately`,
  'dislike slightly': phrase`dislike slightly`,
  'neither like nor dislike': phrase`neither like nor dislike`,
  'like slightly': phrase`like slightly`,
  'like moderately': phrase`like moderately`,
  'like very much': phrase`like very much`,
  'like extremely': phrase`like extremely`,
  'much too little': phrase`much too little`,
  'too little': phrase`too little`,
  'just right': phrase`just right`,
  'too much': phrase`too much`,
  'much too much': phrase`much too much`,
};

/** A word of a scale as shown: one of the known scales' in the window's language, anybody's own as it was written. */
export function scaleWord(word: string): string {
  return Object.hasOwn(said, word) ? said[word as KnownWord] : word;
}
