import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';

/** A file's size as people say it. @example sizeWords(1_500_000) // '1.5 MB' */
export function sizeWords(bytes: number): string {
  return bytes < 1_000_000 ? phrase`${Math.ceil(bytes / 1000)} kB` : phrase`${fixed(bytes / 1_000_000, 1)} MB`;
}
