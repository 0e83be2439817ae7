import { Worker } from 'node:worker_threads';
import type { FromDesk, ToDesk } from '#desk/worker-messages.ts';
import type { AskMessage, DeskEvent } from '#shared/carriage.ts';
import type { Envelope } from '#shared/failure.ts';

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
}

const gone: Envelope<never> = {
  ok: false,
  error: {
    code: 'internal',
    message: 'The workbench’s desk has stopped. Close the program and start it again; what was saved is kept.',
  },
};

/** Starts the desk in a worker thread with its kitchen; opening errors settle every request as that failure. */
export function openDeskLine({ worker: file, store, makes = 'any' }: DeskLineOptions): DeskLine {
  const worker = new Worker(file, { workerData: { store, makes } });
  const waiting = new Map<string, { settle: (envelope: Envelope<unknown>) => void; stopFlag: Int32Array }>();
  const listeners = new Set<(event: DeskEvent) => void>();
  let isGone = false;

  function post(message: ToDesk): void {
    worker.postMessage(message);
  }
  function endAll(): void {
    isGone = true;
    for (const { settle } of waiting.values()) settle(gone);
    waiting.clear();
  }
  worker.on('message', (message: FromDesk) => {
    if (message.kind === 'settled') {
      waiting.get(message.ask)?.settle(message.envelope);
      waiting.delete(message.ask);
    } else {
      for (const listener of listeners) listener(message);
    }
  });
  worker.on('error', endAll);
  worker.on('exit', endAll);

  return {
    ask({ ask, name, input }) {
      if (isGone) return Promise.resolve(gone);
      if (waiting.has(ask)) {
        return Promise.resolve({
          ok: false,
          error: { code: 'invalid-input', message: 'This request is under way already.', path: ['ask'] },
        });
      }
      // Shared memory, not a message: the desk may be deep in a computation when the stop comes.
      const stopFlag = new Int32Array(new SharedArrayBuffer(4));
      return new Promise((settle) => {
        waiting.set(ask, { settle, stopFlag });
        post({ kind: 'ask', ask, name, input, stopFlag });
      });
    },
    stop(ask) {
      const found = waiting.get(ask);
      if (found !== undefined) Atomics.store(found.stopFlag, 0, 1);
    },
    listen(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    async close() {
      if (isGone) return;
      const ended = new Promise<void>((resolve) => worker.once('exit', () => resolve()));
      post({ kind: 'close' });
      await ended;
    },
  };
}
