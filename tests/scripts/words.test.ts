import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { catalogueOf, catalogueText } from '#scripts/words/catalogue.ts';
import { findPhrases, parsed, phrasesOf, sayingFiles } from '#scripts/words/find-phrases.ts';
import { saidTooSoon, type Untagged, untaggedIn } from '#scripts/words/find-untagged.ts';

const root = join(import.meta.dirname, '..', '..');

/** Pieces of source, kept as text: words without the tag, codes, and phrases inside each other. */
const { without, codes, phrases } = JSON.parse(
  readFileSync(join(root, 'tests', 'fixtures', 'words-in-source.json'), 'utf8'),
) as { without: [string, string][]; codes: [string, string][]; phrases: string };

function source(file: string, text: string): ts.SourceFile {
  return ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
}

function told({ file, line, words }: Untagged, what: string): string {
  return `${file}:${line} “${words}” ${what}`;
}

describe('the catalogue of words', () => {
  it('holds every phrase of the program and nothing else (npm run words writes it)', () => {
    const found = findPhrases(root);
    expect(found.length).toBeGreaterThan(2500);
    expect(readFileSync(join(root, 'words', 'en.json'), 'utf8')).toBe(catalogueText(catalogueOf(found)));
  });

  it('finds phrases in markup, inside each other, and once where they stand twice', () => {
    const found = phrasesOf(source('renderer/x.tsx', phrases));
    expect(catalogueOf(found)).toEqual({
      Today: { in: ['renderer/x.tsx'] },
      '{0} of {1} jars': { in: ['renderer/x.tsx'], puts: ['n', 'length'] },
    });
  });
});

describe('words of the screen', () => {
  const files = sayingFiles(root).map((file) => parsed(root, file));

  it('carry the tag phrase, so that they can be said in another language', () => {
    const missing = files.flatMap(untaggedIn);
    expect(missing.map((each) => told(each, 'stands without the tag phrase`…`'))).toEqual([]);
  });

  it('are said when they are asked for outside the page: each request may come in another language', () => {
    const soon = files.flatMap(saidTooSoon);
    expect(soon.map((each) => told(each, 'is said once, when its file is read: put it into a function'))).toEqual([]);
  });

  it('would be missed without the tag, wherever they stand', () => {
    for (const [file, text] of without) expect(untaggedIn(source(file, text)), text).toHaveLength(1);
  });

  it('are told from codes, names of classes, and what only programmers are told', () => {
    for (const [file, text] of codes) expect(untaggedIn(source(file, text)), text).toEqual([]);
    expect(saidTooSoon(source('core/x.ts', 'const a = () => phrase`One`; const b = phrase`Two`;'))).toHaveLength(1);
  });
});
