import { type BrowserWindow, dialog, type MessageBoxOptions, shell } from 'electron';
import { phrase } from '#core/words/phrase.ts';

const openAnswer = 1;

function question(address: URL): MessageBoxOptions {
  return {
    type: 'question',
    message: phrase`Open ${address.host} in your browser?`,
    detail: address.href,
    buttons: [phrase`Cancel`, phrase`Open`],
    defaultId: 0,
    cancelId: 0,
    noLink: true,
  };
}

/**
 * Opens an address in the user's browser: only https, without a user name in it, and only when they say so.
 *
 * @param address what the page wants to go to
 * @param window the window that asks, or null
 * @returns whether it was opened
 */
export async function openOutside(address: string, window: BrowserWindow | null): Promise<boolean> {
  if (!URL.canParse(address)) return false;
  const url = new URL(address);
  // A user name can make one host look like another.
  if (url.protocol !== 'https:' || url.username !== '' || url.password !== '') return false;
  const asked = question(url);
  const { response } = await (window === null ? dialog.showMessageBox(asked) : dialog.showMessageBox(window, asked));
  if (response !== openAnswer) return false;
  await shell.openExternal(url.href);
  return true;
}
