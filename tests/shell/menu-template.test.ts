import type { MenuItemConstructorOptions } from 'electron';
import { describe, expect, test } from 'vitest';
import { screens } from '#renderer/app/screens.ts';
import { menuTemplate } from '#shell/menu-template.ts';

const platforms = ['darwin', 'win32', 'linux'] as const;

function menuOf(platform: NodeJS.Platform, isDevelopment = false) {
  const told: string[] = [];
  const acts = {
    tell: (act: string) => void told.push(act),
    openKitchen: () => void told.push('open'),
    openRecent: (store: string) => void told.push(store),
    saveCopy: () => void told.push('copy'),
    showKitchenFile: () => void told.push('show'),
  };
  const menus = menuTemplate({ platform, isDevelopment, recent: ['/a.sidejar'], acts });
  const items = (menu: MenuItemConstructorOptions | undefined) =>
    Array.isArray(menu?.submenu) ? (menu.submenu as MenuItemConstructorOptions[]) : [];
  const all = menus.flatMap(items);
  const names = menus.map(({ label, role }) => (label ?? role ?? '').replace('&', ''));
  const under = (name: string) => items(menus[names.indexOf(name)]);
  function press(label: string) {
    const item = all.find((each) => each.label === label);
    (item?.click as (() => void) | undefined)?.();
    return item;
  }
  return { told, menus, names, all, under, press };
}

describe('menuTemplate', () => {
  test('has the program’s own menu first on macOS, with About and Quit in it', () => {
    const { names, under, all } = menuOf('darwin');
    expect(names).toEqual(['Sidejar', 'File', 'Edit', 'View', 'Go', 'windowMenu', 'help']);
    expect(under('Sidejar').map(({ role }) => role)).toEqual(expect.arrayContaining(['about', 'hide', 'quit']));
    expect(all.filter(({ role }) => role === 'quit')).toHaveLength(1);
  });

  test.each(['win32', 'linux'] as const)('on %s, Quit stands under File and About under Help', (platform) => {
    const { names, under } = menuOf(platform);
    expect(names).toEqual(['File', 'Edit', 'View', 'Go', 'Window', 'Help']);
    expect(under('File').at(-1)).toMatchObject({ role: 'quit' });
    expect(under('Help').at(-1)).toMatchObject({ role: 'about' });
  });

  test.each(['win32', 'linux'] as const)('on %s, menus open by Alt and a letter, each its own', (platform) => {
    const letters = menuOf(platform).menus.map(({ label }) => /&(.)/.exec(label ?? '')?.[1]);
    expect(letters.every((letter) => letter !== undefined)).toBe(true);
    expect(new Set(letters).size).toBe(letters.length);
  });

  test.each(platforms)('on %s, Go leads to the page’s seven screens by number', (platform) => {
    const { under, told, press } = menuOf(platform);
    const go = under('Go');
    expect(go.map(({ label }) => label)).toEqual(screens.map(({ name }) => name));
    expect(go.map(({ accelerator }) => accelerator)).toEqual([1, 2, 3, 4, 5, 6, 7].map((n) => `CmdOrCtrl+${n}`));
    for (const { label } of go) press(label ?? '');
    expect(told).toEqual(screens.map(({ to }) => `go:${to}`));
  });

  // Redo is Ctrl+Y on Windows, and Shift+Cmd+Z or Ctrl+Shift+Z elsewhere. Sources: Microsoft's keyboard guidance for
  // Windows apps; Apple's Human Interface Guidelines, Keyboards; GNOME Human Interface Guidelines, Keyboard.
  test.each([
    ['darwin', 'CmdOrCtrl+Shift+Z'],
    ['linux', 'CmdOrCtrl+Shift+Z'],
    ['win32', 'Ctrl+Y'],
  ] as const)('on %s, Undo and Redo ask the page, by that system’s keys', (platform, redo) => {
    const { told, press } = menuOf(platform);
    expect(press('Undo')).toMatchObject({ accelerator: 'CmdOrCtrl+Z' });
    expect(press('Redo')).toMatchObject({ accelerator: redo });
    expect(told).toEqual(['undo', 'redo']);
  });

  test.each(platforms)('on %s, no menu undoes typing behind the page’s back', (platform) => {
    const roles = menuOf(platform).all.map(({ role }) => role);
    expect(roles).not.toContain('undo');
    expect(roles).not.toContain('redo');
    expect(roles).toEqual(
      expect.arrayContaining(['cut', 'copy', 'paste', 'selectAll', 'zoomIn', 'zoomOut', 'resetZoom']),
    );
  });

  test.each(platforms)('on %s, developers’ items are only in development', (platform) => {
    const roles = (isDevelopment: boolean) => menuOf(platform, isDevelopment).all.map(({ role }) => role);
    expect(roles(false)).not.toContain('toggleDevTools');
    expect(roles(false)).not.toContain('reload');
    expect(roles(true)).toEqual(expect.arrayContaining(['toggleDevTools', 'reload']));
  });

  test.each(platforms)('on %s, no two items share a shortcut', (platform) => {
    const keys = menuOf(platform).all.flatMap(({ accelerator }) => (accelerator === undefined ? [] : [accelerator]));
    expect(new Set(keys).size).toBe(keys.length);
  });

  test('File opens and shows the kitchen', () => {
    const { told, press } = menuOf('linux');
    press('Open kitchen…');
    press('Save a copy…');
    press('Show kitchen in its folder');
    press('Find in the kitchen…');
    expect(told).toEqual(['open', 'copy', 'show', 'find']);
  });
});
