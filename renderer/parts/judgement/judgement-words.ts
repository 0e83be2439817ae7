import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

type Judged = ValueOf<'profiles:judge'>;
type JudgedLevel = Judged['levels'][number];

/** A share of redrawn panels, in words that never claim more than redrawing can tell. */
export function shareWords(share: number): string {
  const percent = Math.round(share * 100);
  if (share > 0 && percent === 0) return phrase`fewer than 1 of 100`;
  if (share < 1 && percent === 100) return phrase`more than 99 of 100`;
  return phrase`${percent} of 100`;
}

/** How right a level is, 0 to 100, with its interval. */
export function rightWords({ desirability, low, high }: JudgedLevel): string {
  if (desirability === null) return phrase`not scored for every wish`;
  const figure = (value: number) => String(Math.round(value * 100));
  const between = low === null || high === null ? '' : phrase` (${figure(low)} to ${figure(high)})`;
  return phrase`${figure(desirability)} of 100${between}`;
}

/** The judgement in a sentence, with its doubt; null when no level meets the wishes at all. */
export function judgementSentence({ levels, winner }: Judged): string | null {
  const won = levels.find(({ level }) => level === winner);
  if (won === undefined) return null;
  const sure =
    won.winShare >= 0.95
      ? phrase`it would almost always come out first`
      : won.winShare >= 0.8
        ? phrase`it would come out first in ${shareWords(won.winShare)} panels`
        : phrase`it would come out first in only ${shareWords(won.winShare)} panels, so the panel has not settled it`;
  return phrase`“${won.level}” comes closest to what is wanted. If such a panel were drawn again, ${sure}.`;
}
