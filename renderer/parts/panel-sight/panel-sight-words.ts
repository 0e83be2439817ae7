import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { counted } from '#renderer/format/counted.ts';
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
  if (samples < 2) return phrase`One sample alone can be described, not compared. It takes at least two.`;
  if (tasters < 1) return phrase`With nobody at the table there is nothing to see yet.`;
  if (tasters === 1) {
    return phrase`One taster can say which sample they like best. How sure that is can’t be told: with nobody beside them, luck and a true difference look alike.`;
  }
  return null;
}

/** What this panel will be able to see, in a sentence. */
export function sightSentence({ samples, tasters, replicates }: Panel, detectable: number | null): string {
  const served = replicates > 1 ? phrase`, each served ${replicates} times,` : '';
  const who = phrase`With ${counted(tasters, 'taster')} and ${counted(samples, 'sample')}${served}`;
  if (detectable === null || detectable > widestGap) {
    return phrase`${who} no gap would show reliably, not even one from end to end of a ten-point scale.`;
  }
  const size = fixed(detectable, 1);
  return size === '1.0'
    ? phrase`${who} a gap of ${size} point would most likely show.`
    : phrase`${who} a gap of ${size} points would most likely show.`;
}

/** How many tasters a gap takes. */
export function neededWords(tasters: number | null, present: number): string {
  if (tasters === null)
    return phrase`More than 500 tasters: look for a larger gap, or serve each sample more than once.`;
  return tasters <= present
    ? phrase`${counted(tasters, 'taster')}: this panel will do.`
    : `${counted(tasters, 'taster')}.`;
}

/** Where the wavering of a single score comes from. */
export function errorBasis(experience: ValueOf<'panel:experience'> | undefined): {
  errorSd: number;
  words: string;
} {
  if (experience?.errorSd == null) {
    return {
      errorSd: usualError,
      words: phrase`Reckoned with single scores that waver by ${usualError} points (common practice, no source) until tastings of your own are closed.`,
    };
  }
  return {
    errorSd: experience.errorSd,
    words: phrase`Reckoned with single scores that waver by ${fixed(experience.errorSd, 1)} points, as in ${counted(experience.tastings, 'closed tasting')} of this kitchen.`,
  };
}
