import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { csvText } from '#shared/csv-text.ts';

type Ranking = ValueOf<'findings:places'>['rankings'][number];

/** How often a level stood in a place. */
export interface PlaceMark {
  readonly place: number;
  readonly row: number;
  readonly count: number;
}

export interface PlaceChartData {
  readonly levels: readonly string[];
  readonly marks: readonly PlaceMark[];
  readonly means: readonly { readonly place: number; readonly row: number }[];
  /** Mean places this far apart are told apart; null when none could be. */
  readonly critical: number | null;
}

/** Where each level stood, the level with the best mean place first. */
export function placeChartData({ places, criticalDifference, counted }: Ranking): PlaceChartData {
  const rows = [...places].sort((one, other) => one.mean - other.mean);
  return {
    levels: rows.map(({ sample }) => sample),
    marks: rows.flatMap(({ counts }, row) =>
      counts.flatMap((count, index) => (count === 0 ? [] : [{ place: index + 1, row, count }])),
    ),
    means: rows.map(({ mean }, row) => ({ place: mean, row })),
    critical: criticalDifference === null || counted === 0 ? null : criticalDifference / counted,
  };
}

/** @example ordinal(2) // '2nd' */
export function ordinal(place: number): string {
  const ending = place % 100 >= 11 && place % 100 <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][place % 10] ?? 'th');
  return `${place}${ending}`;
}

/** Every count of a ranking as CSV. */
export function placeChartCsv({ places, samples }: Ranking): string {
  return csvText([
    [
      'level',
      ...places.map((_, index) => phrase`times ${ordinal(index + 1)}`),
      phrase`mean place`,
      phrase`rank sum`,
      'alike',
    ],
    ...places.map(({ sample, counts, mean }) => {
      const own = samples.find((each) => each.sample === sample);
      return [sample, ...counts, mean, own?.rankSum ?? null, own?.letters ?? null];
    }),
  ]);
}
