import { readWays } from '#shared/asked-ways.ts';
import type { AskMessage } from '#shared/carriage.ts';

const longestMark = 200;

/** A caller's own mark for a request: a short text. */
export function isAskMark(value: unknown): value is string {
  return typeof value === 'string' && value.length > 0 && value.length <= longestMark;
}

/**
 * Takes from a message exactly what the desk is to see, or nothing when its shape is wrong.
 *
 * Leaves out whether the request exists and whether its input fits: the desk says that, with the contract.
 *
 * @param value what came over the channel
 * @returns a fresh message without any further member; null when `ask` or `name` is missing or no short text, or `ways` are none
 * @example readAskMessage({ ask: 'a', name: 'kitchen:open', input: {} })
 */
export function readAskMessage(value: unknown): AskMessage | null {
  if (typeof value !== 'object' || value === null) return null;
  const { ask, name, input, ways } = value as Partial<Record<keyof AskMessage, unknown>>;
  if (!isAskMark(ask) || !isAskMark(name)) return null;
  if (ways === undefined) return { ask, name, input };
  const read = readWays(ways);
  return read === null ? null : { ask, name, input, ways: read };
}
