import type { Addition, AdditionState } from '#core/trial/formula.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import type { AdditionDraft } from './plan-draft.ts';
import { readAmount } from './read-amount.ts';
import { fault, gap, type Said } from './said.ts';
import { words } from './words.ts';

export interface ReadAddition {
  /** Null where something is missing or can't be read. */
  readonly addition: Addition | null;
  readonly said: readonly Said[];
}

export interface AdditionReading {
  /** Where only the ingredient counts, the weight that stands in for one. */
  readonly massInstead_g?: number | undefined;
  /** What the owner's own measures weigh. */
  readonly measured?: Measures['measured'] | undefined;
}

/** A row that nobody has written in. */
export function isBlank({ ingredient, amount, weight }: AdditionDraft): boolean {
  return `${ingredient}${amount}${weight}`.trim() === '';
}

/** Fresh, frozen or liquid: as chosen, or as the ingredient's name says. */
export function stateOf({ state, ingredient }: AdditionDraft): AdditionState {
  if (state !== '') return state;
  if (/\bfrozen\b/i.test(ingredient)) return 'frozen';
  return /juice|water|syrup|honey|molasses|\btea\b/i.test(ingredient) && !/melon/i.test(ingredient)
    ? 'liquid'
    : 'fresh';
}

function massOf(draft: AdditionDraft, at: string, reading: AdditionReading): { mass_g: number } | Said {
  const { massInstead_g, measured } = reading;
  if (massInstead_g !== undefined) return { mass_g: massInstead_g };
  const amount = readAmount(draft.amount, draft.ingredient, { measured });
  if (amount.kind === 'none') return gap(`${at}.amount`, words.says.amountMissing);
  if (amount.kind === 'fault') return fault(`${at}.amount`, amount.message);
  if (amount.kind === 'grams') return { mass_g: amount.mass_g };
  const weight = readAmount(draft.weight, draft.ingredient, { measured });
  if (weight.kind === 'grams' && !weight.fromMeasure) return { mass_g: weight.mass_g };
  if (weight.kind === 'none') return gap(`${at}.weight`, words.says.weightMissing);
  return fault(`${at}.weight`, weight.kind === 'fault' ? weight.message : words.says.weightNotGrams);
}

function writtenOf(
  draft: AdditionDraft,
  hasAmount: boolean,
  measured: AdditionReading['measured'],
): { asWritten?: string } {
  const amount = readAmount(draft.amount, draft.ingredient, { measured });
  const isMeasure = amount.kind === 'unweighed' || (amount.kind === 'grams' && amount.fromMeasure);
  return hasAmount && isMeasure ? { asWritten: draft.amount.trim().slice(0, 200) } : {};
}

/** One addition as typed, read into what a plan needs. */
export function readAddition(draft: AdditionDraft, at: string, reading: AdditionReading = {}): ReadAddition {
  const said: Said[] = [];
  const ingredient = draft.ingredient.trim();
  if (ingredient === '') said.push(gap(`${at}.ingredient`, words.says.ingredientMissing));
  if (ingredient.length > 200) said.push(fault(`${at}.ingredient`, words.says.tooLong));
  const mass = massOf(draft, at, reading);
  if ('kind' in mass) said.push(mass);
  if (said.length > 0 || 'kind' in mass) return { addition: null, said };
  return {
    addition: {
      ingredient,
      mass_g: mass.mass_g,
      state: stateOf(draft),
      ...writtenOf(draft, reading.massInstead_g === undefined, reading.measured),
      ...(draft.end === '' ? {} : { leftIn: draft.end === 'left-in' }),
    },
    said,
  };
}

/** Several rows; blank ones are passed over. */
export function readAdditions(
  drafts: readonly AdditionDraft[],
  at: string,
  options: AdditionReading = {},
): { additions: Addition[]; said: Said[]; isWhole: boolean } {
  const read = drafts.flatMap((draft, place) =>
    isBlank(draft) ? [] : [readAddition(draft, `${at}.${place}`, options)],
  );
  return {
    additions: read.flatMap(({ addition }) => (addition === null ? [] : [addition])),
    said: read.flatMap(({ said }) => said),
    isWhole: read.every(({ addition }) => addition !== null),
  };
}
