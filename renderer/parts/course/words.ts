import { sightingWords } from '#renderer/parts/jar-work/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

type What = ValueOf<'course:read'>['jars'][number]['events'][number]['what'];

export const words = {
  none: 'No reading yet. With Brix or SG, pH and temperature written down, their course is drawn here; from four sugar readings on, the fall is fitted.',
  wanted: 'Sweetness wanted',
  wantedHint: '°Bx, such as 3. Says when it is reached.',
  wantedFault: 'A number between 0 and 80.',
  sweetTable: 'When each jar is as sweet as wanted',
  apparent:
    'A refractometer reads high and a hydrometer low once there is alcohol, so these are the instrument’s °Bx, not grams of sugar. How fast they fall is told well, how far less so.',
  stoodHead: 'Time at temperature',
  stoodLine:
    'Yeast works faster when it is warmer. Counting every jar’s hours as hours at 22 °C lets jars of different weeks be compared; the range is what is not known of your yeast.',
  stoodTable: 'Hours stood, and the hours at 22 °C that would have done as much',
  stoodFrom: {
    readings: 'from its temperature readings',
    plan: 'as if at the planned temperature; no reading yet',
    base: 'as if as warm as its base; no reading yet',
    usual: 'as if at 22 °C; nobody has said how warm',
  },
  notStarted: 'not started',
} as const;

const doneWords = { pulled: 'pulled', strained: 'strained', discarded: 'discarded' } as const;

/** What was seen or done, in a few words. */
export function seenWords(what: What): string {
  return what === 'pulled' || what === 'strained' || what === 'discarded' ? doneWords[what] : sightingWords[what];
}
