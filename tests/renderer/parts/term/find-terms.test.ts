import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { layWords, type Translation, wordsOf } from '#core/words/laid-words.ts';
import { formsIn, termsIn } from '#renderer/parts/term/find-terms.ts';
import { termWords } from '#renderer/parts/term/term-words.ts';
import type { Catalogue } from '#scripts/words/catalogue.ts';
import { pseudoLanguage } from '#scripts/words/pseudo-language.ts';

const catalogue = JSON.parse(
  readFileSync(join(import.meta.dirname, '..', '..', '..', '..', 'words', 'en.json'), 'utf8'),
) as Catalogue;

/** The same module, read anew after the words of a language were laid in, as a window reads it. */
async function inLanguage(language: string, texts: Readonly<Record<string, Translation>>) {
  vi.resetModules();
  const words = await import('#core/words/laid-words.ts');
  words.layWords(words.wordsOf(language, texts));
  return import('#renderer/parts/term/find-terms.ts');
}

afterEach(() => {
  layWords(null);
  vi.resetModules();
});

describe('termsIn', () => {
  it('finds every form of a word, and the longer word before a shorter one within it', () => {
    expect(termsIn('Blind codes and serving orders')).toEqual(['blindCode', 'servingOrder']);
    expect(termsIn('What this panel can see')).toEqual(['sight']);
    expect(termsIn('Two bases, one base')).toEqual(['base']);
  });

  it('takes a capital for that capital alone', () => {
    expect(termsIn('Lot')).toEqual(['lotCode']);
    expect(termsIn('That is a lot')).toEqual([]);
    expect(termsIn('Ph. D.')).toEqual([]);
  });

  it('takes a single letter for a word only where it stands alone', () => {
    expect(termsIn('F')).toEqual(['f']);
    expect(termsIn('F: how much further they lie apart')).toEqual(['f']);
    expect(termsIn('Taster F goes their own way')).toEqual(['taster']);
  });

  it('finds words beside signs, and none within another word', () => {
    expect(termsIn('°Bx, as SG; d′ and CO₂')).toEqual(['brix', 'sg', 'dPrime', 'carbonation']);
    expect(termsIn('A basement of based panelling')).toEqual([]);
  });

  it('reads over what only looks like a word of the trade', () => {
    expect(termsIn('Start from the sample kitchen, on the scale of nobody')).not.toContain('sample');
    expect(termsIn('Start over')).toEqual([]);
  });

  it('finds the forms of another language, which declines its words and writes nouns large', async () => {
    const german = await inLanguage('de', {
      [termWords.base.forms]: 'Ansatz|Ansatzes|Ansätze|Ansätzen',
      [termWords.culture.forms]: 'Kultur|Kulturen',
      [termWords.tasting.forms]: 'Verkostung|Verkostungen',
    });
    expect(german.termsIn('Was auf Gläser verteilt wird: die Ansätze und ihre Kulturen')).toEqual(['base', 'culture']);
    expect(german.termsIn('bei jedem Einsatz des Ansatzes')).toEqual(['base']);
    expect(german.termsIn('What is split: the bases')).toEqual([]);
  });

  it('finds words in a script without spaces', async () => {
    const japanese = await inLanguage('ja', { [termWords.base.forms]: 'ベース' });
    expect(japanese.termsIn('このベースを瓶に分けます')).toEqual(['base']);
  });

  it('finds in the pseudo language what it finds in English', async () => {
    const sentences = [
      'Bases',
      'Headspace',
      'What drives liking',
      'What is split into jars, and the cultures that make it.',
    ];
    const inEnglish = sentences.map(termsIn);
    const texts = pseudoLanguage(catalogue);
    const pseudo = await inLanguage('fi', texts);
    expect(sentences.map((sentence) => pseudo.termsIn(texts[sentence] ?? ''))).toEqual(inEnglish);
    expect(inEnglish.flat()).toEqual(['base', 'headspace', 'drivers', 'culture']);
  });
});

describe('termWords', () => {
  const all = Object.entries(termWords);

  it('says each word in one short line, in a sentence', () => {
    for (const [name, { meaning }] of all) {
      expect(meaning.length, `${name}: ${meaning}`).toBeLessThanOrEqual(100);
      expect(meaning, name).toMatch(/^\p{Lu}.*[^.][.?]$/u);
    }
  });

  it('gives no form to two words', () => {
    const forms = all.flatMap(([, words]) => formsIn(words.forms));
    expect(forms.filter((form, place) => forms.indexOf(form) !== place)).toEqual([]);
  });

  it('is found by each of its own forms', () => {
    const lost = all.flatMap(([name, words]) =>
      formsIn(words.forms).filter((form) => !termsIn(form).includes(name as keyof typeof termWords)),
    );
    expect(lost).toEqual([]);
  });

  it('stands in the catalogue with its forms, for those who translate', () => {
    for (const [name, words] of all) {
      expect(Object.keys(catalogue), name).toContain(words.forms);
      expect(words.forms, name).toContain('|');
    }
  });
});

it('a translation that leaves a word out keeps its English forms and meaning', () => {
  layWords(wordsOf('de', {}));
  expect(termWords.base.meaning).toMatch(/^The plain/);
});
