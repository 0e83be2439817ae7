import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { counted } from '#renderer/format/counted.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Method } from './words.ts';

type Design = ValueOf<'panel:discriminationDesign'>;

/** "8 times in 10": a chance as a cook would say it; never a flat never or always. */
export function timesInTen(chance: number): string {
  if (chance >= 0.95) return phrase`nearly every time`;
  if (chance < 0.05) return phrase`hardly ever`;
  const times = Math.max(1, Math.round(chance * 10));
  return times === 1 ? phrase`${times} time in 10` : phrase`${times} times in 10`;
}

/** A count that guessing gives on average. @example luckWords(4.5) // '4.5' */
export function luckWords(expected: number): string {
  return fixed(expected, 1).replace(/[.,]0$/, '');
}

/**
 * What so many answers can show, in sentences.
 *
 * @param tasters how many people give them
 */
export function designWords(design: Design, method: Method, answers: number): string[] {
  const { minimumCorrect, expectedByGuessing, fewestTrials, trialsNeeded, chances } = design;
  const clear = chances.find(({ dPrime }) => dPrime === 1.5);
  const enough =
    trialsNeeded === null
      ? null
      : phrase`To find a clear difference 8 times in 10 it takes ${counted(trialsNeeded, 'answer')}.`;
  if (minimumCorrect === null) {
    const alone =
      answers === 1
        ? phrase`${counted(answers, 'answer')} can’t show a difference: even if it is right, that could be luck.`
        : phrase`${counted(answers, 'answer')} can’t show a difference: even if all are right, that could be luck.`;
    return [phrase`${alone} At least ${fewestTrials} are needed.`, ...(enough === null ? [] : [enough])];
  }
  const least = minimumCorrect === answers ? phrase`all ${answers}` : String(minimumCorrect);
  const counts =
    method === 'paired-two-sided'
      ? phrase`for the same jar`
      : method === 'paired'
        ? phrase`as expected`
        : phrase`right`;
  const luck = luckWords(expectedByGuessing);
  const first =
    method === 'paired-two-sided'
      ? phrase`Of ${counted(answers, 'answer')}, ${least} ${counts} would be more than luck; guessing alone gives about ${luck} each.`
      : phrase`Of ${counted(answers, 'answer')}, ${least} ${counts} would be more than luck; guessing alone gives about ${luck}.`;
  const found =
    clear === undefined
      ? null
      : phrase`A clear difference, if there is one, would be found ${timesInTen(clear.power)}.`;
  const isShort = trialsNeeded !== null && trialsNeeded > answers;
  return [first, ...(found === null ? [] : [found]), ...(enough !== null && isShort ? [enough] : [])];
}
