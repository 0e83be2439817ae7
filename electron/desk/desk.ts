import type { z } from 'zod';
import { allRequests, isRequestName } from '#shared/contract/all-requests.ts';
import { type Envelope, Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { allHandlers } from './all-handlers.ts';
import { failureReport } from './failure-report.ts';
import type { Watch } from './handler.ts';
import { inputFailure } from './input-failure.ts';

/** The desk answers every request of the contract for one kitchen. */
export interface Desk {
  handle(name: string, input: unknown, watch?: Watch): Promise<Envelope<unknown>>;
  close(): void;
}

const alone: Watch = { progress() {}, assertGoing() {} };

export interface DeskOptions {
  /** Told of errors that are our own mistake, before they become `internal`. */
  readonly onMistake?: (error: unknown) => void;
  /** Hold every answer against the contract too (tests do). */
  readonly checkAnswers?: boolean;
}

export function deskOf(kitchen: Kitchen, options: DeskOptions = {}): Desk {
  async function answer(name: string, input: unknown, watch: Watch): Promise<unknown> {
    if (!isRequestName(name)) {
      throw new Failure('unknown-request', `There is no request called “${name.slice(0, 100)}”.`, ['name']);
    }
    const shape = allRequests[name];
    const parsed = (shape.input as z.ZodType).safeParse(input);
    if (!parsed.success) throw inputFailure(parsed.error, input);
    const handler = allHandlers[name] as (kitchen: Kitchen, input: unknown, watch: Watch) => unknown;
    const value = await handler(kitchen, parsed.data, watch);
    if (options.checkAnswers) (shape.output as z.ZodType).parse(value);
    return value;
  }

  return {
    async handle(name, input, watch = alone) {
      try {
        return { ok: true, value: await answer(name, input, watch) };
      } catch (error) {
        const report = failureReport(error);
        if (report.code === 'internal') options.onMistake?.(error);
        return { ok: false, error: report };
      }
    },
    close: () => kitchen.close(),
  };
}
