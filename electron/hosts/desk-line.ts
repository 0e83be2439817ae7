import { join } from 'node:path';
import { phrase } from '#core/words/phrase.ts';
import { isApart } from '#shared/apart-requests.ts';
import type { AskMessage, DeskEvent } from '#shared/carriage.ts';

import type { Envelope } from '#shared/failure.ts';
import { dataFolder } from './default-store.ts';
import { type DeskThread, startDeskThread } from './desk-thread.ts';
import { nearFolders } from './near-folders.ts';

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
  /** Opens another kitchen that lies beside this one: in a window of its own (told which), or in this one's place. */
  readonly beside?: 'in-place' | ((file: string) => void);
  /** Asks with the system's own dialog where a kitchen's file lies; left out where there is none. */
  readonly choose?: () => Promise<string | null>;
  /** The folders where kitchens mostly lie; this machine's usual ones unless said. */
  readonly near?: readonly string[];
  /** Told when another kitchen was opened in this one's place. */
  readonly onMoved?: (file: string) => void;
  /** The folder of a person's own translations; `words` in the data folder unless said. */
  readonly ownWords?: string;
  /** Where a person works for hours: the kitchen is tended after the first answer and then daily; told how that went. */
  readonly onTended?: (envelope: Envelope<unknown>) => void;
}

/** No table: whoever hears of it reads everything again. */
const otherKitchen = 'another kitchen';

/** The desk finds the file; the host opens it. */
const opening: ReadonlySet<string> = new Set(['kitchen:openBeside', 'kitchen:openNear']);

const tendsAfter_ms = 2_000;
const tendsEvery_ms = 24 * 3_600_000;

/**
 * Starts the desk in a worker thread with its kitchen; opening errors settle every request as that failure. One of
 * `apartRequests` gets a thread of its own for as long as it lasts, and holds nobody up.
 */
export function openDeskLine(options: DeskLineOptions): DeskLine {
  const { worker, makes = 'any', log, beside, choose, onMoved, onTended } = options;
  const words = options.ownWords ?? join(dataFolder(process.platform, process.env), 'words');
  const near = options.near ?? nearFolders(process.platform, process.env);
  const listeners = new Set<(event: DeskEvent) => void>();
  const onEvent = (event: DeskEvent): void => {
    for (const listener of listeners) listener(event);
  };
  let store = options.store;
  const start = (file = store, stepsBack = false): DeskThread =>
    startDeskThread({
      worker,
      store: file,
      makes,
      log: log ?? null,
      ownWords: words,
      near,
      hasDialog: choose !== undefined,
      stepsBack,
      onEvent,
    });
  let main = start();
  const asides = new Set<DeskThread>();
  const underWay = new Map<string, DeskThread>();
  let isTending = false;
  const timers: NodeJS.Timeout[] = [];

  async function apart(message: AskMessage): Promise<Envelope<unknown>> {
    // Not what writes: while it holds the kitchen, others wait for it.
    const thread = start(store, message.name !== 'tasters:erase');
    asides.add(thread);
    underWay.set(message.ask, thread);
    const envelope = await thread.ask(message);
    await thread.close();
    asides.delete(thread);
    return envelope;
  }

  /** What a host with a dialog answers to `kitchens:choose`; the others have none to show. */
  async function chosen(): Promise<Envelope<unknown>> {
    if (choose !== undefined) return { ok: true, value: { file: await choose() } };
    const message = phrase`Here no dialog can be shown. Say where the file lies.`;
    return { ok: false, error: { code: 'refused', message } };
  }

  /** What every host answers to a kitchen that is to be opened, once the desk has found the file. */
  async function goBeside(file: string): Promise<Envelope<unknown>> {
    if (beside === undefined) {
      const message = phrase`Here no window can be opened. Start the workbench with --store and the new file.`;
      return { ok: false, error: { code: 'refused', message } };
    }
    if (beside !== 'in-place') {
      beside(file);
      return { ok: true, value: { file } };
    }
    const next = start(file);
    // Only one that opens takes this one's place.
    const opened = await next.ask({ ask: 'beside', name: 'kitchen:open', input: {} });
    if (!opened.ok) {
      await next.close();
      return opened;
    }
    const before = main;
    [main, store] = [next, file];
    void before.close();
    onEvent({ kind: 'changed', step: 0, tables: [otherKitchen] });
    onMoved?.(file);
    return { ok: true, value: { file } };
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
      let envelope: Envelope<unknown>;
      try {
        envelope = await (goesApart ? apart(message) : main.ask(message));
      } finally {
        underWay.delete(message.ask);
      }
      if (!envelope.ok) return envelope;
      tendFromNowOn();
      if (message.name === 'kitchens:choose') return chosen();
      return opening.has(message.name) ? goBeside((envelope.value as { file: string }).file) : envelope;
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
