import { counted } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

/** How much one score wavers about its taster and sample, on a ten-point scale, until this kitchen knows better: common practice, no source. */
export const usualError = 1.8;

/** The widest gap that a ten-point scale has room for. */
const widestGap = 10;

export interface Panel {
  readonly samples: number;
  readonly tasters: number;
  readonly replicates: number;
}

/** Too few to compare anything: said instead of a drawing. */
export function tooFewWords({ samples, tasters }: Panel): string | null {
  if (samples < 2) return 'One sample alone can be described, not compared. It takes at least two.';
  if (tasters < 1) return 'With nobody at the table there is nothing to see yet.';
  if (tasters === 1) {
    return 'One taster can say which sample they like best. How sure that is can’t be told: with nobody beside them, luck and a true difference look alike.';
  }
  return null;
}

/** What this panel will be able to see, in a sentence. */
export function sightSentence({ samples, tasters, replicates }: Panel, detectable: number | null): string {
  const served = replicates > 1 ? `, each served ${replicates} times,` : '';
  const who = `With ${counted(tasters, 'taster')} and ${counted(samples, 'sample')}${served}`;
  if (detectable === null || detectable > widestGap) {
    return `${who} no gap would show reliably, not even one from end to end of a ten-point scale.`;
  }
  const size = detectable.toFixed(1);
  return `${who} a gap of ${size} point${size === '1.0' ? '' : 's'} would most likely show.`;
}

/** How many tasters a gap takes. */
export function neededWords(tasters: number | null, present: number): string {
  if (tasters === null) return 'More than 500 tasters: look for a larger gap, or serve each sample more than once.';
  return tasters <= present ? `${counted(tasters, 'taster')}: this panel will do.` : `${counted(tasters, 'taster')}.`;
}

/** Where the wavering of a single score comes from. */
export function errorBasis(experience: ValueOf<'panel:experience'> | undefined): {
  errorSd: number;
  words: string;
} {
  if (experience?.errorSd == null) {
    return {
      errorSd: usualError,
      words: `Reckoned with single scores that waver by ${usualError} points (common practice, no source) until tastings of your own are closed.`,
    };
  }
  return {
    errorSd: experience.errorSd,
    words: `Reckoned with single scores that waver by ${experience.errorSd.toFixed(1)} points, as in ${counted(experience.tastings, 'closed tasting')} of this kitchen.`,
  };
}
