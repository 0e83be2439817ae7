import { fullestJar, type JarVolumeOf, shareOfBase_mL } from '#core/trial/feasibility.ts';
import type { PlanInput } from '#core/trial/plan-input.ts';
import type { TrialPlan } from '#core/trial/plan-trial.ts';
import { inUnitOf } from '#core/units/format-quantity.ts';
import { units } from '#core/units/unit-table.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { addLevel, changeLevel, type PlanChange, removeLevel } from './change-plan.ts';
import type { PlanDraft } from './plan-draft.ts';
import type { Said } from './said.ts';
import { words } from './words.ts';

/** A way out of a problem that one tap takes. */
export interface WayOut {
  readonly words: string;
  readonly change: PlanChange;
}

export interface WaysOutOf {
  readonly draft: PlanDraft;
  readonly plan: PlanInput;
  readonly planned: TrialPlan;
  readonly volumeOf: JarVolumeOf;
  readonly measures: Measures;
}

/** Pours a volume into each jar, rounded down to what a kitchen pours. */
function pour(volume_mL: number, { draft, measures }: WaysOutOf): WayOut[] {
  if (draft.measures === 'us') {
    const cups = Math.floor(inUnitOf(volume_mL, units.cup) * 8) / 8;
    if (cups <= 0) return [];
    const text = phrase`${cups} cups`;
    return [
      { words: words.pour(measures.volume(cups * units.cup.factor)), change: (plan) => ({ ...plan, baseEach: text }) },
    ];
  }
  const whole = Math.floor(volume_mL);
  if (whole <= 0) return [];
  return [{ words: words.pour(`${whole} mL`), change: (plan) => ({ ...plan, baseEach: String(whole) }) }];
}

const oneEach: WayOut = { words: words.oneOfEach, change: (plan) => ({ ...plan, replicates: 1 }) };

function positionIn(at: string): number {
  return Number(at.split('.')[1] ?? 0);
}

function outOfTwoFactors(said: Said, { draft }: WaysOutOf): WayOut[] {
  const position = positionIn(said.at);
  const [first, here] = [draft.levels[0]?.additions, draft.levels[position]?.additions];
  const [theirs, ours] = [first?.[0], here?.[0]];
  const ways: WayOut[] = [];
  if (
    draft.factor === 'fruit' &&
    first?.length === 1 &&
    here?.length === 1 &&
    theirs !== undefined &&
    ours !== undefined
  ) {
    if (theirs.amount !== ours.amount || theirs.weight !== ours.weight) {
      const { amount, weight, state } = theirs;
      ways.push({
        words: words.weighSame(amount),
        change: changeLevel(position, { additions: [{ ...ours, amount, weight, state: ours.state || state }] }),
      });
    } else {
      ways.push({
        words: words.sameState,
        change: changeLevel(position, { additions: [{ ...ours, state: theirs.state || 'fresh' }] }),
      });
    }
  }
  ways.push({ words: words.askWholeFormula, change: (plan) => ({ ...plan, factor: 'formula' }) });
  return ways;
}

/** The ways out of a problem that one tap can take; none where only the maker can know. */
export function waysOut(said: Said, about: WaysOutOf): WayOut[] {
  const { draft, plan, planned, volumeOf } = about;
  switch (said.code) {
    case 'not-enough-base':
      return [...pour(shareOfBase_mL(plan), about), ...(draft.replicates > 1 ? [oneEach] : [])];
    case 'too-many-jars':
      return [oneEach];
    case 'jar-overfull': {
      const fullest = fullestJar(plan, planned.formulas, volumeOf);
      return fullest === null ? [] : pour(fullest.fits_mL, about);
    }
    case 'one-level':
      return [{ words: words.addJar, change: addLevel }];
    case 'levels-alike':
      return [
        {
          words: words.takeOut(plan.levels[positionIn(said.at)]?.name ?? ''),
          change: removeLevel(positionIn(said.at)),
        },
      ];
    case 'level-name-twice':
      return [{ words: words.nameItself, change: changeLevel(positionIn(said.at), { name: '' }) }];
    case 'two-factors-moved':
      return outOfTwoFactors(said, about);
    default:
      return [];
  }
}
