import { basename } from 'node:path';
import { dialog } from 'electron';
import { phrase } from '#core/words/phrase.ts';
import type { Kitchens } from './kitchens.ts';

interface Copied {
  readonly file: string;
}

/** "cellar.sidejar" becomes "cellar copy.sidejar": the dialog begins beside the kitchen. */
export function copyName(store: string): string {
  return `${basename(store).replace(/\.sidejar$/, '')} copy.sidejar`;
}

/** Asks where to, has the desk copy the kitchen there while it is in use, and says how it went. */
export async function saveCopy(kitchens: Kitchens): Promise<void> {
  const front = kitchens.front();
  if (front === null) return;
  const { canceled, filePath } = await dialog.showSaveDialog(front.window, {
    defaultPath: copyName(front.store),
    filters: [{ name: phrase`Kitchens`, extensions: ['sidejar'] }],
  });
  if (canceled || filePath === '') return;
  const envelope = await front.line.ask({ ask: 'menu:save-copy', name: 'store:backup', input: { to: filePath } });
  await dialog.showMessageBox(
    front.window,
    envelope.ok
      ? {
          type: 'info',
          message: phrase`The copy was made, opened and checked.`,
          detail: (envelope.value as Copied).file,
        }
      : { type: 'error', message: phrase`The copy was not made.`, detail: envelope.error.message },
  );
}
