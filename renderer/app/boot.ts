import { layWords, type Translation, wordsOf } from '#core/words/laid-words.ts';
import { phrase } from '#core/words/phrase.ts';
import { layDecimal, windowWays } from '#renderer/format/window-ways.ts';
import { afterPaint } from './after-paint.ts';
import { findBridge } from './find-bridge.ts';

// Before anything is said the language must be known: tables of words are said when their file is read. In English nothing is asked.

/** Asks the desk for the words of this window's language and lays them in; without any, English stays. */
async function layLanguage(language: string): Promise<void> {
  const bridge = await findBridge({ window });
  const envelope = await bridge?.ask({ ask: 'words', name: 'words:read', input: { language } });
  if (envelope?.ok !== true) return;
  const read = envelope.value as { readonly language: string; readonly words: Readonly<Record<string, Translation>> };
  layWords(wordsOf(read.language, read.words));
  document.documentElement.lang = read.language;
}

async function boot(): Promise<void> {
  layDecimal();
  const { language } = windowWays();
  const wanted = language === 'system' ? navigator.language : language;
  const isEnglish = wanted === 'en' || wanted.startsWith('en-');
  // The frame is shown before the rest is read: it is on its way meanwhile.
  await Promise.all([afterPaint(), isEnglish ? null : layLanguage(wanted).catch(() => undefined)]);
  await import('./main.tsx');
}

boot().catch(() => {
  // Else an empty frame would stay.
  const said = document.createElement('p');
  said.setAttribute('role', 'alert');
  said.textContent = phrase`The page could not be read whole. Reload it, or start the workbench again.`;
  document.querySelector('main')?.replaceChildren(said);
});
