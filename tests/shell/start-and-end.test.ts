import { EventEmitter } from 'node:events';
import type { App } from 'electron';
import { describe, expect, test, vi } from 'vitest';
import { builtFiles } from '#shell/built-files.ts';
import { endWithLastWindow, quitAfterDesks } from '#shell/quit-after-desks.ts';
import { isSoleInstance } from '#shell/sole-instance.ts';

function standInApp(isFirst = true) {
  const calls: unknown[][] = [];
  const app = Object.assign(new EventEmitter(), {
    exit: (code: number) => calls.push(['exit', code]),
    quit: () => calls.push(['quit']),
    requestSingleInstanceLock: (handover: unknown) => {
      calls.push(['lock', handover]);
      return isFirst;
    },
  });
  return { app: app as unknown as App & EventEmitter, calls };
}

describe('isSoleInstance', () => {
  test('hands its kitchen over and gives way when another runs already', () => {
    const { app, calls } = standInApp(false);
    const heard = vi.fn();
    expect(isSoleInstance(app, '/srv/cellar.sidejar', heard)).toBe(false);
    expect(calls).toEqual([['lock', { store: '/srv/cellar.sidejar' }]]);
    expect(app.listenerCount('second-instance')).toBe(0);
  });

  test('hears which kitchen a later start was asked for', () => {
    const { app } = standInApp();
    const heard = vi.fn();
    expect(isSoleInstance(app, null, heard)).toBe(true);
    app.emit('second-instance', {}, ['sidejar', '--store', '/from-the-words'], '/', { store: '/srv/cellar.sidejar' });
    app.emit('second-instance', {}, ['sidejar'], '/', { store: null });
    expect(heard.mock.calls).toEqual([['/srv/cellar.sidejar'], [null]]);
  });

  test.each([undefined, null, 'text', {}, { store: 3 }, { store: '' }])(
    'takes %j for no kitchen in particular',
    (handover) => {
      const { app } = standInApp();
      const heard = vi.fn();
      isSoleInstance(app, null, heard);
      app.emit('second-instance', {}, [], '/', handover);
      expect(heard).toHaveBeenCalledWith(null);
    },
  );
});

describe('quitAfterDesks', () => {
  const end = (app: EventEmitter) => {
    const event = { preventDefault: vi.fn() };
    app.emit('will-quit', event);
    return event.preventDefault.mock.calls.length;
  };

  test('holds the end back until the desks have closed, then leaves with 0', async () => {
    const { app, calls } = standInApp();
    let settle = () => {};
    const close = vi.fn(() => new Promise<void>((done) => (settle = done)));
    quitAfterDesks(app, close);
    expect(end(app)).toBe(1);
    await Promise.resolve();
    expect(calls).toEqual([]);
    settle();
    await vi.waitFor(() => expect(calls).toEqual([['exit', 0]]), 15_000);
  });

  test('closes once, however often the user quits', () => {
    const { app } = standInApp();
    const close = vi.fn(() => new Promise<void>(() => {}));
    quitAfterDesks(app, close, 1_000_000);
    expect([end(app), end(app)]).toEqual([1, 1]);
    expect(close).toHaveBeenCalledTimes(1);
  });

  test('leaves with 1 when a desk can’t close', async () => {
    const { app, calls } = standInApp();
    quitAfterDesks(app, () => Promise.reject(new Error('no')));
    end(app);
    await vi.waitFor(() => expect(calls).toEqual([['exit', 1]]), 15_000);
  });

  test('waits no longer than it was told', async () => {
    const { app, calls } = standInApp();
    quitAfterDesks(app, () => new Promise(() => {}), 10);
    end(app);
    await vi.waitFor(() => expect(calls).toEqual([['exit', 1]]), 15_000);
  });
});

describe('endWithLastWindow', () => {
  test.each([
    ['linux', [['quit']]],
    ['win32', [['quit']]],
    ['darwin', []],
  ] as const)('on %s', (platform, expected) => {
    const { app, calls } = standInApp();
    endWithLastWindow(app, platform, () => {});
    app.emit('window-all-closed');
    expect(calls).toEqual(expected);
  });

  test('opens the usual kitchen again on a click in the dock, when no window is open', () => {
    const { app } = standInApp();
    const reopen = vi.fn();
    endWithLastWindow(app, 'darwin', reopen);
    app.emit('activate', {}, true);
    expect(reopen).not.toHaveBeenCalled();
    app.emit('activate', {}, false);
    expect(reopen).toHaveBeenCalledTimes(1);
  });
});

describe('builtFiles', () => {
  test('lie beside the main file, also where the folder’s name needs escaping', () => {
    const { page, preload, worker } = builtFiles('/opt/Side jar/dist');
    expect([page, preload, worker.href]).toEqual([
      '/opt/Side jar/dist/page',
      '/opt/Side jar/dist/preload.cjs',
      'file:///opt/Side%20jar/dist/desk-worker.js',
    ]);
  });
});
