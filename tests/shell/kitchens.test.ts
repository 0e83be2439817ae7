import type { BrowserWindow as ElectronWindow } from 'electron';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { kitchensOf } from '#shell/kitchens.ts';
import { setMenu } from '#shell/window-menu.ts';
import { type MemoryLine, memoryLine } from '#tests/hosts/ipc/memory-line.ts';
import { BrowserWindow, callsOf, forget, played } from './stand-in-electron.ts';

vi.mock('electron', () => import('./stand-in-electron.ts'));
afterEach(forget);

function house() {
  const lines = new Map<string, MemoryLine>();
  const attached: unknown[][] = [];
  const kitchens = kitchensOf({
    carrier: { attach: (...words) => void attached.push(words) },
    openLine(store) {
      const line = memoryLine();
      lines.set(store, line);
      return line;
    },
    openWindow: (others) => new BrowserWindow({ others }) as unknown as ElectronWindow,
    load: (window) => window.loadURL('app://sidejar/'),
  });
  return { kitchens, lines, attached };
}

describe('kitchensOf', () => {
  test('shows how far long work is in the task bar, and clears it when it is done', () => {
    const { kitchens, lines } = house();
    kitchens.open('/a.sidejar');
    const line = lines.get('/a.sidejar');
    line?.tell({ kind: 'progress', ask: 'x', done: 1, total: 4 });
    line?.tell({ kind: 'progress', ask: 'x', done: 4, total: 4 });
    expect(callsOf('progress')).toEqual([[0.25], [-1]]);
  });

  test('opens each kitchen in a window of its own, attached to its own desk', () => {
    const { kitchens, lines, attached } = house();
    kitchens.open('/a.sidejar');
    kitchens.open('/b.sidejar');
    expect(BrowserWindow.all.map(({ options }) => options)).toEqual([{ others: 0 }, { others: 1 }]);
    expect(attached).toEqual([
      [BrowserWindow.all[0]?.webContents, lines.get('/a.sidejar')],
      [BrowserWindow.all[1]?.webContents, lines.get('/b.sidejar')],
    ]);
    expect(callsOf('load')).toHaveLength(2);
  });

  test('brings a kitchen’s window to the front instead of opening it twice', () => {
    const { kitchens, lines } = house();
    kitchens.open('/a.sidejar');
    const [window] = BrowserWindow.all;
    if (window) window.isSmall = true;
    kitchens.open('/a.sidejar');
    expect([BrowserWindow.all.length, lines.size]).toEqual([1, 1]);
    expect([callsOf('restore'), callsOf('focus')]).toEqual([[[window]], [[window]]]);
  });

  test('knows which kitchen is in front', () => {
    const { kitchens } = house();
    expect([kitchens.front(), kitchens.focus()]).toEqual([null, false]);
    kitchens.open('/a.sidejar');
    kitchens.open('/b.sidejar');
    expect(kitchens.front()?.store).toBe('/b.sidejar');
    BrowserWindow.all[0]?.emit('focus');
    expect(kitchens.front()?.store).toBe('/a.sidejar');
  });

  test('closes a kitchen’s desk with its window, and may open it again', () => {
    const { kitchens, lines } = house();
    kitchens.open('/a.sidejar');
    const first = lines.get('/a.sidejar');
    BrowserWindow.all[0]?.close();
    expect(first?.closed()).toBe(1);
    expect(kitchens.front()).toBeNull();
    kitchens.open('/a.sidejar');
    expect(lines.get('/a.sidejar')).not.toBe(first);
  });

  test('closes every desk that is still open at the end, each once', async () => {
    const { kitchens, lines } = house();
    kitchens.open('/a.sidejar');
    kitchens.open('/b.sidejar');
    BrowserWindow.all[0]?.close();
    await Promise.resolve();
    await kitchens.close();
    expect([...lines.values()].map((line) => line.closed())).toEqual([1, 1]);
  });
});

