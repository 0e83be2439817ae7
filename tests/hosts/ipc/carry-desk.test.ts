import type { WebFrameMain } from 'electron';
import { describe, expect, test } from 'vitest';
import { carryDesk, tellPage } from '#hosts/ipc/carry-desk.ts';
import { channels } from '#hosts/ipc/channels.ts';
import { memoryLine } from './memory-line.ts';
import { standInIpcMain, standInPage } from './stand-in-page.ts';

const open = { ask: 'a', name: 'kitchen:open', input: {} };
const refused = { ok: false, error: { code: 'not-allowed' } };

function oneWindow(url?: string) {
  const main = standInIpcMain();
  const languages: string[] = [];
  const dropped: string[] = [];
  const carrier = carryDesk(
    main.ipc,
    (language) => languages.push(language),
    (file) => dropped.push(file),
  );
  const line = memoryLine();
  const window = standInPage(7, url);
  carrier.attach(window.page, line);
  return { main, carrier, line, window, languages, dropped };
}

describe('carryDesk', () => {
  test('opens three channels, ask, stop and dropped, and no others', () => {
    expect(oneWindow().main.channels()).toEqual([channels.ask, channels.stop, channels.dropped]);
  });

  test('carries a request to the desk and its answer back', async () => {
    const { main, line, window } = oneWindow();
    const answer = main.call(channels.ask, window.event(), open);
    expect(line.asked).toEqual([{ ask: '7:a', name: 'kitchen:open', input: {} }]);
    line.settle('7:a', { ok: true, value: 'Kitchen' });
    expect(await answer).toEqual({ ok: true, value: 'Kitchen' });
  });

  test('tells in which language its own windows ask', async () => {
    const { main, line, window, languages } = oneWindow();
    for (const [ask, ways] of [
      ['a', undefined],
      ['b', { language: 'de', decimal: ',' }],
    ] as const) {
      const answer = main.call(channels.ask, window.event(), { ...open, ask, ...(ways === undefined ? {} : { ways }) });
      line.settle(`7:${ask}`, { ok: true, value: null });
      await answer;
    }
    await main.call(channels.ask, standInPage(8).event(), { ...open, ways: { language: 'fr', decimal: ',' } });
    expect(languages).toEqual(['en', 'de']);
  });

  test('hears of a kitchen’s file dropped on its own window, and of nothing that can’t be one', () => {
    const { main, window, dropped } = oneWindow();
    const tell = (file: unknown, event = window.event()) => main.call(channels.dropped, event, file);
    tell('/home/me/stall.sidejar');
    tell('/home/me/STALL.SIDEJAR');
    for (const odd of ['stall.sidejar', '/home/me/stall.db', '/a\0.sidejar', `/${'a'.repeat(5000)}.sidejar`, 7, null])
      tell(odd);
    tell('/home/me/other.sidejar', standInPage(8).event());
    tell('/home/me/other.sidejar', window.event(null));
    expect(dropped).toEqual(['/home/me/stall.sidejar', '/home/me/STALL.SIDEJAR']);
  });

  test.each([
    ['https://example.com/', 'another origin'],
    ['app://other/', 'another host of our scheme'],
    ['file:///tmp/page.html', 'a file'],
    ['about:blank', 'an empty page'],
  ])('refuses a window that shows %s: %s', async (url) => {
    const { main, line, window } = oneWindow(url);
    expect(await main.call(channels.ask, window.event(), open)).toMatchObject(refused);
    main.call(channels.stop, window.event(), 'a');
    expect(line.asked).toEqual([]);
    expect(line.stopped).toEqual([]);
  });

  test('refuses a frame inside the window, even of our own origin', async () => {
    const { main, line, window } = oneWindow();
    const inner = { url: 'app://sidejar/' } as WebFrameMain;
    expect(await main.call(channels.ask, window.event(inner), open)).toMatchObject(refused);
    expect(line.asked).toEqual([]);
  });

  test('refuses a frame that is gone', async () => {
    const { main, window } = oneWindow();
    expect(await main.call(channels.ask, window.event(null), open)).toMatchObject(refused);
  });

  test('refuses a window that was never attached to a desk', async () => {
    const { main, line } = oneWindow();
    expect(await main.call(channels.ask, standInPage(8).event(), open)).toMatchObject(refused);
    expect(line.asked).toEqual([]);
  });

  test('refuses a message of the wrong shape before the desk sees it', async () => {
    const { main, line, window } = oneWindow();
    for (const wrong of [undefined, 'a', { ask: 1, name: 'x' }, { ask: 'a' }]) {
      expect(await main.call(channels.ask, window.event(), wrong)).toMatchObject({ error: { code: 'invalid-input' } });
    }
    expect(line.asked).toEqual([]);
  });

  test('tells progress only to the window that asked, under its own mark', () => {
    const { carrier, line, window } = oneWindow();
    const other = standInPage(77);
    carrier.attach(other.page, line);
    line.tell({ kind: 'progress', ask: '7:a', done: 1, total: 2 });
    expect(window.sent).toEqual([
      { channel: channels.event, message: { kind: 'progress', ask: 'a', done: 1, total: 2 } },
    ]);
    expect(other.sent).toEqual([]);
  });

  test('tells every window of the kitchen what changed', () => {
    const { carrier, line, window } = oneWindow();
    const other = standInPage(8);
    carrier.attach(other.page, line);
    const changed = { kind: 'changed', step: 4, tables: ['trial'] } as const;
    line.tell(changed);
    expect(window.sent).toEqual([{ channel: channels.event, message: changed }]);
    expect(other.sent).toEqual([{ channel: channels.event, message: changed }]);
  });

  test('stops only what the same window asked', () => {
    const { main, carrier, line, window } = oneWindow();
    const other = standInPage(8);
    carrier.attach(other.page, line);
    void main.call(channels.ask, window.event(), open);
    main.call(channels.stop, other.event(), 'a');
    expect(line.stopped).toEqual(['8:a']);
    main.call(channels.stop, window.event(), 'a');
    expect(line.stopped).toEqual(['8:a', '7:a']);
  });

  test('stops what is under way when its window goes, and hears no more for it', async () => {
    const { main, line, window } = oneWindow();
    const done = main.call(channels.ask, window.event(), { ...open, ask: 'done' });
    line.settle('7:done', { ok: true, value: null });
    await done;
    void main.call(channels.ask, window.event(), { ...open, ask: 'late' });
    window.destroy();
    expect(line.stopped).toEqual(['7:late']);
    expect(line.hearers()).toBe(0);
    expect(await main.call(channels.ask, window.event(), open)).toMatchObject(refused);
  });
});

describe('tellPage', () => {
  test('says nothing to a window that is gone', () => {
    const window = standInPage(1);
    window.destroy();
    expect(() => tellPage(window.page, { kind: 'menu', act: 'undo' })).not.toThrow();
    expect(window.sent).toEqual([]);
  });
});
