import { discriminationPower, trialsNeeded } from '#core/panel/apart/discrimination-power.ts';
import { minimumCorrect } from '#core/panel/apart/minimum-correct.ts';
import { chanceCorrect, guessing } from '#core/panel/apart/thurstone.ts';
import type { Reason } from '#core/reason.ts';
import { phrase } from '#core/words/phrase.ts';
import type { InputOf } from '#shared/contract/all-requests.ts';
import type { Computers } from '../handler.ts';

/** A slight, a clear and a large difference, as d′ (common practice, no source). */
const sizes = [1, 1.5, 2];
/** Nobody pours a larger test for two jars. */
const mostTrials = 1000;

/** The fewest answers of which all right would be more than luck: at 5 %, three in a triangle. */
function fewestTrials(method: InputOf<'panel:discriminationDesign'>['method'], alpha: number): number {
  let trials = 1;
  while (minimumCorrect(method, trials, alpha) === null) trials += 1;
  return trials;
}

export const discriminationDesignComputers: Computers<'panel:discriminationDesign'> = {
  'panel:discriminationDesign'({ method, trials, dPrime, alpha, power }) {
    const reasons: Reason[] = [];
    const fewest = fewestTrials(method, alpha);
    const minimum = minimumCorrect(method, trials, alpha);
    if (minimum === null) {
      const needs = phrase`at least ${fewest} answers: with ${trials} even all right could be luck`;
      reasons.push({ path: ['minimumCorrect'], code: 'too-few-scores', needs });
    }
    const needed = trialsNeeded(method, dPrime, alpha, power, mostTrials);
    if (needed === null) {
      const needs = phrase`a larger difference: even ${mostTrials} answers would not find this one`;
      reasons.push({ path: ['trialsNeeded'], code: 'too-few-scores', needs });
    }
    return {
      minimumCorrect: minimum,
      expectedByGuessing: trials * guessing(method),
      fewestTrials: fewest,
      chances: sizes.map((size) => ({
        dPrime: size,
        right: chanceCorrect(method, size),
        power: discriminationPower(method, size, trials, alpha),
      })),
      trialsNeeded: needed,
      reasons,
    };
  },
};
