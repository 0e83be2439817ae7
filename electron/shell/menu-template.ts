import { basename } from 'node:path';
import type { MenuItemConstructorOptions } from 'electron';
import { phrase } from '#core/words/phrase.ts';
import { screens } from './screens.ts';

export interface MenuActs {
  /** Asks the page in front to act, such as `undo` or `go:/trials`. */
  tell(act: string): void;
  openKitchen(): void;
  openRecent(store: string): void;
  saveCopy(): void;
  showKitchenFile(): void;
}

export interface MenuOptions {
  readonly platform: NodeJS.Platform;
  readonly isDevelopment: boolean;
  /** The kitchens opened last, the latest first. */
  readonly recent: readonly string[];
  readonly acts: MenuActs;
}

type Item = MenuItemConstructorOptions;

const line: Item = { type: 'separator' };

function redoKeys(platform: NodeJS.Platform): string {
  return platform === 'win32' ? 'Ctrl+Y' : 'CmdOrCtrl+Shift+Z';
}

function appMenu(): Item {
  return {
    role: 'appMenu',
    label: 'Sidejar',
    submenu: [
      { role: 'about' },
      line,
      { role: 'services' },
      line,
      { role: 'hide' },
      { role: 'hideOthers' },
      { role: 'unhide' },
      line,
      { role: 'quit' },
    ],
  };
}

/** Kitchens of one name are told apart by their folders. */
function recentMenu({ recent, acts }: MenuOptions): Item {
  const names = recent.map((store) => basename(store));
  return {
    label: phrase`Open recent`,
    enabled: recent.length > 0,
    submenu: recent.map((store, place) => ({
      label: names.filter((name) => name === names[place]).length > 1 ? store : (names[place] ?? store),
      click: () => acts.openRecent(store),
    })),
  };
}

function fileMenu(options: MenuOptions): Item {
  const { platform, acts } = options;
  const reveal = platform === 'darwin' ? phrase`Show Kitchen in Finder` : phrase`Show kitchen in its folder`;
  return {
    label: platform === 'darwin' ? phrase`File` : phrase`&File`,
    submenu: [
      { label: phrase`Open kitchen…`, accelerator: 'CmdOrCtrl+O', click: () => acts.openKitchen() },
      recentMenu(options),
      { label: phrase`Save a copy…`, accelerator: 'CmdOrCtrl+Shift+S', click: () => acts.saveCopy() },
      { label: reveal, click: () => acts.showKitchenFile() },
      line,
      { role: 'close', accelerator: 'CmdOrCtrl+W' },
      ...(platform === 'darwin' ? [] : [line, { role: 'quit' } as const]),
    ],
  };
}

function editMenu({ platform, acts }: MenuOptions): Item {
  return {
    label: platform === 'darwin' ? phrase`Edit` : phrase`&Edit`,
    submenu: [
      // Not the roles: those would undo typing only, and undo it in a field left long ago.
      { label: phrase`Undo`, accelerator: 'CmdOrCtrl+Z', click: () => acts.tell('undo') },
      { label: phrase`Redo`, accelerator: redoKeys(platform), click: () => acts.tell('redo') },
      line,
      { role: 'cut' },
      { role: 'copy' },
      { role: 'paste' },
      { role: 'selectAll' },
      line,
      { label: phrase`Find in the kitchen…`, accelerator: 'CmdOrCtrl+K', click: () => acts.tell('find') },
    ],
  };
}

function goMenu({ platform, acts }: MenuOptions): Item {
  return {
    label: platform === 'darwin' ? phrase`Go` : phrase`&Go`,
    submenu: screens.map(({ name, act }, place) => ({
      label: name,
      accelerator: `CmdOrCtrl+${place + 1}`,
      click: () => acts.tell(act),
    })),
  };
}

function viewMenu({ platform, isDevelopment }: MenuOptions): Item {
  const forDevelopers: Item[] = [line, { role: 'reload' }, { role: 'toggleDevTools' }];
  return {
    label: platform === 'darwin' ? phrase`View` : phrase`&View`,
    submenu: [
      { role: 'resetZoom' },
      { role: 'zoomIn' },
      { role: 'zoomOut' },
      line,
      { role: 'togglefullscreen' },
      ...(isDevelopment ? forDevelopers : []),
    ],
  };
}

function windowMenu({ platform }: MenuOptions): Item {
  if (platform === 'darwin') return { role: 'windowMenu' };
  return { label: phrase`&Window`, submenu: [{ role: 'minimize' }] };
}

function helpMenu({ platform, acts }: MenuOptions): Item {
  const data: Item[] = [
    { label: phrase`Keys and words`, click: () => acts.tell('keys') },
    { label: phrase`Data and backups`, click: () => acts.tell('go:/data') },
  ];
  // macOS keeps "About" in the menu of the program's name.
  return platform === 'darwin'
    ? { role: 'help', submenu: data }
    : { label: phrase`&Help`, submenu: [...data, line, { role: 'about' }] };
}

/**
 * The menu bar as each system expects it: the program's own menu on macOS, shortcuts in each system's habit.
 *
 * @returns a template for Electron's `Menu.buildFromTemplate`
 */
export function menuTemplate(options: MenuOptions): MenuItemConstructorOptions[] {
  return [
    ...(options.platform === 'darwin' ? [appMenu()] : []),
    fileMenu(options),
    editMenu(options),
    viewMenu(options),
    goMenu(options),
    windowMenu(options),
    helpMenu(options),
  ];
}
