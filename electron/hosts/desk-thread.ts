import { Worker } from 'node:worker_threads';
import { phrase } from '#core/words/phrase.ts';
import type { DeskData, FromDesk, ToDesk } from '#desk/worker-messages.ts';
import type { AskMessage, DeskEvent } from '#shared/carriage.ts';
import type { Envelope } from '#shared/failure.ts';

/** One worker thread with a desk in it, and a connection to the kitchen of its own. */
export interface DeskThread {
  ask(message: AskMessage): Promise<Envelope<unknown>>;
  stop(ask: string): void;
  /** Lets what is under way end, then closes. */
  close(): Promise<void>;
  /** Ends it where it stands; what it had not committed is not written. */
  end(): Promise<void>;
}

export interface DeskThreadOptions extends DeskData {
  readonly worker: URL;
  onEvent(event: DeskEvent): void;
}

function gone(): Envelope<never> {
  const message = phrase`The workbench’s desk has stopped. Close the program and start it again; what was saved is kept.`;
  return { ok: false, error: { code: 'internal', message } };
}

export function startDeskThread({ worker: file, onEvent, ...data }: DeskThreadOptions): DeskThread {
  const worker = new Worker(file, { workerData: data });
  const waiting = new Map<string, { settle: (envelope: Envelope<unknown>) => void; stopFlag: Int32Array }>();
  let isGone = false;

  function post(message: ToDesk): void {
    worker.postMessage(message);
  }
  function endAll(): void {
    isGone = true;
    for (const { settle } of waiting.values()) settle(gone());
    waiting.clear();
  }
  worker.on('message', (message: FromDesk) => {
    if (message.kind === 'settled') {
      waiting.get(message.ask)?.settle(message.envelope);
      waiting.delete(message.ask);
    } else {
      onEvent(message);
    }
  });
  worker.on('error', endAll);
  worker.on('exit', endAll);

  return {
    ask({ ask, name, input, ways }) {
      if (isGone) return Promise.resolve(gone());
      // Shared memory, not a message: the desk may be deep in a computation when the stop comes.
      const stopFlag = new Int32Array(new SharedArrayBuffer(4));
      return new Promise((settle) => {
        // Posted first: what can't be posted (a function in it, say) fails here, and nothing is waited for.
        post({ kind: 'ask', ask, name, input, ...(ways === undefined ? {} : { ways }), stopFlag });
        waiting.set(ask, { settle, stopFlag });
      });
    },
    stop(ask) {
      const found = waiting.get(ask);
      if (found !== undefined) Atomics.store(found.stopFlag, 0, 1);
    },
    async close() {
      if (isGone) return;
      const ended = new Promise<void>((resolve) => worker.once('exit', () => resolve()));
      post({ kind: 'close' });
      await ended;
    },
    async end() {
      await worker.terminate();
    },
  };
}
