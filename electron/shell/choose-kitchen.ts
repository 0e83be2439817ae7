import { dialog } from 'electron';
import { phrase } from '#core/words/phrase.ts';

const kinds = [
  {
    get name() {
      return phrase`Kitchens`;
    },
    extensions: ['sidejar'],
  },
];

/** Asks with the system's dialog for a kitchen's file; a new name is refused by it, so that nobody makes a kitchen by a slip. */
export async function chooseKitchen(): Promise<string | null> {
  const { canceled, filePaths } = await dialog.showOpenDialog({ properties: ['openFile'], filters: kinds });
  return canceled ? null : (filePaths[0] ?? null);
}
