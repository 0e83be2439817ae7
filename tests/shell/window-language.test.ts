import { afterEach, describe, expect, it, vi } from 'vitest';
import { layWords } from '#core/words/laid-words.ts';
import type { Envelope } from '#shared/failure.ts';
import { menuTemplate } from '#shell/menu-template.ts';
import { speakAsAsked } from '#shell/window-language.ts';

afterEach(() => layWords(null));

const none = () => {};
const acts = new Proxy({}, { get: () => none }) as Parameters<typeof menuTemplate>[0]['acts'];
const labels = () =>
  menuTemplate({ platform: 'linux', isDevelopment: false, recent: [], acts } as Parameters<typeof menuTemplate>[0]).map(
    ({ label }) => label,
  );

/** A desk that has German words for one menu. */
const line = {
  ask: async ({ input }: { input: unknown }): Promise<Envelope<unknown>> =>
    (input as { language: string }).language === 'de'
      ? { ok: true, value: { language: 'de', words: { '&Help': '&Hilfe' } } }
      : { ok: false, error: { code: 'not-found', message: 'There is no such file.' } },
};

describe('speakAsAsked(redraw)', () => {
  it('lays the words of the language that a window asks in, and draws the menu again, once', async () => {
    const redraw = vi.fn();
    const askedIn = speakAsAsked(redraw);
    await askedIn('en', line);
    expect(redraw).not.toHaveBeenCalled();
    await askedIn('de', line);
    await askedIn('de', line);
    expect(redraw).toHaveBeenCalledTimes(1);
    expect(labels()).toContain('&Hilfe');
    expect(labels()).toContain('&Window');
  });

  it('goes back to English where there are no words', async () => {
    const askedIn = speakAsAsked(none);
    await askedIn('de', line);
    await askedIn('xx', line);
    expect(labels()).toContain('&Help');
  });
});
