import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Tasting = ValueOf<'tastings:open'>;

/** Stickers that belong together: one taster's sitting, or one code. */
export interface CupRun {
  readonly name: string;
  readonly codes: readonly string[];
}

export type CupOrder = keyof typeof words.orders;

/** Every cup that is served, taster by taster in their own order, or code by code in order of the figures. */
export function cupRuns(orders: Tasting['orders'], order: CupOrder): CupRun[] {
  const sittings = orders.flatMap(({ name, sittings: own }) =>
    own.map(({ sitting, codes }) => ({
      name: own.length === 1 ? name : words.sitting(name, sitting),
      codes,
    })),
  );
  if (order === 'taster') return sittings;
  const cups = sittings.flatMap(({ codes }) => codes);
  return [...new Set(cups)].sort().map((code) => ({ name: code, codes: cups.filter((cup) => cup === code) }));
}
