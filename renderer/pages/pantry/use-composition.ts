import { shownNumber } from '#core/words/figures.ts';
import { amountOf, isClear, typedShare } from '#renderer/format/typed-amount.ts';
import { type Amount, useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { words } from './words.ts';

export const compositionFields = ['water_g', 'sugars_g', 'glucose_g', 'fructose_g', 'sucrose_g'] as const;
export type CompositionField = (typeof compositionFields)[number];

export const compositionLabels: Readonly<Record<CompositionField, string>> = {
  water_g: words.form.water,
  sugars_g: words.form.sugars,
  glucose_g: words.form.glucose,
  fructose_g: words.form.fructose,
  sucrose_g: words.form.sucrose,
};

export interface Composition {
  readonly fields: Readonly<Record<CompositionField, Amount>>;
  readonly isClear: boolean;
  /** What was said, as the desk takes it. */
  readonly given: Partial<Record<CompositionField, number>>;
}

/** The fields of what 100 g hold. */
export function useComposition(first: Readonly<Record<CompositionField, number | null>>): Composition {
  const shown = (value: number | null) => (value === null ? '' : shownNumber(value));
  const fields = {
    water_g: useAmount(shown(first.water_g), typedShare),
    sugars_g: useAmount(shown(first.sugars_g), typedShare),
    glucose_g: useAmount(shown(first.glucose_g), typedShare),
    fructose_g: useAmount(shown(first.fructose_g), typedShare),
    sucrose_g: useAmount(shown(first.sucrose_g), typedShare),
  };
  const given: Partial<Record<CompositionField, number>> = {};
  for (const field of compositionFields) {
    const value = amountOf(fields[field].typed);
    if (value !== undefined) given[field] = value;
  }
  return { fields, isClear: compositionFields.every((field) => isClear(fields[field].typed)), given };
}
