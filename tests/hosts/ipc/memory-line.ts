import type { DeskLine } from '#hosts/desk-line.ts';
import type { AskMessage, DeskEvent } from '#shared/carriage.ts';
import type { Envelope } from '#shared/failure.ts';

/** A line whose other end is in the test's hand: what was asked and stopped, and a voice to tell with. */
export interface MemoryLine extends DeskLine {
  readonly asked: AskMessage[];
  readonly stopped: string[];
  readonly closed: () => number;
  readonly hearers: () => number;
  tell(event: DeskEvent): void;
  settle(ask: string, envelope: Envelope<unknown>): void;
}

export function memoryLine(): MemoryLine {
  const asked: AskMessage[] = [];
  const stopped: string[] = [];
  const listeners = new Set<(event: DeskEvent) => void>();
  const waiting = new Map<string, (envelope: Envelope<unknown>) => void>();
  let closings = 0;
  return {
    asked,
    stopped,
    closed: () => closings,
    hearers: () => listeners.size,
    ask(message) {
      asked.push(message);
      return new Promise((settle) => waiting.set(message.ask, settle));
    },
    stop: (ask) => void stopped.push(ask),
    listen(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    async close() {
      closings += 1;
    },
    tell: (event) => {
      for (const listener of listeners) listener(event);
    },
    settle: (ask, envelope) => waiting.get(ask)?.(envelope),
  };
}
