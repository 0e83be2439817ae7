import { isOrdered } from '#core/trial/factor.ts';
import { findingAgainstControl } from '#core/trial/finding-against-control.ts';
import { type FindingFrame, sureEnough } from '#core/trial/finding-frame.ts';
import { findingHeadline } from '#core/trial/finding-headline.ts';
import { findingSentence } from '#core/trial/finding-sentence.ts';
import { adjustedChances, surenessOf } from '#core/trial/finding-sureness.ts';
import { revealedScores, scalesOfTrial } from '#store/tastings.ts';
import { findTrial, type TrialWhole } from '#store/trials.ts';
import { found } from './found.ts';
import type { Handlers } from './handler.ts';
import { analyseWatched } from './panel.ts';

/** Each level's number on the factor's line; null where the factor has none or a level lacks one. */
function levelNumbers(trial: TrialWhole): Record<string, number> | null {
  const values = trial.levelsWhole.flatMap(({ name, value }) => (value === null ? [] : [[name, value] as const]));
  return isOrdered(trial.factor) && values.length === trial.levelsWhole.length ? Object.fromEntries(values) : null;
}

export const findingHandlers: Handlers<'findings:read'> = {
  'findings:read'(kitchen, { trial: id }, watch) {
    const trial = found(findTrial(kitchen.read, id), 'trial', 'trial');
    const scores = revealedScores(kitchen.read, id);
    const closed = kitchen.read.one<{ n: number }>(
      'SELECT count(*) AS n FROM tastings WHERE trial_id = ? AND closed_at IS NOT NULL',
      id,
    );
    const levels = levelNumbers(trial);
    const control = trial.levelsWhole.find(({ isControl }) => isControl)?.name ?? null;
    const scales = scalesOfTrial(kitchen.read, id);
    const liking = scores.find(({ attribute }) => attribute.toLowerCase() === 'liking')?.attribute ?? null;
    const analysis =
      scores.length === 0
        ? null
        : analyseWatched(
            {
              scores,
              ...(control === null ? {} : { control }),
              ...(levels === null ? {} : { levels }),
              scales,
              liking: liking ?? 'liking',
            },
            watch,
          );
    const attributes = analysis?.attributes ?? [];
    const frame: FindingFrame = { factor: trial.factor, control, replicates: trial.replicates, scales };
    const chances = adjustedChances(attributes);
    return {
      trial: id,
      tastings: closed?.n ?? 0,
      scores,
      levels,
      scales,
      control,
      liking,
      analysis,
      headline: findingHeadline(attributes, liking, frame),
      sentences: attributes.map((attribute) => {
        const chance = chances.get(attribute.attribute) ?? null;
        return {
          attribute: attribute.attribute,
          sentence: findingSentence(attribute, frame, chance),
          againstControl: findingAgainstControl(attribute, control, chance !== null && chance < sureEnough),
          sureness: surenessOf(chance),
          chance,
        };
      }),
    };
  },
};
