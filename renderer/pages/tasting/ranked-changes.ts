import { cellText } from './cell-text.ts';
import { placeFaults, placeToStore, type RankedCup } from './place-faults.ts';
import type { Attribute } from './score-cell.tsx';
import type { SheetRow } from './sheet-progress.ts';
import { keyOf, type SheetScore } from './sheet-scores.ts';

/** A sheet on which the cups are put in order: what stands at one decides what may stand at another. */
export interface Ranking {
  readonly rows: readonly SheetRow[];
  readonly attribute: Attribute;
  readonly areTiesMeant: boolean;
}

/** What stands at each cup of a ranking: what is being typed, else what is stored. */
export function cupsOf(
  { rows, attribute }: Ranking,
  texts: ReadonlyMap<string, string>,
  held: ReadonlyMap<string, number>,
): RankedCup[] {
  return rows.map((row) => {
    const key = keyOf(row, attribute);
    const place = held.get(key);
    return { name: row.code, text: texts.get(key) ?? (place === undefined ? '' : cellText(attribute, place)) };
  });
}

/** What one typed cup asks for: its place kept, or its text let go, for it says what is stored already. */
export type RankedChange =
  | { readonly kind: 'put'; readonly score: SheetScore }
  | { readonly kind: 'let-go'; readonly key: string };

/**
 * What is to be done about every typed cup of a ranking, now that one of them was left.
 *
 * @param sent the place on its way for a cell; undefined where none is
 */
export function rankedChanges(
  ranking: Ranking,
  texts: ReadonlyMap<string, string>,
  held: ReadonlyMap<string, number>,
  sent: (key: string) => number | null | undefined,
): RankedChange[] {
  const { rows, attribute, areTiesMeant } = ranking;
  const cups = cupsOf(ranking, texts, held);
  const faults = placeFaults(cups, attribute, areTiesMeant);
  return rows.flatMap((row, at): RankedChange[] => {
    const key = keyOf(row, attribute);
    const cup = cups[at];
    if (cup === undefined || !texts.has(key)) return [];
    const going = sent(key);
    const before = going === undefined ? (held.get(key) ?? null) : going;
    const place = placeToStore(cup, attribute, faults[at], before);
    if (place === undefined) return [];
    if (place === before) return going === undefined && faults[at] === undefined ? [{ kind: 'let-go', key }] : [];
    const text = faults[at] === undefined ? cup.text : null;
    const { code: sample, replicate } = row;
    return [{ kind: 'put', score: { key, score: place, text, sample, attribute: attribute.name, replicate } }];
  });
}
