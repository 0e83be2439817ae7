import { jarVolume_mL } from '#core/ferment/jar-volume.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import type { JarVolumeOf } from '#core/trial/feasibility.ts';
import { ingredientName } from '#core/trial/formula.ts';
import { measuresOf } from '#renderer/format/use-measures.ts';
import { judgePlan } from '#renderer/pages/plan/judge-plan.ts';
import { type LevelDraft, newAddition, newLevel, newPlan, type PlanDraft } from '#renderer/pages/plan/plan-draft.ts';
import type { Base } from '#renderer/pages/plan/read-plan.ts';

export const volumeOf: JarVolumeOf = (base_mL, additions) => ({
  volume_mL: jarVolume_mL(
    base_mL,
    additions.flatMap(({ ingredient, mass_g }) => {
      const known = findIngredient(ingredientName(ingredient));
      return known === undefined ? [] : [{ mass_g, composition: known.composition }];
    }),
  ),
  uncertain: [],
});

export function levelTyped(key: string, change: Partial<LevelDraft>): LevelDraft {
  return { ...newLevel([]), key, ...change };
}

export function additionTyped(ingredient: string, amount: string, more: { weight?: string; key?: string } = {}) {
  return { ...newAddition([]), ingredient, amount, ...more };
}

const empty = newPlan('metric', '2026-05-01T09:00', 7);

/** A days plan as typed, with everything said. */
export const daysTyped: PlanDraft = {
  ...empty,
  question: 'How many days?',
  levels: [levelTyped('1', { value: '1' }), levelTyped('2', { value: '2,5' })],
  control: '1',
  baseAvailable: '2 L',
  baseEach: '800',
  held: { ...empty.held, cover: 'cloth', temperature: '22', additions: [additionTyped('raspberries', '75')] },
};

export function judged(change: Partial<PlanDraft> = {}, bases: readonly Base[] = []) {
  const draft = { ...daysTyped, ...change };
  return judgePlan(draft, { bases, measures: measuresOf(draft.measures), volumeOf });
}

export function saidIn(change: Partial<PlanDraft> = {}): string[] {
  return judged(change).sentences.map(({ at, kind }) => `${kind} at ${at}`);
}
