import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { QueuedScore } from './score-queue.ts';
import type { SheetRow } from './sheet-progress.ts';

export type Scores = ValueOf<'scores:list'>['scores'];

/** A score of a sheet on its way. */
export interface SheetScore extends QueuedScore {
  readonly sample: string;
  readonly attribute: string;
  readonly replicate: number;
  /** What stood in the cell for it; null when something else stays there to be mended. */
  readonly text: string | null;
}

/** One name for each cell of a taster's sheet. */
export function keyOf(row: SheetRow, attribute: { readonly name: string }): string {
  return keyIn({ sample: row.code, replicate: row.replicate, attribute: attribute.name });
}

function keyIn(score: Pick<SheetScore, 'sample' | 'replicate' | 'attribute'>): string {
  return `${score.sample}/${score.replicate}/${score.attribute}`;
}

/** What a taster has stored, by cell. */
export function scoresByKey(stored: Scores, taster: string): ReadonlyMap<string, number> {
  return new Map(stored.filter((one) => one.taster === taster).map((one) => [keyIn(one), one.score]));
}

/** The stored scores with those just kept in their place. */
export function withKept(stored: Scores, taster: string, kept: readonly SheetScore[]): Scores {
  const keys = new Set(kept.map(({ key }) => key));
  const others = stored.filter((one) => one.taster !== taster || !keys.has(keyIn(one)));
  const fresh = kept.flatMap(({ sample, attribute, replicate, score }) =>
    score === null ? [] : [{ taster, sample, attribute, replicate, score }],
  );
  return [...others, ...fresh];
}
