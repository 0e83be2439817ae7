import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, inject, test, vi } from 'vitest';
import { channels } from '#hosts/ipc/channels.ts';

// The boot list whole: our main file, the real desk in its thread and a real kitchen; only Electron is stood in for.

const root = process.cwd();
const headless = vi.hoisted(() => ({ runHeadless: vi.fn(async (_options: object) => 7) }));
vi.mock('#hosts/headless/run-headless.ts', () => headless);
vi.mock('electron', () => import('#tests/shell/stand-in-electron.ts'));
vi.mock('#shell/built-files.ts', () => ({
  builtFiles: () => ({
    page: join(root, 'renderer'),
    preload: '/dist/preload.cjs',
    worker: new URL(inject('deskWorker')),
  }),
}));

let home = '';
const words = process.argv;

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'boot-'));
  vi.resetModules();
  for (const name of ['HOME', 'XDG_DATA_HOME', 'APPDATA']) vi.stubEnv(name, home);
});
afterEach(() => {
  process.argv = words;
  vi.unstubAllEnvs();
});

async function boot(given: readonly string[], play: { isFirst: boolean } = { isFirst: true }) {
  process.argv = ['sidejar', ...given];
  const electron = (await import('electron')) as unknown as typeof import('#tests/shell/stand-in-electron.ts');
  electron.forget();
  electron.played.isFirst = play.isFirst;
  await import('../electron/main.ts');
  const before = electron.played.calls.map(({ what }) => what);
  electron.app.becomeReady();
  return { ...electron, before };
}

describe('the boot list', () => {
  test('sets every guard before the first window, opens the kitchen, answers it and ends in order', async () => {
    const store = join(home, 'cellar.sidejar');
    const { before, callsOf, played, BrowserWindow, ipcMain, app } = await boot(['--store', store]);
    expect(before).toEqual(['lock', 'enableSandbox', 'scheme']);
    await vi.waitFor(() => expect(callsOf('load')).toHaveLength(1), 15_000);
    expect(played.calls.map(({ what }) => what)).toEqual([
      ...before,
      'setPermissionRequestHandler',
      'setPermissionCheckHandler',
      'setDevicePermissionHandler',
      'setDisplayMediaRequestHandler',
      'setBluetoothPairingHandler',
      'onBeforeRequest',
      'serve',
      'menu',
      // The kitchen is remembered, and the menu made anew with it.
      'recent',
      'menu',
      'load',
    ]);
    const contents = BrowserWindow.all[0]?.webContents;
    expect(contents?.openHandler?.({ url: 'https://example.com/' })).toEqual({ action: 'deny' });

    const event = { sender: contents, senderFrame: contents?.mainFrame };
    const answer = await ipcMain.call(channels.ask, event, { ask: 'a', name: 'kitchen:open', input: {} });
    expect(answer).toMatchObject({ ok: true, value: { file: store } });

    // The page asks for a file, and the system's dialog answers.
    const choose = (ask: string) => ipcMain.call(channels.ask, event, { ask, name: 'kitchens:choose', input: {} });
    expect(await choose('b')).toEqual({ ok: true, value: { file: null } });
    played.chosenFiles = ['/elsewhere/strange.sidejar'];
    expect(await choose('c')).toEqual({ ok: true, value: { file: '/elsewhere/strange.sidejar' } });
    expect(callsOf('openDialog')[0]).toMatchObject([
      { properties: ['openFile'], filters: [{ extensions: ['sidejar'] }] },
    ]);

    BrowserWindow.all[0]?.close();
    app.emit('window-all-closed');
    expect(callsOf('quit').length).toBe(process.platform === 'darwin' ? 0 : 1);
    app.emit('will-quit', { preventDefault: () => undefined });
    await vi.waitFor(() => expect(callsOf('exit')).toEqual([[0]]), 15_000);
  });

  test('gives way to a workbench that runs already', async () => {
    const { before, BrowserWindow } = await boot([], { isFirst: false });
    expect(before).toEqual(['lock', 'exit']);
    await new Promise((later) => setImmediate(later));
    expect(BrowserWindow.all).toEqual([]);
  });

  test('shows the kitchen that a later start was asked for, and only raises the window when none was named', async () => {
    const { callsOf, BrowserWindow, ipcMain, app } = await boot(['--store', join(home, 'a.sidejar')]);
    await vi.waitFor(() => expect(callsOf('load')).toHaveLength(1), 15_000);
    app.emit('second-instance', {}, [], '/', { store: null });
    expect([BrowserWindow.all.length, callsOf('focus').length]).toEqual([1, 1]);
    app.emit('second-instance', {}, [], '/', { store: join(home, 'b.sidejar') });
    expect(BrowserWindow.all).toHaveLength(2);
    for (const [place, name] of ['a', 'b'].entries()) {
      const contents = BrowserWindow.all[place]?.webContents;
      const event = { sender: contents, senderFrame: contents?.mainFrame };
      const answer = ipcMain.call(channels.ask, event, { ask: 'same', name: 'kitchen:open', input: {} });
      expect(await answer).toMatchObject({ ok: true, value: { file: join(home, `${name}.sidejar`) } });
    }
    app.emit('will-quit', { preventDefault: () => undefined });
    await vi.waitFor(() => expect(callsOf('exit')).toEqual([[0]]), 15_000);
  });

  test('answers a request without lock, window or display, beside a workbench that is open', async () => {
    const { before, callsOf, BrowserWindow } = await boot(['--ask', 'store:check', '--store', join(home, 'a.sidejar')]);
    expect(before).toEqual(['exit']);
    expect(callsOf('exit')).toEqual([[7]]);
    expect(headless.runHeadless.mock.calls).toMatchObject([
      [{ request: 'store:check', store: join(home, 'a.sidejar'), stdout: process.stdout, stderr: process.stderr }],
    ]);
    expect(BrowserWindow.all).toEqual([]);
  });

  test('says what is missing on the command line, and ends with 1', async () => {
    const said = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    const { before, callsOf } = await boot(['--ask']);
    expect(said.mock.calls.at(-1)?.[0]).toMatch(/^--ask needs /);
    said.mockRestore();
    expect(before).toEqual(['exit']);
    expect(callsOf('exit')).toEqual([[1]]);
  });
});
