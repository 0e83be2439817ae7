import type { PenaltyAnalysis, PenaltyGroup } from '#core/panel/tasters/just-about-right.ts';
import { phrase } from '#core/words/phrase.ts';
import { pointsWords, rangeWords } from './finding-words.ts';

/** The rule by which a penalty is worth acting on: a fifth of the answers and a drop of one point. Common practice, no source. */
export function penaltyRule(): string {
  return phrase`A fifth of the answers and one point of liking or more is the usual line (common practice, no source).`;
}

function groupSentence(
  attribute: string,
  group: PenaltyGroup,
  word: 'too little' | 'too much',
  all: number,
): string | null {
  if (group.n === 0) return null;
  const opening = phrase`${group.n} of ${all} answers found ${word} ${attribute}`;
  if (group.drop === null) return phrase`${opening}; nobody found it just right, so what it costs can’t be told.`;
  const direction = group.drop >= 0 ? phrase`less` : phrase`more`;
  const interval =
    group.low === null || group.high === null
      ? phrase` (too few to say how sure)`
      : phrase` (95 % interval ${group.drop >= 0 ? rangeWords(group.low, group.high) : rangeWords(-group.high, -group.low)} ${direction})`;
  const size = pointsWords(group.drop);
  return group.attend
    ? phrase`${opening} and liked it ${size} ${direction} than those who found it just right${interval}: worth changing.`
    : phrase`${opening} and liked it ${size} ${direction} than those who found it just right${interval}.`;
}

/**
 * What a just-about-right scale says: how many found too little or too much, and what liking it cost.
 *
 * @param attribute as the panel read it, such as "sweetness"
 * @returns one sentence a group that somebody chose, or one that says it was right
 */
export function penaltySentences(attribute: string, penalties: PenaltyAnalysis): string[] {
  const all = penalties.right.n + penalties.tooLittle.n + penalties.tooMuch.n;
  const found = [
    groupSentence(attribute, penalties.tooLittle, 'too little', all),
    groupSentence(attribute, penalties.tooMuch, 'too much', all),
  ].filter((sentence) => sentence !== null);
  if (found.length > 0) return found;
  return [
    all === 1
      ? phrase`The one answer found the ${attribute} just right.`
      : phrase`All ${all} answers found the ${attribute} just right.`,
  ];
}
