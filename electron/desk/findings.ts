import { isOrdered } from '#core/trial/factor.ts';
import { findingSentence } from '#core/trial/finding-sentence.ts';
import { revealedScores, scalesOfTrial } from '#store/tastings.ts';
import { findTrial } from '#store/trials.ts';
import { found } from './found.ts';
import type { Handlers } from './handler.ts';
import { analyseWatched } from './panel.ts';

export const findingHandlers: Handlers<'findings:read'> = {
  'findings:read'(kitchen, { trial: id }, watch) {
    const trial = found(findTrial(kitchen.read, id), 'trial', 'trial');
    const scores = revealedScores(kitchen.read, id);
    const closed = kitchen.read.one<{ n: number }>(
      'SELECT count(*) AS n FROM tastings WHERE trial_id = ? AND closed_at IS NOT NULL',
      id,
    );
    const values = trial.levelsWhole.flatMap(({ name, value }) => (value === null ? [] : [[name, value] as const]));
    const levels =
      isOrdered(trial.factor) && values.length === trial.levelsWhole.length ? Object.fromEntries(values) : null;
    const control = trial.levelsWhole.find(({ isControl }) => isControl)?.name ?? null;
    const scales = scalesOfTrial(kitchen.read, id);
    const analysis =
      scores.length === 0
        ? null
        : analyseWatched(
            {
              scores,
              ...(control === null ? {} : { control }),
              ...(levels === null ? {} : { levels }),
              scales,
            },
            watch,
          );
    return {
      trial: id,
      tastings: closed?.n ?? 0,
      scores,
      levels,
      scales,
      control,
      analysis,
      sentences: (analysis?.attributes ?? []).map((attribute) => ({
        attribute: attribute.attribute,
        sentence: findingSentence(attribute, { factor: trial.factor, control, replicates: trial.replicates }),
      })),
    };
  },
};
