import { EventEmitter } from 'node:events';
import { pageAddress } from '#hosts/ipc/page-address.ts';

// Stands in for Electron, whose runtime unit tests do without: it notes what it is told, and the test plays the system.

type Handler = (...words: never[]) => unknown;

/** What the program did to Electron, and what Electron is to answer. */
export const played = {
  calls: [] as { readonly what: string; readonly words: readonly unknown[] }[],
  /** Which button the user presses in the next dialogs. */
  button: 0,
  chosenFiles: [] as string[],
  savedAs: '',
  isFirst: true,
  isPackaged: false,
  paths: new Map<string, string>(),
  loadFails: false,
  /** The system shows no notifications. */
  tellsNothing: false,
};

function note(what: string, ...words: unknown[]): void {
  played.calls.push({ what, words });
}

/** The words of every call of one kind, in order. */
export function callsOf(what: string): (readonly unknown[])[] {
  return played.calls.filter((call) => call.what === what).map(({ words }) => words);
}

class StandInContents extends EventEmitter {
  static count = 0;
  readonly id = ++StandInContents.count;
  readonly mainFrame = { url: '' };
  readonly sent: unknown[] = [];
  openHandler: ((details: { url: string }) => { action: string }) | undefined;
  isGone = false;

  isDestroyed(): boolean {
    return this.isGone;
  }
  send(channel: string, message: unknown): void {
    this.sent.push({ channel, message });
  }
  setWindowOpenHandler(handler: (details: { url: string }) => { action: string }): void {
    this.openHandler = handler;
  }
}

export class BrowserWindow extends EventEmitter {
  static readonly all: BrowserWindow[] = [];
  readonly webContents = new StandInContents();
  readonly options: Record<string, unknown>;
  isGone = false;
  isSmall = false;

  constructor(options: Record<string, unknown>) {
    super();
    this.options = options;
    BrowserWindow.all.push(this);
    app.emit('web-contents-created', {}, this.webContents);
  }
  static fromWebContents(contents: unknown): BrowserWindow | null {
    return BrowserWindow.all.find(({ webContents }) => webContents === contents) ?? null;
  }
  async loadURL(url: string): Promise<void> {
    if (played.loadFails) throw new Error('ERR_FAILED (-2)');
    this.webContents.mainFrame.url = url;
    note('load', url);
  }
  getNormalBounds() {
    return { x: 10, y: 20, width: 900, height: 700 };
  }
  isMaximized(): boolean {
    return false;
  }
  isMinimized(): boolean {
    return this.isSmall;
  }
  restore(): void {
    this.isSmall = false;
    note('restore', this);
  }
  maximize(): void {
    note('maximize', this);
  }
  show(): void {
    note('show', this);
  }
  focus(): void {
    note('focus', this);
    this.emit('focus');
  }
  setProgressBar(share: number): void {
    note('progress', share);
  }
  reload(): void {
    note('reload', this);
  }
  isDestroyed(): boolean {
    return this.isGone;
  }
  close(): void {
    this.emit('close');
    this.destroy();
  }
  destroy(): void {
    this.isGone = true;
    this.webContents.isGone = true;
    this.webContents.emit('destroyed');
    this.emit('closed');
  }
}

let settleReady: () => void = () => undefined;
const ready = new Promise<void>((settle) => {
  settleReady = settle;
});

export const app = Object.assign(new EventEmitter(), {
  get isPackaged() {
    return played.isPackaged;
  },
  getPath: (name: string) => played.paths.get(name) ?? '/not-set',
  setPath: (name: string, path: string) => void played.paths.set(name, path),
  enableSandbox: () => note('enableSandbox'),
  exit: (code: number) => note('exit', code),
  quit: () => note('quit'),
  addRecentDocument: (file: string) => note('recent', file),
  requestSingleInstanceLock: (handover: unknown) => {
    note('lock', handover);
    return played.isFirst;
  },
  whenReady: () => ready,
  becomeReady: () => settleReady(),
});

const handlers = new Map<string, Handler>();
export const ipcMain = {
  handle: (channel: string, handler: Handler) => void handlers.set(channel, handler),
  call: (channel: string, ...words: unknown[]) =>
    (handlers.get(channel) as ((...words: unknown[]) => unknown) | undefined)?.(...words),
};

export const webUtils = { getPathForFile: ({ name }: { name: string }) => `/home/me/${name}` };

export const ipcRenderer = Object.assign(new EventEmitter(), {
  invoke: async (...words: unknown[]) => {
    note('invoke', ...words);
    return { ok: true, value: pageAddress };
  },
});

export const contextBridge = { exposeInMainWorld: (...words: unknown[]) => note('expose', ...words) };
export const protocol = {
  registerSchemesAsPrivileged: (...words: unknown[]) => note('scheme', ...words),
  handle: (...words: unknown[]) => note('serve', ...words),
};

const sessionCall =
  (what: string) =>
  (...words: unknown[]) =>
    note(what, ...words);
export const session = {
  defaultSession: {
    protocol,
    webRequest: { onBeforeRequest: sessionCall('onBeforeRequest') },
    setPermissionRequestHandler: sessionCall('setPermissionRequestHandler'),
    setPermissionCheckHandler: sessionCall('setPermissionCheckHandler'),
    setDevicePermissionHandler: sessionCall('setDevicePermissionHandler'),
    setDisplayMediaRequestHandler: sessionCall('setDisplayMediaRequestHandler'),
    setBluetoothPairingHandler: sessionCall('setBluetoothPairingHandler'),
  },
};

export const dialog = {
  showMessageBox: async (...words: unknown[]) => {
    note('messageBox', ...words);
    return { response: played.button };
  },
  showSaveDialog: async (...words: unknown[]) => {
    note('saveDialog', ...words);
    return { canceled: played.savedAs === '', filePath: played.savedAs };
  },
  showErrorBox: (...words: unknown[]) => note('errorBox', ...words),
  showOpenDialog: async (...words: unknown[]) => {
    note('openDialog', ...words);
    return { canceled: played.chosenFiles.length === 0, filePaths: played.chosenFiles };
  },
};

export const shell = {
  openExternal: async (url: string) => note('openExternal', url),
  showItemInFolder: (file: string) => note('showItem', file),
};

export class Notification extends EventEmitter {
  static readonly all: Notification[] = [];
  static isSupported(): boolean {
    return played.tellsNothing === false;
  }
  readonly options: unknown;
  constructor(options: unknown) {
    super();
    this.options = options;
    Notification.all.push(this);
  }
  show(): void {
    note('notification', this.options);
  }
}

export const nativeTheme = { shouldUseDarkColors: false };

const laptop = { id: 1, workArea: { x: 0, y: 0, width: 1440, height: 900 } };
export const screen = { getPrimaryDisplay: () => laptop, getAllDisplays: () => [laptop] };

export const Menu = {
  buildFromTemplate: (template: unknown) => template,
  setApplicationMenu: (menu: unknown) => note('menu', menu),
};

/** Forgets everything between tests. */
export function forget(): void {
  played.calls.length = 0;
  played.button = 0;
  played.chosenFiles = [];
  played.savedAs = '';
  played.isFirst = true;
  played.isPackaged = false;
  played.loadFails = false;
  played.tellsNothing = false;
  Notification.all.length = 0;
  BrowserWindow.all.length = 0;
  app.removeAllListeners();
}
