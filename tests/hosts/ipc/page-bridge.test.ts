import type { IpcRenderer } from 'electron';
import { describe, expect, test } from 'vitest';
import { channels } from '#hosts/ipc/channels.ts';
import { pageBridge } from '#hosts/ipc/page-bridge.ts';
import type { DeskEvent } from '#shared/carriage.ts';

function standInIpcRenderer(answer: () => Promise<unknown> = async () => ({ ok: true, value: 1 })) {
  const invoked: unknown[][] = [];
  const hearers: ((...words: unknown[]) => void)[] = [];
  const ipc = {
    invoke: (...words: unknown[]) => {
      invoked.push(words);
      return answer();
    },
    on: (channel: string, hearer: (...words: unknown[]) => void) => {
      if (channel === channels.event) hearers.push(hearer);
    },
  } as unknown as Pick<IpcRenderer, 'invoke' | 'on'>;
  const tell = (event: DeskEvent) => {
    for (const hearer of hearers) hearer({ sender: 'electron’s own' }, event);
  };
  return { ipc, invoked, hearers, tell };
}

const changed: DeskEvent = { kind: 'changed', step: 1, tables: ['jar'] };

describe('pageBridge', () => {
  test('offers ask, stop and listen, and nothing else', () => {
    expect(Object.keys(pageBridge(standInIpcRenderer().ipc)).sort()).toEqual(['ask', 'listen', 'stop']);
  });

  test('ask sends mark, name and input alone, and gives the envelope back', async () => {
    const { ipc, invoked } = standInIpcRenderer();
    const message = { ask: 'a', name: 'kitchen:open', input: {}, channel: 'other' };
    expect(await pageBridge(ipc).ask(message)).toEqual({ ok: true, value: 1 });
    expect(invoked).toEqual([[channels.ask, { ask: 'a', name: 'kitchen:open', input: {} }]]);
  });

  test('ask settles as a failure when the channel breaks, and never throws', async () => {
    const { ipc } = standInIpcRenderer(() => Promise.reject(new Error('at main.js:1')));
    const envelope = await pageBridge(ipc).ask({ ask: 'a', name: 'kitchen:open', input: {} });
    expect(envelope).toMatchObject({ ok: false, error: { code: 'internal' } });
    expect(JSON.stringify(envelope)).not.toContain('main.js');
  });

  test('stop sends the mark on its own channel', () => {
    const { ipc, invoked } = standInIpcRenderer();
    pageBridge(ipc).stop('a');
    expect(invoked).toEqual([[channels.stop, 'a']]);
  });

  test('a listener hears the event and not Electron’s own, until it stops listening', () => {
    const { ipc, tell } = standInIpcRenderer();
    const bridge = pageBridge(ipc);
    const heard: unknown[][] = [];
    const stopListening = bridge.listen((...words) => heard.push(words));
    tell(changed);
    stopListening();
    tell(changed);
    expect(heard).toEqual([[changed]]);
  });

  test('many listeners share one hearing of the channel', () => {
    const { ipc, hearers, tell } = standInIpcRenderer();
    const bridge = pageBridge(ipc);
    let count = 0;
    bridge.listen(() => count++);
    bridge.listen(() => count++);
    tell(changed);
    expect([hearers.length, count]).toEqual([1, 2]);
  });

  test('an event that was kept does not reach the page, and is kept once', () => {
    const { ipc, tell } = standInIpcRenderer();
    const kept: DeskEvent[] = [];
    const bridge = pageBridge(ipc, (event) => event.kind === 'menu' && kept.push(event) > 0);
    const heard: DeskEvent[] = [];
    bridge.listen((event) => heard.push(event));
    bridge.listen((event) => heard.push(event));
    tell({ kind: 'menu', act: 'undo' });
    expect([kept.length, heard.length]).toEqual([1, 0]);
  });
});
