import { describe, expect, it } from 'vitest';
import { ask, connect } from '#renderer/app/ask.ts';
import { Failure } from '#shared/failure.ts';
import { kitchen } from '../small-kitchen.ts';
import { standInBridge } from '../stand-in-bridge.ts';

describe('ask', () => {
  it('settles with the value of the answer', async () => {
    connect(standInBridge({ 'kitchen:open': kitchen }));
    expect(await ask('kitchen:open', {})).toEqual(kitchen);
  });

  it('throws a Failure that carries code, sentence and path', async () => {
    const bridge = standInBridge();
    bridge.fail('tasters:save', { code: 'invalid-input', message: 'Give the taster a name.', path: ['name'] });
    connect(bridge);
    const failure = await ask('tasters:save', { name: '' }).catch((error: unknown) => error);
    expect(failure).toBeInstanceOf(Failure);
    expect(failure).toMatchObject({ code: 'invalid-input', message: 'Give the taster a name.', path: ['name'] });
  });

  it('tells the progress of its own request only, and is deaf once it has settled', async () => {
    const bridge = standInBridge({ 'store:check': { ok: true, problems: [] } });
    connect(bridge);
    const seen: number[] = [];
    const answer = ask('store:check', {}, { onProgress: (done) => seen.push(done) });
    const own = bridge.asked[0]?.ask ?? '';
    bridge.tell({ kind: 'progress', ask: own, done: 3, total: 9 });
    bridge.tell({ kind: 'progress', ask: 'another', done: 7, total: 9 });
    await answer;
    bridge.tell({ kind: 'progress', ask: own, done: 9, total: 9 });
    expect(seen).toEqual([3]);
  });

  it('asks the desk to stop when its signal is aborted', async () => {
    const bridge = standInBridge({ 'store:check': { ok: true, problems: [] } });
    connect(bridge);
    const stopping = new AbortController();
    const answer = ask('store:check', {}, { signal: stopping.signal });
    stopping.abort();
    await answer;
    expect(bridge.stopped).toEqual([bridge.asked[0]?.ask]);
    await expect(ask('store:check', {}, { signal: stopping.signal })).rejects.toMatchObject({ code: 'stopped' });
    expect(bridge.asked).toHaveLength(1);
  });
});
