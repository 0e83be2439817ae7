import { counted } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Method } from './words.ts';

type Design = ValueOf<'panel:discriminationDesign'>;

/** "8 times in 10": a chance as a cook would say it; never a flat never or always. */
export function timesInTen(chance: number): string {
  if (chance >= 0.95) return 'nearly every time';
  if (chance < 0.05) return 'hardly ever';
  const times = Math.max(1, Math.round(chance * 10));
  return `${times} ${times === 1 ? 'time' : 'times'} in 10`;
}

/** A count that guessing gives on average. @example luckWords(4.5) // '4.5' */
export function luckWords(expected: number): string {
  return expected.toFixed(1).replace('.0', '');
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
      : `To find a clear difference 8 times in 10 it takes ${counted(trialsNeeded, 'answer')}.`;
  if (minimumCorrect === null) {
    const alone = `${counted(answers, 'answer')} can’t show a difference: even if ${answers === 1 ? 'it is' : 'all are'} right, that could be luck.`;
    return [`${alone} At least ${fewestTrials} are needed.`, ...(enough === null ? [] : [enough])];
  }
  const least = minimumCorrect === answers ? `all ${answers}` : String(minimumCorrect);
  const counts = method === 'paired-two-sided' ? 'for the same jar' : method === 'paired' ? 'as expected' : 'right';
  const luck = luckWords(expectedByGuessing);
  const first = `Of ${counted(answers, 'answer')}, ${least} ${counts} would be more than luck; guessing alone gives about ${luck}${method === 'paired-two-sided' ? ' each' : ''}.`;
  const found =
    clear === undefined ? null : `A clear difference, if there is one, would be found ${timesInTen(clear.power)}.`;
  const isShort = trialsNeeded !== null && trialsNeeded > answers;
  return [first, ...(found === null ? [] : [found]), ...(enough !== null && isShort ? [enough] : [])];
}
