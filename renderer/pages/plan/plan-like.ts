import { type Addition, ingredientName } from '#core/trial/formula.ts';
import { inUnitOf } from '#core/units/format-quantity.ts';
import type { Unit } from '#core/units/unit-table.ts';
import { shownNumber } from '#core/words/figures.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type AdditionDraft, newAddition, newLevel, newPlan, type PlanDraft } from './plan-draft.ts';
import { readAmount } from './read-amount.ts';
import { readLevel } from './read-level.ts';
import { bareUnits } from './read-quantity.ts';

type Trial = ValueOf<'trials:open'>;

function figure(value: number): string {
  return shownNumber(Number(value.toFixed(3)));
}

function inBare(stored: number | null | undefined, unit: Unit): string {
  return stored == null ? '' : figure(inUnitOf(stored, unit));
}

/** What was written is kept where it still says the same weight. */
function amountOf({ asWritten, mass_g, ingredient }: Addition): Pick<AdditionDraft, 'amount' | 'weight'> {
  const grams = `${figure(mass_g)} g`;
  if (asWritten === undefined) return { amount: grams, weight: '' };
  const read = readAmount(asWritten, ingredientName(ingredient));
  if (read.kind === 'unweighed') return { amount: asWritten, weight: grams };
  const same = read.kind === 'grams' && Math.abs(read.mass_g - mass_g) <= 0.005 * mass_g;
  return same ? { amount: asWritten, weight: '' } : { amount: grams, weight: '' };
}

function additionsOf(additions: readonly Addition[]): AdditionDraft[] {
  if (additions.length === 0) return [newAddition([])];
  return additions.map((addition, place) => ({
    ...newAddition([]),
    key: String(place + 1),
    ingredient: ingredientName(addition.ingredient),
    ...amountOf(addition),
    state: addition.state,
    end: addition.leftIn === undefined ? '' : addition.leftIn ? 'left-in' : 'strained-out',
  }));
}

/** In a fruit trial each jar holds its own fruit and what is held for all; only its own is typed at the jar. */
function ownOf(additions: readonly Addition[], { factor, held }: Trial): readonly Addition[] {
  if (factor !== 'fruit') return additions;
  const shared = held.additions.map((addition) => JSON.stringify(addition));
  return additions.filter((addition) => !shared.includes(JSON.stringify(addition)));
}

/** Jars that name themselves stay so: their name follows what is typed. */
function withNames(draft: PlanDraft, trial: Trial, measures: Measures): PlanDraft {
  return {
    ...draft,
    levels: draft.levels.map((level, place) => {
      const name = trial.levelsWhole[place]?.name ?? '';
      return readLevel(draft, place, measures).level.name === name ? level : { ...level, name };
    }),
  };
}

/**
 * A new plan that asks the same as a past trial.
 *
 * Leaves out: the start, which is new, and the base, which is used up.
 *
 * @param start local time as a date field writes it
 */
export function planLike(trial: Trial, measures: Measures, start: string, seed: number): PlanDraft {
  const volume = bareUnits.volume[measures.system];
  const warmth = bareUnits.temperature[measures.system];
  const levels = trial.levelsWhole.map((level, place) => {
    const { formula } = level;
    const value =
      trial.factor === 'temperature' ? inBare(level.value, warmth) : level.value === null ? '' : figure(level.value);
    const isFormula = trial.factor === 'formula';
    const brings = isFormula || trial.factor === 'fruit';
    const solid = formula.additions.find(({ state }) => state !== 'liquid') ?? formula.additions[0];
    return {
      ...newLevel([]),
      key: String(place + 1),
      value: trial.factor === 'amount' && value !== '' ? `${value} g` : value,
      state: trial.factor === 'state' ? (solid?.state ?? ('' as const)) : ('' as const),
      cover: trial.factor === 'cover' || isFormula ? (formula.cover ?? ('' as const)) : ('' as const),
      days: isFormula ? figure(formula.days) : '',
      temperature: isFormula ? inBare(formula.temperature_C, warmth) : '',
      additions: brings ? additionsOf(ownOf(formula.additions, trial)) : [newAddition([])],
    };
  });
  const control = trial.levelsWhole.findIndex(({ isControl }) => isControl);
  const { held, vessel } = trial;
  const also = Object.entries(held.also).map(([name, said], place) => ({
    key: String(place + 1),
    name,
    value: typeof said === 'boolean' ? (said ? 'yes' : 'no') : String(said),
  }));
  const draft: PlanDraft = {
    ...newPlan(measures.system, start, seed),
    question: trial.question,
    factor: trial.factor,
    levels,
    control: levels[control]?.key ?? '',
    replicates: trial.replicates,
    baseEach: inBare(trial.baseEach_mL, volume),
    vessel: {
      kind: vessel.kind,
      capacity: inBare(vessel.capacity_mL, volume),
      diameter: inBare(vessel.diameter_mm, bareUnits.length[measures.system]),
      rated: inBare(vessel.ratedGauge_bar, bareUnits.pressure[measures.system]),
    },
    held: {
      additions: additionsOf(held.additions),
      days: held.days === null ? '' : figure(held.days),
      cover: held.cover ?? '',
      temperature: inBare(held.temperature_C, warmth),
      also,
    },
    calendar: trial.calendar,
  };
  return withNames(draft, trial, measures);
}
