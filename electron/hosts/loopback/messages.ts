import { readWays } from '#shared/asked-ways.ts';
import type { AskMessage } from '#shared/carriage.ts';

// What a page may send. Checked by hand: the window opens before any library that could do it is read.

function membersOf(body: unknown, allowed: readonly string[]): Readonly<Record<string, unknown>> | null {
  if (typeof body !== 'object' || body === null || Array.isArray(body)) return null;
  return Object.keys(body).every((name) => allowed.includes(name)) ? { ...body } : null;
}

function isMark(mark: unknown): mark is string {
  return typeof mark === 'string' && mark.length >= 1 && mark.length <= 100;
}

/** A request, or null where the body is none; its input is looked at by the desk. */
export function readAsk(body: unknown): AskMessage | null {
  const { ask, name, input, ways } = membersOf(body, ['ask', 'name', 'input', 'ways']) ?? {};
  if (!isMark(ask) || typeof name !== 'string' || name.length > 200) return null;
  if (ways === undefined) return { ask, name, input };
  const read = readWays(ways);
  return read === null ? null : { ask, name, input, ways: read };
}

/** The mark of the request to stop, or null. */
export function readStop(body: unknown): string | null {
  const { ask } = membersOf(body, ['ask']) ?? {};
  return isMark(ask) ? ask : null;
}

/** The ticket to trade for a key, or null. */
export function readTicket(body: unknown): string | null {
  const { ticket } = membersOf(body, ['ticket']) ?? {};
  return typeof ticket === 'string' && ticket.length <= 200 ? ticket : null;
}
