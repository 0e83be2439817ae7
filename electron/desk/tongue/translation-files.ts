import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Translation } from '#core/words/laid-words.ts';
import { phrase } from '#core/words/phrase.ts';
import { isLanguageTag } from '#shared/asked-ways.ts';
import { Failure } from '#shared/failure.ts';
import { readTranslation } from './read-translation.ts';

// A translation is one file, `<language>.json`: of the program, or in the folder of a person's own, which goes first.

export interface ReadTranslation {
  readonly language: string;
  readonly words: Readonly<Record<string, Translation>>;
  /** How many phrases there are to say. */
  readonly total: number;
  /** How many texts of the file belong to no phrase, or put something into a place that the phrase doesn't have. */
  readonly unknown: number;
}

const mostBytes = 4_000_000;

let folders: readonly string[] = [];
let catalogue: ReadonlyMap<string, number> | null = null;

/** Where translations lie: the program's folder, with its catalogue, then one's own. Missing folders are empty ones. */
export function lookForWordsIn(program: string, own: string | null): void {
  folders = own === null ? [program] : [program, own];
  catalogue = null;
}

/** Every phrase of the program, with how many places it has. */
function phrases(): ReadonlyMap<string, number> {
  if (catalogue === null) {
    const [program] = folders;
    const entries =
      program === undefined
        ? {}
        : (JSON.parse(readFileSync(join(program, 'en.json'), 'utf8')) as Record<string, { puts?: readonly string[] }>);
    catalogue = new Map(Object.entries(entries).map(([key, { puts }]) => [key, puts?.length ?? 0]));
  }
  return catalogue;
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder).filter((name) => name.endsWith('.json'));
  } catch {
    return [];
  }
}

/** The languages besides English that there is a file of, in order. */
export function languagesThere(): string[] {
  const all = folders.flatMap(namesIn).map((name) => name.slice(0, -'.json'.length));
  return [...new Set(all)].filter((language) => isLanguageTag(language) && language !== 'en').sort();
}

function textOf(folder: string, language: string): string | null {
  const file = join(folder, `${language}.json`);
  let size: number;
  try {
    const found = statSync(file);
    if (!found.isFile()) return null;
    size = found.size;
  } catch {
    return null;
  }
  if (size > mostBytes) {
    throw new Failure('too-large', phrase`The words in ${language}.json are more than ${mostBytes / 1_000_000} MB.`);
  }
  try {
    return readFileSync(file, 'utf8');
  } catch {
    throw new Failure('refused', phrase`The words in ${language}.json can’t be read from the disk.`);
  }
}

/**
 * The words of a language, one's own before the program's.
 *
 * @param wanted a BCP 47 tag; where there is nothing of it, the language that it is a kind of is taken: de for de-AT
 * @throws Failure `not-found` where there is no file; with a sentence where one can't be used
 */
export function translationOf(wanted: string): ReadTranslation {
  for (const language of new Set([wanted, wanted.split('-')[0] ?? wanted])) {
    if (language === 'en' || !isLanguageTag(language)) continue;
    const texts = folders.map((folder) => textOf(folder, language)).filter((text) => text !== null);
    if (texts.length === 0) continue;
    const read = texts.map((text) => readTranslation(text, phrases(), language));
    return {
      language,
      words: Object.assign({}, ...read.map(({ words }) => words)) as Record<string, Translation>,
      total: phrases().size,
      unknown: read.reduce((sum, { unknown }) => sum + unknown, 0),
    };
  }
  throw new Failure('not-found', phrase`There are no words for the language ${wanted}.`, ['language']);
}

/** What is wrong with the file of a language, as a sentence; null when it can be used. */
export function translationProblem(language: string): string | null {
  try {
    const { unknown } = translationOf(language);
    if (unknown === 0) return null;
    return unknown === 1
      ? phrase`One text in ${language}.json belongs to nothing that is said here and is left out.`
      : phrase`${unknown} texts in ${language}.json belong to nothing that is said here and are left out.`;
  } catch (error) {
    if (error instanceof Failure) return error.message;
    throw error;
  }
}
