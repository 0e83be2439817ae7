import { type Laid, layWords, wordsOf } from '#core/words/laid-words.ts';
import { Failure } from '#shared/failure.ts';
import { type ReadTranslation, translationOf } from './translation-files.ts';

// In which language the desk speaks: each request may come in another one, so what was read of a file is kept.

const kept = new Map<string, Laid | null>();

/** Speaks the words just read, now and whenever their language is asked for. */
export function layTongue(language: string, { words }: Pick<ReadTranslation, 'words'>): void {
  const laid = wordsOf(language, words);
  kept.set(language, laid);
  layWords(laid);
}

/** Speaks a language from now on; English where there are no words of it, or none that can be read. */
export function speak(language: string): void {
  if (language === 'en') {
    layWords(null);
    return;
  }
  const known = kept.get(language);
  if (known !== undefined) {
    layWords(known);
    return;
  }
  try {
    layTongue(language, translationOf(language));
  } catch (error) {
    if (!(error instanceof Failure)) throw error;
    kept.set(language, null);
    layWords(null);
  }
}
