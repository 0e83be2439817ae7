import { layWords, type Translation, wordsOf } from '#core/words/laid-words.ts';
import type { DeskLine } from '#hosts/desk-line.ts';

/** Told in which language a window asks, and over which line. */
export type AskedIn = (language: string, line: Pick<DeskLine, 'ask'>) => Promise<void>;

/**
 * Has menus and notices speak as the window that asked last; English where there are no words.
 *
 * @param redraw draws again what stands there already: the menu
 */
export function speakAsAsked(redraw: () => void): AskedIn {
  let last = 'en';
  return async (language, line) => {
    if (language === last) return;
    last = language;
    const envelope = await line.ask({ ask: `menu-${language}`, name: 'words:read', input: { language } });
    // Another window may have asked in another language meanwhile.
    if (language !== last) return;
    if (envelope.ok) {
      const read = envelope.value as {
        readonly language: string;
        readonly words: Readonly<Record<string, Translation>>;
      };
      layWords(wordsOf(read.language, read.words));
    } else {
      layWords(null);
    }
    redraw();
  };
}
