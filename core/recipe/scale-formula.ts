import type { FoodComposition } from '#core/ferment/food-composition.ts';
import { foodDensity_kg_per_m3 } from '#core/ferment/food-density.ts';
import { OutOfDomain, within } from '#core/out-of-domain.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import type { PantryMeasure } from '#core/pantry/pantry-ingredient.ts';
import type { Formula, FormulaAddition } from './formula.ts';

/** A formula worked out for one make: how much base to pour and what to weigh in. */
export interface ScaledFormula {
  readonly base_mL: number;
  readonly additions: readonly {
    readonly ingredient: string;
    readonly mass_g: number;
    readonly state: FormulaAddition['state'];
    readonly form?: string | undefined;
    /** For ingredients that the pantry does not have. */
    readonly composition?: FoodComposition | undefined;
    readonly measures?: readonly PantryMeasure[] | undefined;
  }[];
  /** Base and additions together; `null` when an addition's composition is unknown. */
  readonly contents_mL: number | null;
}

/** How much is wanted: so much base, or so much in the vessel once everything is in. */
export type WantedAmount = { readonly base_mL: number } | { readonly contents_mL: number };

/**
 * Works a formula out for a wanted amount, unrounded.
 *
 * Method: amounts are per litre of base, so they grow in proportion. When the contents are wanted, the base is what remains beside the
 * additions' volume (Choi–Okos at 20 °C). Leaves out losses on straining.
 *
 * @param formula amounts in grams per litre of base
 * @param wanted more than 0 mL, up to 1,000,000 mL
 * @throws OutOfDomain when the amount is outside that range, or contents are wanted and an addition's composition is unknown
 * @example scaleFormula(formula, { base_mL: 3000 }).additions[0].mass_g // three times the grams per litre
 */
export function scaleFormula(formula: Formula, wanted: WantedAmount): ScaledFormula {
  const perLitre = volumePerLitre_mL(formula);
  const base_mL = 'base_mL' in wanted ? wanted.base_mL : baseFor(wanted.contents_mL, perLitre);
  if (!(base_mL > 0)) throw new OutOfDomain('base_mL', base_mL, 'more than 0 to 1000000');
  within('base_mL', base_mL, 0, 1_000_000);
  return {
    base_mL,
    additions: formula.additions.map((one) => ({
      ingredient: one.ingredient,
      mass_g: (one.amount_g_per_L * base_mL) / 1000,
      state: one.state,
      ...(one.form === undefined ? {} : { form: one.form }),
      ...(one.composition === undefined ? {} : { composition: one.composition }),
    })),
    contents_mL: perLitre === null ? null : base_mL * (1 + perLitre / 1000),
  };
}

function baseFor(contents_mL: number, perLitre: number | null): number {
  if (perLitre === null) {
    throw new OutOfDomain('contents_mL', contents_mL, 'formulas whose additions all have a known composition');
  }
  return contents_mL / (1 + perLitre / 1000);
}

function volumePerLitre_mL(formula: Formula): number | null {
  let volume = 0;
  for (const addition of formula.additions) {
    const composition = addition.composition ?? findIngredient(addition.ingredient)?.composition;
    if (!composition) return null;
    volume += (1000 * addition.amount_g_per_L) / foodDensity_kg_per_m3(composition);
  }
  return volume;
}
