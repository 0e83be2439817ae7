import type { ValueOf } from '#shared/contract/all-requests.ts';

type Refused = ValueOf<'scores:import'>['refused'][number];

/** A refusal, and how many cells of its row it holds for. */
export interface RefusedGroup extends Refused {
  readonly cells: number;
}

/** Refusals of one row with one reason, said once: an unknown taster would else be named for each of their scores. */
export function refusedGroups(refused: readonly Refused[]): RefusedGroup[] {
  const groups = new Map<string, RefusedGroup>();
  for (const one of refused) {
    const key = `${one.row} ${one.column ?? ''} ${one.message}`;
    groups.set(key, { ...one, cells: (groups.get(key)?.cells ?? 0) + 1 });
  }
  return [...groups.values()];
}
