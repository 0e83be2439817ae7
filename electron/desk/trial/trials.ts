import type { PlanInput } from '#core/trial/plan-input.ts';
import { planTrial, type TrialPlan } from '#core/trial/plan-trial.ts';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import type { Reader } from '#store/reader.ts';
import { findBase } from '#store/rows/bases.ts';
import { findTrial, listTrials } from '#store/rows/trials.ts';
import { bothVolumes } from '../cellar/both-volumes.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { compositionIn, jarVolumeIn } from '../pantry/pantry-lookup.ts';
import { insertTrial } from './insert-trial.ts';

function planned(kitchen: Kitchen, input: PlanInput): TrialPlan {
  return planTrial(input, jarVolumeIn(compositionIn(kitchen)));
}

/** A plan that can't work is never saved: the first reason is the failure, at its field. */
function assertFeasible(plan: TrialPlan): void {
  const [first] = plan.problems;
  if (first !== undefined) throw new Failure('refused', first.message, first.path);
}

function assertBaseLeft(read: Reader, base: string, needed_mL: number): void {
  const found_ = found(findBase(read, base), 'base', 'base');
  if (needed_mL <= found_.left_mL + 1e-6) return;
  throw new Failure(
    'refused',
    phrase`The jars need ${bothVolumes(needed_mL)} of “${found_.name}”; ${bothVolumes(found_.left_mL)} of it are not allotted yet. Pour less into each jar, or start another base.`,
    ['base'],
  );
}

export const trialHandlers: Handlers<
  'trials:plan' | 'trials:save' | 'trials:list' | 'trials:open' | 'trials:annotate' | 'trials:remove'
> = {
  'trials:plan'(kitchen, input) {
    const { jars, feasible, problems, notes } = planned(kitchen, input);
    return {
      jars: jars.map((jar) => ({ ...jar, additions: [...jar.additions] })),
      feasible,
      problems: [...problems],
      notes: [...notes],
    };
  },
  'trials:save'(kitchen, input) {
    const plan = planned(kitchen, input);
    assertFeasible(plan);
    const needed_mL = plan.jars.length * input.baseEach_mL;
    if (input.base !== undefined) assertBaseLeft(kitchen.read, input.base, needed_mL);
    return kitchen.write({ request: 'trials:save', summary: phrase`Plan the trial “${input.question}”` }, (writer) => {
      if (input.base !== undefined) assertBaseLeft(writer, input.base, needed_mL);
      return insertTrial(writer, input, plan);
    });
  },
  'trials:list'(kitchen, { after, ...part }) {
    const behind = after === undefined ? undefined : found(kitchen.read.row('trials', after), 'trial', 'after');
    const { rows, more } = listTrials(kitchen.read, {
      ...part,
      after: behind && { at: behind.starts_at, id: behind.id },
    });
    return { trials: rows, ...(more ? { more: true as const } : {}) };
  },
  'trials:open': (kitchen, { trial }) => found(findTrial(kitchen.read, trial), 'trial', 'trial'),
  'trials:annotate'(kitchen, input) {
    const before = found(kitchen.read.row('trials', input.trial), 'trial', 'trial');
    const values = {
      ...(input.question === undefined ? {} : { question: input.question }),
      ...(input.note === undefined ? {} : { note: input.note }),
    };
    return kitchen.write(
      { request: 'trials:annotate', summary: phrase`Change the words of “${before.question}”` },
      (writer) => ({ trial: writer.update('trials', input.trial, values, input.revision).id }),
    );
  },
  'trials:remove'(kitchen, { trial }) {
    const row = found(kitchen.read.row('trials', trial), 'trial', 'trial');
    if (kitchen.read.one('SELECT id FROM recipe_versions WHERE trial_id = ? LIMIT 1', trial) !== undefined) {
      throw new Failure('refused', phrase`A house recipe came from this trial and leads back to it; it stays.`, [
        'trial',
      ]);
    }
    return kitchen.write(
      { request: 'trials:remove', summary: phrase`Remove the trial “${row.question}”` },
      (writer) => {
        writer.remove('trials', trial);
        return { trial };
      },
    );
  },
};
