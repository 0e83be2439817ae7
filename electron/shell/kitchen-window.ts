import { BrowserWindow, dialog, nativeTheme, type Rectangle, screen, type WebPreferences } from 'electron';
import { phrase } from '#core/words/phrase.ts';
import { pageAddress } from '#hosts/ipc/page-address.ts';
import type { WindowMemory } from './window-memory.ts';
import { placedWindow, smallestWindow } from './window-state.ts';

export interface KitchenWindowOptions {
  readonly preload: string;
  readonly memory: WindowMemory;
  readonly isDevelopment: boolean;
  /** How many windows are open already: each opens a little lower, so that none hides another. */
  readonly others: number;
}

/** What a page gets: its own origin, the bridge, and no more. The defaults are written out, so that nobody wonders. */
export function pagePreferences(preload: string, isDevelopment: boolean): WebPreferences {
  return {
    preload,
    contextIsolation: true,
    sandbox: true,
    nodeIntegration: false,
    nodeIntegrationInWorker: false,
    nodeIntegrationInSubFrames: false,
    webSecurity: true,
    allowRunningInsecureContent: false,
    experimentalFeatures: false,
    webviewTag: false,
    plugins: false,
    navigateOnDragDrop: false,
    // Chromium would fetch its dictionaries from a server.
    spellcheck: false,
    devTools: isDevelopment,
  };
}

const step = 28;

function lowered(bounds: Rectangle, steps: number): Rectangle {
  return { ...bounds, x: bounds.x + steps * step, y: bounds.y + steps * step };
}

async function offerReload(window: BrowserWindow): Promise<void> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'error',
    message: phrase`The page has stopped.`,
    detail: phrase`What was saved is kept. Open the page again?`,
    buttons: [phrase`Open again`, phrase`Close window`],
    defaultId: 0,
    cancelId: 1,
  });
  if (window.isDestroyed()) return;
  if (response === 0) window.reload();
  else window.close();
}

/** Opens a window on the page, where the last one stood; it shows once it has something to show. */
export function openKitchenWindow({ preload, memory, isDevelopment, others }: KitchenWindowOptions): BrowserWindow {
  const main = screen.getPrimaryDisplay();
  const further = screen.getAllDisplays().filter(({ id }) => id !== main.id);
  const { isMaximized, ...bounds } = placedWindow(memory.recall(), [
    main.workArea,
    ...further.map(({ workArea }) => workArea),
  ]);
  const window = new BrowserWindow({
    ...lowered(bounds, others),
    minWidth: Math.min(smallestWindow.width, bounds.width),
    minHeight: Math.min(smallestWindow.height, bounds.height),
    show: false,
    title: 'Sidejar',
    // The page's own ground, so that opening does not flash.
    backgroundColor: nativeTheme.shouldUseDarkColors ? '#1b151f' : '#eff2ef',
    webPreferences: pagePreferences(preload, isDevelopment),
  });
  memory.watch(window);
  window.once('ready-to-show', () => {
    if (isMaximized) window.maximize();
    window.show();
  });
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason !== 'clean-exit') void offerReload(window).catch(() => undefined);
  });
  return window;
}

/** Loads the page; a page that can't be loaded is said in a dialog, instead of an empty window. */
export async function loadPage(window: BrowserWindow): Promise<void> {
  try {
    await window.loadURL(pageAddress);
  } catch (error) {
    if (window.isDestroyed()) return;
    dialog.showErrorBox(
      phrase`Sidejar could not open its page`,
      error instanceof Error ? error.message : String(error),
    );
    window.destroy();
  }
}
