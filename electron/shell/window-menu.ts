import { dialog, Menu, shell } from 'electron';
import { phrase } from '#core/words/phrase.ts';
import { tellPage } from '#hosts/ipc/carry-desk.ts';
import type { Kitchens } from './kitchens.ts';
import { menuTemplate } from './menu-template.ts';
import type { RecentKitchens } from './recent-kitchens.ts';
import { saveCopy } from './save-copy.ts';

const kinds = [
  {
    get name() {
      return phrase`Kitchens`;
    },
    extensions: ['sidejar'],
  },
];

/** Asks which kitchen to open; a new name is refused by the dialog, so that nobody makes a kitchen by a slip. */
async function chooseKitchen(kitchens: Kitchens): Promise<void> {
  const { canceled, filePaths } = await dialog.showOpenDialog({ properties: ['openFile'], filters: kinds });
  const [file] = filePaths;
  if (!canceled && file !== undefined) kitchens.open(file);
}

export interface MenuSurroundings {
  readonly recent: RecentKitchens;
  readonly isDevelopment: boolean;
  readonly platform: NodeJS.Platform;
}

/** Puts up the menu bar; what it asks for goes to the kitchen in front. */
export function setMenu(kitchens: Kitchens, { recent, isDevelopment, platform }: MenuSurroundings): void {
  const acts = {
    tell(act: string) {
      const front = kitchens.front();
      if (front !== null) tellPage(front.window.webContents, { kind: 'menu', act });
    },
    openKitchen() {
      void chooseKitchen(kitchens);
    },
    openRecent: (store: string) => kitchens.open(store),
    saveCopy() {
      void saveCopy(kitchens);
    },
    showKitchenFile() {
      const front = kitchens.front();
      if (front !== null) shell.showItemInFolder(front.store);
    },
  };
  Menu.setApplicationMenu(
    Menu.buildFromTemplate(menuTemplate({ platform, isDevelopment, recent: recent.list(), acts })),
  );
}
