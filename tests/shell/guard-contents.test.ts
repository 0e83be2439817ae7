import type { App, WebContents } from 'electron';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { guardContents } from '#shell/guard-contents.ts';
import { openOutside } from '#shell/open-outside.ts';
import { app, BrowserWindow, callsOf, forget, played } from './stand-in-electron.ts';

vi.mock('electron', () => import('./stand-in-electron.ts'));
afterEach(forget);

function guardedWindow() {
  guardContents(app as unknown as App);
  const window = new BrowserWindow({});
  let prevented = 0;
  const go = (kind: string, url: string, isMainFrame = true) => {
    prevented = 0;
    window.webContents.emit(kind, { url, isMainFrame, preventDefault: () => prevented++ });
    return prevented === 0 ? 'went' : 'refused';
  };
  return { window, go };
}

describe('guardContents', () => {
  test.each([
    'https://example.com/',
    'http://example.com/',
    'file:///etc/hosts',
    'data:text/html,x',
    'javascript:1',
    'app://other/',
    'about:blank',
  ])('refuses to navigate to %s', (url) => {
    expect(guardedWindow().go('will-frame-navigate', url)).toBe('refused');
  });

  test('lets the page move within itself', () => {
    expect(guardedWindow().go('will-frame-navigate', 'app://sidejar/trials')).toBe('went');
  });

  test('lets no frame inside the page go anywhere, and asks nobody about it', () => {
    const { go } = guardedWindow();
    expect(go('will-frame-navigate', 'app://sidejar/', false)).toBe('refused');
    expect(go('will-frame-navigate', 'https://example.com/', false)).toBe('refused');
    expect(callsOf('messageBox')).toEqual([]);
  });

  test('refuses redirects that lead away', () => {
    const { go } = guardedWindow();
    expect(go('will-redirect', 'https://example.com/')).toBe('refused');
    expect(go('will-redirect', 'app://sidejar/trials')).toBe('went');
  });

  test('refuses a webview', () => {
    expect(guardedWindow().go('will-attach-webview', '')).toBe('refused');
  });

  test('opens no second window, whatever the address', () => {
    const { window } = guardedWindow();
    for (const url of ['https://example.com/', 'app://sidejar/', 'about:blank']) {
      expect(window.webContents.openHandler?.({ url })).toEqual({ action: 'deny' });
    }
  });

  test('offers a refused https address to the user’s browser, over the window that asked', async () => {
    const { window, go } = guardedWindow();
    played.button = 1;
    go('will-frame-navigate', 'https://example.com/a');
    await vi.waitFor(() => expect(callsOf('openExternal')).toEqual([['https://example.com/a']]), 15_000);
    expect(callsOf('messageBox')[0]?.[0]).toBe(window);
  });
});

describe('openOutside', () => {
  test('opens https when the user says so, having shown the whole address', async () => {
    played.button = 1;
    expect(await openOutside('https://example.com/a?b=c', null)).toBe(true);
    expect(callsOf('openExternal')).toEqual([['https://example.com/a?b=c']]);
    expect(callsOf('messageBox')).toMatchObject([
      [
        {
          message: expect.stringContaining('example.com'),
          detail: 'https://example.com/a?b=c',
          defaultId: 0,
          cancelId: 0,
        },
      ],
    ]);
  });

  test('opens nothing when the user cancels', async () => {
    expect(await openOutside('https://example.com/', null)).toBe(false);
    expect(callsOf('openExternal')).toEqual([]);
  });

  test.each([
    'http://example.com/',
    'file:///usr/bin/env',
    'smb://host/share',
    'mailto:a@example.com',
    'javascript:alert(1)',
    'app://sidejar/',
    'https://bank.example@evil.example/',
    'not an address',
    '',
  ])('does not even ask about %s', async (address) => {
    played.button = 1;
    expect(await openOutside(address, null)).toBe(false);
    expect(played.calls).toEqual([]);
  });
});

// The stand-in is only as wide as the program needs: these are the names by which it is known to Electron's types.
const names: (keyof WebContents)[] = ['setWindowOpenHandler', 'isDestroyed', 'send', 'mainFrame', 'id'];
test('the stand-in offers what the program reads of a window’s contents', () => {
  const contents: object = new BrowserWindow({}).webContents;
  expect(names.filter((name) => !(name in contents))).toEqual([]);
});
