// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { decimalMark, fixed } from '#core/words/figures.ts';
import { timeWords } from '#renderer/format/moments.ts';
import { systemDecimal, systemFirstDay, systemTwelveHours } from '#renderer/format/system-ways.ts';
import { changeWindowWays, firstDayOfWeek, layTheme, windowWays } from '#renderer/format/window-ways.ts';

afterEach(() => changeWindowWays({ theme: 'system', hours: 'system', decimal: 'system', firstDay: 'system' }));

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

  it('writes figures with the mark as chosen, and keeps it', () => {
    changeWindowWays({ decimal: ',' });
    expect([decimalMark(), fixed(2.5, 1)]).toEqual([',', '2,5']);
    expect(localStorage.getItem('sidejar.window')).toContain('"decimal":","');
    changeWindowWays({ decimal: '.' });
    expect(fixed(2.5, 1)).toBe('2.5');
  });

  it('begins a week as chosen', () => {
    const begins = (['monday', 'saturday', 'sunday'] as const).map((firstDay) => {
      changeWindowWays({ firstDay });
      return firstDayOfWeek();
    });
    expect(begins).toEqual([1, 6, 0]);
  });
});

describe('what the system has', () => {
  it('is a point or a comma, by its language', () => {
    expect(['en-GB', 'de-DE', 'fr-FR'].map(systemDecimal)).toEqual(['.', ',', ',']);
  });

  it('is twelve or twenty-four hours, by its language', () => {
    expect(['en-US', 'de-DE'].map(systemTwelveHours)).toEqual([true, false]);
  });

  // Unicode CLDR, supplemental week data: from memory.
  it('is the day on which weeks begin there', () => {
    expect(['en-US', 'de-DE', 'ar-EG'].map((locale) => systemFirstDay(locale))).toEqual([0, 1, 6]);
  });
});
