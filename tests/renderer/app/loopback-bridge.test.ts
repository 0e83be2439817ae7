import { describe, expect, it, vi } from 'vitest';
import { eventStream } from '#renderer/app/loopback/event-stream.ts';
import { loopbackBridge } from '#renderer/app/loopback/loopback-bridge.ts';
import type { DeskEvent } from '#shared/carriage.ts';

function streamOf(...pieces: string[]): ReadableStream<Uint8Array> {
  const encoder = new TextEncoder();
  return new ReadableStream({
    start(controller) {
      for (const piece of pieces) controller.enqueue(encoder.encode(piece));
      controller.close();
    },
  });
}

async function all(stream: ReadableStream<Uint8Array>): Promise<string[]> {
  const found: string[] = [];
  for await (const data of eventStream(stream)) found.push(data);
  return found;
}

// The format: WHATWG HTML, section 9.2.6, "Interpreting an event stream".
describe('eventStream', () => {
  it('gives each data payload, however the bytes were cut', async () => {
    expect(await all(streamOf('da', 'ta: {"a":1}\n', '\ndata: 2\n\n'))).toEqual(['{"a":1}', '2']);
  });

  it('passes over comments and joins the lines of one payload', async () => {
    expect(await all(streamOf(':\n\n', 'data: one\ndata: two\r\n\r\n'))).toEqual(['one\ntwo']);
  });

  it('leaves out a payload that never ended', async () => {
    expect(await all(streamOf('data: whole\n\ndata: half'))).toEqual(['whole']);
  });
});

describe('loopbackBridge', () => {
  const message = { ask: '1', name: 'trials:list', input: {} };

  it('says not-allowed when the server refuses the key without an envelope', async () => {
    const bridge = loopbackBridge({ key: 'old', fetch: async () => new Response('no', { status: 403 }) });
    expect(await bridge.ask(message)).toMatchObject({ ok: false, error: { code: 'not-allowed' } });
  });

  it('settles with a sentence when nobody answers', async () => {
    const bridge = loopbackBridge({ key: 'k', fetch: () => Promise.reject(new TypeError('refused')) });
    const answer = await bridge.ask(message);
    expect(answer).toMatchObject({ ok: false, error: { code: 'internal' } });
    expect(answer.ok ? '' : answer.error.message).toContain('terminal');
  });

  it('hears events, and hears again after the line broke', async () => {
    let calls = 0;
    const heard: DeskEvent[] = [];
    const carry = (async (path: string) => {
      expect(path).toBe('/events');
      calls += 1;
      if (calls === 2) throw new TypeError('gone');
      return new Response(streamOf(`data: {"kind":"menu","act":"go:/${calls}"}\n\n`));
    }) as typeof fetch;
    const deafen = loopbackBridge({ key: 'k', fetch: carry, firstPause_ms: 1 }).listen((event) => heard.push(event));
    await vi.waitFor(() => expect(heard.length).toBeGreaterThanOrEqual(2), 15_000);
    deafen();
    expect(heard.slice(0, 2)).toEqual([
      { kind: 'menu', act: 'go:/1' },
      { kind: 'menu', act: 'go:/3' },
    ]);
  });

  it('asks for the stop of a request by its mark', async () => {
    const sent: unknown[] = [];
    const carry = (async (path: string, init: RequestInit) => {
      sent.push([path, JSON.parse(String(init.body))]);
      return Response.json({ ok: true });
    }) as typeof fetch;
    loopbackBridge({ key: 'k', fetch: carry }).stop('7');
    expect(sent).toEqual([['/stop', { ask: '7' }]]);
  });
});
