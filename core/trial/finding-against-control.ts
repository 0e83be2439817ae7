import type { AttributeAnalysis } from '#core/panel/panel-analysis.ts';
import { phrase } from '#core/words/phrase.ts';
import { pointsWords, rangeWords } from './finding-words.ts';

/**
 * One attribute's levels against the control, in words: "Against “2 days”: “3 days” 1.7 points higher (1.0 to 2.4); …".
 *
 * Method: Dunnett's simultaneous 95 % intervals; one that holds zero is said to leave room for luck, in either direction.
 *
 * @param isClear whether the attribute's test over all levels is clear; where it is not, the intervals are called hints
 * @returns null when there is no control or nothing to compare it with
 */
export function findingAgainstControl(
  attribute: AttributeAnalysis,
  control: string | null,
  isClear: boolean,
): string | null {
  const { versusControl } = attribute;
  if (control === null || versusControl === null || versusControl.length === 0) return null;
  const parts = versusControl.map(({ sample, difference, low, high }) => {
    const isUp = difference >= 0;
    const direction = isUp ? 'higher' : 'lower';
    if (low <= 0 && high >= 0) {
      return phrase`“${sample}” ${pointsWords(difference)} ${direction}, which may be luck (${rangeWords(low, high)})`;
    }
    const interval = isUp ? rangeWords(low, high) : rangeWords(-high, -low);
    return `“${sample}” ${pointsWords(difference)} ${direction} (${interval})`;
  });
  const hint = isClear ? '' : phrase` As the whole is not clear, take these as hints at most.`;
  return phrase`Against “${control}”: ${parts.join('; ')}.${hint}`;
}
