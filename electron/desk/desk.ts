import type { z } from 'zod';
import { phrase } from '#core/words/phrase.ts';
import {
  allRequests,
  type ComputingName,
  isRequestName,
  type KitchenName,
  type RequestName,
} from '#shared/contract/all-requests.ts';
import { atFirstComplaint } from '#shared/contract/first-complaint.ts';
import { type Envelope, Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { allComputers, allHandlers } from './all-handlers.ts';
import { failureReport } from './failure-report.ts';
import { falseLength } from './false-length.ts';
import type { Watch } from './handler.ts';
import { inputFailure } from './input-failure.ts';
import { oddMember } from './odd-member.ts';

/** The desk answers every request of the contract for one kitchen. */
export interface Desk {
  handle(name: string, input: unknown, watch?: Watch): Promise<Envelope<unknown>>;
  close(): void;
}

/** The input as the contract has it, defaults filled in. */
function readInput(shape: z.ZodType, input: unknown): unknown {
  try {
    const parsed = shape.safeParse(input, atFirstComplaint);
    if (parsed.success) return parsed.data;
    throw inputFailure(parsed.error, input);
  } catch (error) {
    const path = error instanceof Failure ? null : falseLength(input);
    if (path === null) throw error;
    throw new Failure('invalid-input', phrase`Here is an object where words or a list belong.`, path);
  }
}

const alone: Watch = { progress() {}, assertGoing() {} };

export interface DeskOptions {
  /** Told of errors that are our own mistake, before they become `internal`. */
  readonly onMistake?: (error: unknown, request: string) => void;
  /** Hold every answer against the contract too (tests do). */
  readonly checkAnswers?: boolean;
}

/**
 * @param opening the kitchen, or how to open it: done for the first request that needs one, and tried again after a failure
 */
export function deskOf(opening: Kitchen | ((writes: boolean) => Promise<Kitchen>), options: DeskOptions = {}): Desk {
  let opened: Kitchen | null = typeof opening === 'function' ? null : opening;

  async function openedKitchen(writes: boolean): Promise<Kitchen> {
    if (opened === null && typeof opening === 'function') opened = await opening(writes);
    if (opened === null) throw new Failure('internal', phrase`There is no kitchen.`);
    return opened;
  }

  async function settle(name: RequestName, input: unknown, watch: Watch): Promise<unknown> {
    if (allRequests[name].needs === 'nothing') {
      return (allComputers[name as ComputingName] as (input: unknown, watch: Watch) => unknown)(input, watch);
    }
    const handler = allHandlers[name as KitchenName] as (kitchen: Kitchen, input: unknown, watch: Watch) => unknown;
    return handler(await openedKitchen(allRequests[name].writes), input, watch);
  }

  async function answer(name: string, input: unknown, watch: Watch): Promise<unknown> {
    if (!isRequestName(name)) {
      throw new Failure('unknown-request', phrase`There is no request called “${name.slice(0, 100)}”.`, ['name']);
    }
    const shape = allRequests[name];
    const odd = oddMember(input);
    if (odd?.kind === 'crowded') {
      throw new Failure('too-large', phrase`Here are more than 5,000 named members; no request has so many.`, odd.path);
    }
    if (odd !== null) throw new Failure('invalid-input', phrase`Here is half a character: this is no text.`, odd.path);
    const value = await settle(name, readInput(shape.input, input), watch);
    if (options.checkAnswers) (shape.output as z.ZodType).parse(value);
    return value;
  }

  return {
    async handle(name, input, watch = alone) {
      try {
        return { ok: true, value: await answer(name, input, watch) };
      } catch (error) {
        const report = failureReport(error);
        if (report.code === 'internal') options.onMistake?.(error, isRequestName(name) ? name : 'unknown');
        return { ok: false, error: report };
      }
    },
    close: () => opened?.close(),
  };
}
