import { phrase } from '#core/words/phrase.ts';
import { isApart } from '#shared/apart-requests.ts';
import type { AskMessage, DeskEvent } from '#shared/carriage.ts';

import type { Envelope } from '#shared/failure.ts';
import { type DeskThread, startDeskThread } from './desk-thread.ts';

/** A line to the desk in its worker thread: what every host holds in its hand. */
export interface DeskLine {
  ask(message: AskMessage): Promise<Envelope<unknown>>;
  /** Asks a running request to stop; it settles as `stopped`, with nothing written. */
  stop(ask: string): void;
  listen(listener: (event: DeskEvent) => void): () => void;
  close(): Promise<void>;
}

export interface DeskLineOptions {
  /** The worker's file: the built one, or electron/desk/desk-worker.ts when run from source. */
  readonly worker: URL;
  readonly store: string;
  /** A kitchen that is not there is made for any request, or only for one that writes (the default is any). */
  readonly makes?: 'any' | 'writes';
  /** Where the program's own mistakes are noted; nowhere unless said. */
  readonly log?: string;
  /** Where a person works for hours: the kitchen is tended after the first answer and then daily; told how that went. */
  readonly onTended?: (envelope: Envelope<unknown>) => void;
}

const tendsAfter_ms = 2_000;
const tendsEvery_ms = 24 * 3_600_000;

/**
 * Starts the desk in a worker thread with its kitchen; opening errors settle every request as that failure. One of
 * `apartRequests` gets a thread of its own for as long as it lasts, and holds nobody up.
 */
export function openDeskLine({ worker, store, makes = 'any', log, onTended }: DeskLineOptions): DeskLine {
  const listeners = new Set<(event: DeskEvent) => void>();
  const onEvent = (event: DeskEvent): void => {
    for (const listener of listeners) listener(event);
  };
  const start = (): DeskThread => startDeskThread({ worker, store, makes, log: log ?? null, onEvent });
  const main = start();
  const asides = new Set<DeskThread>();
  const underWay = new Map<string, DeskThread>();
  let isTending = false;
  const timers: NodeJS.Timeout[] = [];

  async function apart(message: AskMessage): Promise<Envelope<unknown>> {
    const thread = start();
    asides.add(thread);
    underWay.set(message.ask, thread);
    const envelope = await thread.ask(message);
    await thread.close();
    asides.delete(thread);
    return envelope;
  }

  function tendFromNowOn(): void {
    if (isTending || onTended === undefined) return;
    isTending = true;
    const tend = (): void => void apart({ ask: 'tend', name: 'store:tend', input: {} }).then(onTended);
    timers.push(setTimeout(tend, tendsAfter_ms), setInterval(tend, tendsEvery_ms));
    for (const timer of timers) timer.unref();
  }

  return {
    async ask(message) {
      if (underWay.has(message.ask)) {
        return {
          ok: false,
          error: { code: 'invalid-input', message: phrase`This request is under way already.`, path: ['ask'] },
        };
      }
      const goesApart = isApart(message.name);
      if (!goesApart) underWay.set(message.ask, main);
      const envelope = await (goesApart ? apart(message) : main.ask(message));
      underWay.delete(message.ask);
      if (envelope.ok) tendFromNowOn();
      return envelope;
    },
    stop(ask) {
      underWay.get(ask)?.stop(ask);
    },
    listen(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    async close() {
      for (const timer of timers) clearTimeout(timer);
      await Promise.all([...asides].map((thread) => thread.end()));
      await main.close();
    },
  };
}
