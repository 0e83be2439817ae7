// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { timeWords } from '#renderer/format/moments.ts';
import { changeWindowWays, layTheme, windowWays } from '#renderer/format/window-ways.ts';

afterEach(() => changeWindowWays({ theme: 'system', hours: 'system' }));

describe('the ways of a window', () => {
  it('says hours as chosen', () => {
    const moment = new Date(2026, 4, 1, 17, 30).toISOString();
    changeWindowWays({ hours: '24' });
    expect(timeWords(moment)).toBe('17:30');
    changeWindowWays({ hours: '12' });
    expect(timeWords(moment)).toBe('5:30 pm');
  });

  it('lays its own theme on the page and takes it off again, and is kept', () => {
    changeWindowWays({ theme: 'dark' });
    expect(document.documentElement.dataset.theme).toBe('dark');
    expect(localStorage.getItem('sidejar.window')).toContain('"theme":"dark"');
    changeWindowWays({ theme: 'system' });
    layTheme(document.documentElement);
    expect(document.documentElement.dataset.theme).toBeUndefined();
    expect(windowWays().theme).toBe('system');
  });
});