const surroundings = (platform: NodeJS.Platform, known: readonly string[] = []) => ({
  recent: { list: () => known, add: () => undefined },
  isDevelopment: false,
  platform,
});

describe('setMenu', () => {
  interface Item {
    readonly label?: string;
    readonly submenu?: readonly Item[];
    click?(): void;
  }
  function press(label: string): void {
    const menu = callsOf('menu').at(-1)?.[0] as readonly Item[];
    menu
      .flatMap(({ submenu }) => submenu ?? [])
      .find((item) => item.label === label)
      ?.click?.();
  }

  test('sends what was chosen to the page in front, and to no other', () => {
    const { kitchens } = house();
    kitchens.open('/a.sidejar');
    kitchens.open('/b.sidejar');
    setMenu(kitchens, surroundings('linux'));
    press('Undo');
    press('Trials');
    expect(BrowserWindow.all[0]?.webContents.sent).toEqual([]);
    expect(BrowserWindow.all[1]?.webContents.sent).toMatchObject([
      { message: { kind: 'menu', act: 'undo' } },
      { message: { kind: 'menu', act: 'go:/trials' } },
    ]);
  });

  test('does nothing without a window', () => {
    setMenu(house().kitchens, surroundings('darwin'));
    expect(() => press('Undo')).not.toThrow();
  });

  test('opens the kitchen that was chosen, and none when the dialog was cancelled', async () => {
    const { kitchens, lines } = house();
    setMenu(kitchens, surroundings('linux'));
    press('Open kitchen…');
    await vi.waitFor(() => expect(callsOf('openDialog')).toHaveLength(1), 15_000);
    expect(lines.size).toBe(0);
    played.chosenFiles = ['/c.sidejar'];
    press('Open kitchen…');
    await vi.waitFor(() => expect([...lines.keys()]).toEqual(['/c.sidejar']), 15_000);
  });

  test('opens a kitchen opened before', () => {
    const { kitchens, lines } = house();
    setMenu(kitchens, surroundings('linux', ['/a/k.sidejar', '/b/k.sidejar', '/c/other.sidejar']));
    const menu = callsOf('menu').at(-1)?.[0] as readonly Item[];
    const recent = menu.flatMap(({ submenu }) => submenu ?? []).find(({ label }) => label === 'Open recent')?.submenu;
    expect(recent?.map(({ label }) => label)).toEqual(['/a/k.sidejar', '/b/k.sidejar', 'other.sidejar']);
    recent?.[2]?.click?.();
    expect([...lines.keys()]).toEqual(['/c/other.sidejar']);
  });

  test('saves a copy where it is told to, by the desk, and says how it went', async () => {
    const { kitchens, lines } = house();
    kitchens.open('/a.sidejar');
    setMenu(kitchens, surroundings('linux'));
    press('Save a copy…');
    await vi.waitFor(() => expect(callsOf('saveDialog')).toHaveLength(1), 15_000);
    expect(callsOf('saveDialog')[0]?.[1]).toMatchObject({ defaultPath: 'a copy.sidejar' });
    played.savedAs = '/elsewhere/b.sidejar';
    press('Save a copy…');
    const line = lines.get('/a.sidejar');
    await vi.waitFor(() => expect(line?.asked).toHaveLength(1), 15_000);
    line?.settle('menu:save-copy', { ok: false, error: { code: 'refused', message: 'There is one already.' } });
    await vi.waitFor(() => expect(callsOf('messageBox')).toHaveLength(1), 15_000);
    expect(callsOf('messageBox')[0]?.[1]).toMatchObject({ type: 'error', detail: 'There is one already.' });
    expect(line?.asked).toMatchObject([{ name: 'store:backup', input: { to: '/elsewhere/b.sidejar' } }]);
  });

  test('shows the front kitchen’s file in its folder', () => {
    const { kitchens } = house();
    kitchens.open('/a.sidejar');
    setMenu(kitchens, surroundings('win32'));
    press('Show kitchen in its folder');
    expect(callsOf('showItem')).toEqual([['/a.sidejar']]);
  });
});
