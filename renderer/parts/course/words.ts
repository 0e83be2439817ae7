import { sugarSolution } from '#core/ferment/sugar-solution.ts';
import { formatQuantity } from '#core/units/format-quantity.ts';
import { phrase } from '#core/words/phrase.ts';
import { sightingWords } from '#renderer/parts/jar-work/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

type What = ValueOf<'course:read'>['jars'][number]['events'][number]['what'];

export const words = {
  none: phrase`No reading yet. With Brix or SG, pH and temperature written down, their course is drawn here; from four sugar readings on, the fall is fitted.`,
  wanted: phrase`Sweetness wanted`,
  wantedHint: phrase`As your instrument shows it: 3 brix or ${1.012}; a bare number is °Bx. Says when it is reached.`,
  sweetTable: phrase`When each jar is as sweet as wanted`,
  apparent: phrase`A refractometer reads high and a hydrometer low once there is alcohol, so these are the instrument’s °Bx, not grams of sugar. How fast they fall is told well, how far less so.`,
  stoodHead: phrase`Time at temperature`,
  stoodLine: (at: string) =>
    phrase`Yeast works faster when it is warmer. Counting every jar’s hours as hours at ${at} lets jars of different weeks be compared; the range is what is not known of your yeast.`,
  stoodTable: (at: string) => phrase`Hours stood, and the hours at ${at} that would have done as much`,
  stoodColumn: (at: string) => phrase`Hours at ${at}`,
  stoodFrom: {
    readings: () => phrase`from its temperature readings`,
    plan: () => phrase`as if at the planned temperature; no reading yet`,
    base: () => phrase`as if as warm as its base; no reading yet`,
    usual: (at: string) => phrase`as if at ${at}; nobody has said how warm`,
  },
  notStarted: phrase`not started`,
} as const;

/** A strength in °Bx, with the gravity a hydrometer shows for it. @example strengthWords(3) // '3 °Bx, SG 1.012' */
export function strengthWords(brix: number): string {
  return phrase`${formatQuantity(brix, 'brix', 'metric')}, SG ${formatQuantity(sugarSolution({ brix }).sg, 'sg', 'metric')}`;
}

const doneWords = { pulled: phrase`pulled`, strained: phrase`strained`, discarded: phrase`discarded` } as const;

/** What was seen or done, in a few words. */
export function seenWords(what: What): string {
  return what === 'pulled' || what === 'strained' || what === 'discarded' ? doneWords[what] : sightingWords[what];
}
