import { tasterAgreement } from '#core/panel/tasters/taster-agreement.ts';
import { agreementSentence } from '#core/trial/agreement-sentence.ts';
import { setAsidesOf } from '#store/rows/set-asides.ts';
import { revealedScores, scalesOfTrial } from '#store/rows/tastings.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';

export const tasterFindingHandlers: Handlers<'findings:tasters'> = {
  'findings:tasters'(kitchen, { trial }) {
    found(kitchen.read.row('trials', trial), 'trial', 'trial');
    const aside = new Set(setAsidesOf(kitchen.read, trial).map(({ name }) => name));
    const scales = scalesOfTrial(kitchen.read, trial);
    const attributes = Map.groupBy(revealedScores(kitchen.read, trial), ({ attribute }) => attribute);
    return {
      attributes: [...attributes].map(([attribute, scores]) => {
        const tasters = tasterAgreement(scores).map((use) => ({ ...use, isAside: aside.has(use.taster) }));
        const values = scores.map(({ score }) => score);
        return {
          attribute,
          scale: scales[attribute] ?? [Math.min(...values), Math.max(...values)],
          tasters,
          sentence: agreementSentence(attribute, tasters),
        };
      }),
    };
  },
};
