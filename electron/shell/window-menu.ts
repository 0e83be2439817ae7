import { Menu, shell } from 'electron';
import { tellPage } from '#hosts/ipc/carry-desk.ts';
import { chooseKitchen } from './choose-kitchen.ts';
import type { Kitchens } from './kitchens.ts';
import { menuTemplate } from './menu-template.ts';
import type { RecentKitchens } from './recent-kitchens.ts';
import { saveCopy } from './save-copy.ts';

async function openChosen(kitchens: Kitchens): Promise<void> {
  const file = await chooseKitchen();
  if (file !== null) kitchens.open(file);
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
      void openChosen(kitchens);
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
