import { counted } from '#renderer/format/words.ts';

/** How much one score is taken to waver about its taster and sample, in points. Common practice, no source; fixed for now. */
export const assumedError = 1.8;
/** The gap that a maker usually hopes to see, in points. */
export const hopedGap = 2;

/** What a planned panel can be said to see. */
export interface PanelSight {
  readonly samples: number;
  readonly tasters: number;
  readonly replicates: number;
  readonly detectableDifference: number | null;
  readonly tastersNeeded: number | null;
}

/** The widest gap that a scale from 0 to 10 has room for. */
const widestGap = 10;

/**
 * What a panel will be able to see, in a cook's words: the sentence first, then what it leaves open.
 *
 * @example sightWords({ samples: 4, tasters: 6, replicates: 1, detectableDifference: 3.91, tastersNeeded: 19 })[0]
 * // 'With 6 tasters a gap of about 3.9 points would most likely show.'
 */
export function sightWords({
  samples,
  tasters,
  replicates,
  detectableDifference,
  tastersNeeded,
}: PanelSight): string[] {
  if (samples < 2) return ['One jar alone can be described, not compared. Choose at least two.'];
  if (tasters === 0) return ['Choose who tastes, and it stands here what they will be able to tell.'];
  if (tasters === 1) {
    return [
      'One taster can tell which jar they like best, blind.',
      'How sure that is can’t be told: with nobody to compare with, a lucky guess and a true difference look alike.',
    ];
  }
  const who = `With ${counted(tasters, 'taster')}${replicates > 1 ? ` and each sample served ${replicates} times` : ''}`;
  const lines: string[] = [];
  if (detectableDifference === null || detectableDifference > widestGap) {
    lines.push(
      `${who} hardly any gap between jars would show reliably, not even from one end of the scale to the other.`,
    );
  } else {
    lines.push(`${who} a gap of about ${detectableDifference.toFixed(1)} points would most likely show.`);
    lines.push('A smaller gap may be there and go unseen; “not seen” will not mean “the same”.');
  }
  if (tasters === 2)
    lines.push('Two tasters can point out a fault that both notice; they can’t settle a fine difference.');
  if (tastersNeeded !== null && tastersNeeded > tasters) {
    lines.push(
      `For a gap of ${hopedGap} points it takes about ${tastersNeeded} tasters, or more servings of each sample.`,
    );
  }
  return lines;
}
