import type { z } from 'zod';
import type { AskMessage, Bridge, DeskEvent } from '#shared/carriage.ts';
import {
  type AskedOf,
  allRequests,
  isRequestName,
  type RequestName,
  type ValueOf,
} from '#shared/contract/all-requests.ts';
import type { Envelope, FailureReport } from '#shared/failure.ts';

type Answers = { [Name in RequestName]?: ValueOf<Name> | ((input: AskedOf<Name>) => ValueOf<Name>) };

export interface StandInBridge extends Bridge {
  readonly asked: AskMessage[];
  readonly stopped: string[];
  /** Sends an event to whoever listens. */
  tell(event: DeskEvent): void;
  /** What is answered from now on. */
  answer(answers: Answers): void;
  /** The next request of this name fails. */
  fail(name: RequestName, error: FailureReport): void;
}

/** A bridge without a desk. Questions and answers are held against the contract, so that it cannot drift from the real one. */
export function standInBridge(first: Answers = {}): StandInBridge {
  let answers: Answers = first;
  const failures = new Map<string, FailureReport>();
  const listeners = new Set<(event: DeskEvent) => void>();
  const asked: AskMessage[] = [];
  const stopped: string[] = [];

  function settle({ name, input }: AskMessage): Envelope<unknown> {
    const failure = failures.get(name);
    if (failure !== undefined) {
      failures.delete(name);
      return { ok: false, error: failure };
    }
    if (!isRequestName(name)) throw new Error(`The contract has no ${name}.`);
    (allRequests[name].input as z.ZodType).parse(input);
    const given = answers[name] as unknown;
    if (given === undefined) throw new Error(`This test has no answer for ${name}.`);
    const value: unknown = typeof given === 'function' ? given(input) : given;
    return { ok: true, value: (allRequests[name].output as z.ZodType).parse(value) };
  }

  return {
    asked,
    stopped,
    async ask(message) {
      asked.push(message);
      return settle(message);
    },
    stop: (ask) => void stopped.push(ask),
    listen(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    tell(event) {
      for (const listener of listeners) listener(event);
    },
    answer(more) {
      answers = { ...answers, ...more };
    },
    fail: (name, error) => void failures.set(name, error),
  };
}
