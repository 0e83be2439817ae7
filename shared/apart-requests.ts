import type { RequestName } from './contract/all-requests.ts';

/**
 * Requests answered in a thread of their own, with their own connection: they may last, and nobody waits for them.
 *
 * They stand beside the contract, not in it: the hosts need their names at once, long before a schema is.
 */
export const apartRequests = [
  'store:check',
  'store:backup',
  'store:tend',
  'store:rescue',
  'store:copyStrange',
  'backups:restore',
  'data:export',
  'tasters:erase',
] as const satisfies readonly RequestName[];

const names: ReadonlySet<string> = new Set(apartRequests);

export function isApart(name: string): boolean {
  return names.has(name);
}
