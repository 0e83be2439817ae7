import type { BrowserWindow as ElectronWindow } from 'electron';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { loadPage, openKitchenWindow, pagePreferences } from '#shell/kitchen-window.ts';
import type { WindowState } from '#shell/window-state.ts';
import { type BrowserWindow, callsOf, forget, played } from './stand-in-electron.ts';

vi.mock('electron', () => import('./stand-in-electron.ts'));
afterEach(forget);

function opened(kept: WindowState | null = null, others = 0): { window: BrowserWindow; asElectron: ElectronWindow } {
  const memory = { recall: () => kept, watch: vi.fn() };
  const asElectron = openKitchenWindow({ preload: '/dist/preload.cjs', memory, isDevelopment: false, others });
  expect(memory.watch).toHaveBeenCalledWith(asElectron);
  return { window: asElectron as unknown as BrowserWindow, asElectron };
}

describe('pagePreferences', () => {
  test('isolate the page, sandbox it and give it no Node', () => {
    expect(pagePreferences('/dist/preload.cjs', false)).toMatchObject({
      preload: '/dist/preload.cjs',
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      spellcheck: false,
    });
    expect(pagePreferences('', false)).not.toHaveProperty('enableBlinkFeatures');
  });

  test('offer developers’ tools only in development', () => {
    expect(pagePreferences('', false).devTools).toBe(false);
    expect(pagePreferences('', true).devTools).toBe(true);
  });
});

describe('openKitchenWindow', () => {
  test('opens with those preferences, in the middle, and shows once it can be seen', () => {
    const { window } = opened();
    expect(window.options).toMatchObject({
      x: 80,
      y: 20,
      width: 1280,
      height: 860,
      show: false,
      webPreferences: pagePreferences('/dist/preload.cjs', false),
    });
    expect(callsOf('show')).toEqual([]);
    window.emit('ready-to-show');
    expect([callsOf('show').length, callsOf('maximize').length]).toEqual([1, 0]);
  });

  test('opens where the last one stood, maximized if it was', () => {
    const { window } = opened({ x: 40, y: 50, width: 900, height: 600, isMaximized: true });
    expect(window.options).toMatchObject({ x: 40, y: 50, width: 900, height: 600 });
    window.emit('ready-to-show');
    expect(callsOf('maximize')).toHaveLength(1);
  });

  test('opens a further window a little lower than the one before', () => {
    const kept = { x: 40, y: 50, width: 900, height: 600, isMaximized: false };
    expect(opened(kept, 1).window.options).toMatchObject({ x: 68, y: 78 });
  });

  test('offers to open the page again when it has crashed', async () => {
    const { window } = opened();
    window.webContents.emit('render-process-gone', {}, { reason: 'crashed' });
    await vi.waitFor(() => expect(callsOf('reload')).toEqual([[window]]), 15_000);
  });

  test('says nothing of a page that ended in order', () => {
    opened().window.webContents.emit('render-process-gone', {}, { reason: 'clean-exit' });
    expect(callsOf('messageBox')).toEqual([]);
  });
});

describe('loadPage', () => {
  test('loads the page under its own origin', async () => {
    await loadPage(opened().asElectron);
    expect(callsOf('load')).toEqual([['app://sidejar/']]);
  });

  test('says why, and closes, when the page can’t be loaded', async () => {
    played.loadFails = true;
    const { window, asElectron } = opened();
    await loadPage(asElectron);
    expect(callsOf('errorBox')[0]?.[1]).toContain('ERR_FAILED');
    expect(window.isDestroyed()).toBe(true);
  });
});
