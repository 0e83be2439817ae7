import { phrase } from '#core/words/phrase.ts';
import type { Bridge, DeskEvent } from '#shared/carriage.ts';
import type { Envelope, FailureCode } from '#shared/failure.ts';
import { pageIsGoing } from '../leaving.ts';
import { eventStream } from './event-stream.ts';

export const keyHeader = 'x-sidejar-key';

export interface LoopbackOptions {
  readonly key: string;
  readonly fetch?: typeof fetch;
  /** Milliseconds before the first attempt to hear events again; doubles up to half a minute. */
  readonly firstPause_ms?: number;
}

function failed(code: FailureCode, message: string): Envelope<never> {
  return { ok: false, error: { code, message } };
}

const shut = () => phrase`This page’s key is not accepted any more. Press Enter in the terminal for a fresh address.`;
const silent = () => phrase`The kitchen does not answer. Is its terminal still open? What was saved is kept.`;

function isEnvelope(value: unknown): value is Envelope<unknown> {
  return typeof value === 'object' && value !== null && typeof (value as { ok?: unknown }).ok === 'boolean';
}

/** Carries requests to the desk over 127.0.0.1, with the key that a ticket was traded for. */
export function loopbackBridge({ key, fetch: carry = fetch, firstPause_ms = 500 }: LoopbackOptions): Bridge {
  const headers = { 'content-type': 'application/json', [keyHeader]: key };
  const listeners = new Set<(event: DeskEvent) => void>();
  let hearing: AbortController | null = null;

  async function hear(until: AbortSignal): Promise<void> {
    let pause = firstPause_ms;
    while (!until.aborted) {
      try {
        const response = await carry('/events', { headers: { [keyHeader]: key }, signal: until });
        if (response.status === 401 || response.status === 403) return;
        if (response.ok && response.body !== null) {
          for await (const data of eventStream(response.body)) {
            pause = firstPause_ms;
            for (const listener of listeners) listener(JSON.parse(data) as DeskEvent);
          }
        }
      } catch {
        // The line broke: try again below, more and more slowly.
      }
      await new Promise((resolve) => setTimeout(resolve, pause));
      pause = Math.min(pause * 2, 30_000);
    }
  }

  return {
    async ask(message) {
      try {
        const body = JSON.stringify(message);
        // What is sent as the page goes must outlive it; a browser lets so much of it stand in all.
        const keepalive = pageIsGoing() && body.length < 30_000;
        const response = await carry('/ask', { method: 'POST', headers, body, ...(keepalive ? { keepalive } : {}) });
        const answer: unknown = await response.json().catch(() => null);
        if (isEnvelope(answer)) return answer;
        if (response.status === 401 || response.status === 403) return failed('not-allowed', shut());
        return failed('internal', silent());
      } catch {
        return failed('internal', silent());
      }
    },
    stop(ask) {
      void carry('/stop', { method: 'POST', headers, body: JSON.stringify({ ask }) }).catch(() => undefined);
    },
    listen(listener) {
      listeners.add(listener);
      if (hearing === null) {
        hearing = new AbortController();
        void hear(hearing.signal);
      }
      return () => {
        listeners.delete(listener);
        if (listeners.size > 0) return;
        hearing?.abort();
        hearing = null;
      };
    },
  };
}
