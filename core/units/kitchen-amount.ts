import { findIngredient } from '#core/pantry/find-ingredient.ts';
import type { PantryIngredient, PantryMeasure } from '#core/pantry/pantry-ingredient.ts';
import { phrase } from '#core/words/phrase.ts';
import { type Grams, grams } from './branded.ts';
import { type Parsed, parseQuantity, type Quantity, type QuantityProblem } from './parse-quantity.ts';
import { usMeasure_mL } from './unit-table.ts';

/** An amount of an ingredient in grams, and how it was arrived at. */
export interface KitchenAmount {
  readonly mass_g: Grams;
  /** The measure of the food table that was used; `null` when the amount was written as a mass. */
  readonly measure: PantryMeasure | null;
}

/** An ingredient by its name and by what its measures weigh. */
export type MeasuredIngredient = Pick<PantryIngredient, 'name' | 'measures'>;

const measureVolume_mL: Readonly<Record<string, number>> = {
  cup: usMeasure_mL.cup,
  'fl oz': usMeasure_mL.fluidOunce,
  tbsp: usMeasure_mL.tablespoon,
  tsp: usMeasure_mL.teaspoon,
};

const sameForm: Readonly<Record<string, string>> = {
  slices: 'sliced',
  halves: 'halved',
  pureed: 'mashed',
  puréed: 'mashed',
  crushed: 'mashed',
  diced: 'chopped',
  chunks: 'chopped',
  cubes: 'chopped',
  cubed: 'chopped',
  pieces: 'chopped',
  frozen: 'unthawed',
  'without pits': 'pitted',
};

/**
 * Grams of an ingredient from an amount the way a cook writes it: "1/2 cup sliced", "2 tbsp", "75 g".
 *
 * Method: a mass is taken as it is; a volume goes by the ingredient's own household measure in the food table, per form (a cup of
 * sliced strawberries is 166 g, of whole ones 144 g), scaled between measures by volume. Where the table has several forms and none is
 * said, it asks instead of guessing.
 *
 * @param text number, unit and, where it matters, the form
 * @param ingredient the ingredient, or a name the pantry answers to
 * Accuracy: a measured cup of fruit varies by about a tenth; weigh where it matters.
 * Source: USDA SR28, gram weights of household measures.
 * @example kitchenAmount('1/2 cup sliced', 'strawberries') // 83 g
 */
export function kitchenAmount(text: string, ingredient: string | MeasuredIngredient): Parsed<KitchenAmount> {
  const quantity = parseQuantity(text);
  if (!quantity.ok) return quantity;
  if (quantity.value.unit.dimension === 'mass') {
    return { ok: true, value: { mass_g: grams(quantity.value.stored), measure: null } };
  }
  const known = typeof ingredient === 'string' ? findIngredient(ingredient) : ingredient;
  if (!known) {
    const said = quantity.value.unit.symbol || 'piece';
    return refused(
      'ingredient-unknown',
      phrase`The pantry does not know what a ${said} of "${String(ingredient)}" weighs; give it in grams.`,
    );
  }
  return byMeasure(quantity.value, known);
}

function byMeasure(quantity: Quantity, known: MeasuredIngredient): Parsed<KitchenAmount> {
  const { unit } = quantity;
  if (unit.dimension !== 'volume' && unit.dimension !== 'count') {
    return refused(
      'wrong-kind',
      phrase`${unit.symbol} does not say how much ${known.name}; write a mass or a measure.`,
    );
  }
  const counted = unit.dimension === 'count';
  const candidates = known.measures.filter((one) => (one.unit === 'each') === counted);
  if (candidates.length === 0) {
    return refused(
      'measure-unknown',
      phrase`No weight is known for a ${unit.symbol || 'piece'} of ${known.name}; give it in grams.`,
    );
  }
  const said = quantity.rest
    .toLowerCase()
    .replace(/^of\s+/, '')
    .trim();
  const form = said === '' || said === known.name ? null : (sameForm[said] ?? said);
  const ofForm = candidates.filter((one) => one.form === form);
  const fitting = form === null && ofForm.length === 0 && oneForm(candidates) ? candidates : ofForm;
  const chosen = fitting.find((one) => one.unit === unit.symbol) ?? fitting[0];
  if (!chosen) {
    const offered = candidates.map((one) => phrase`${one.form ?? 'plain'} (${one.mass_g} g a ${one.unit})`).join(', ');
    return form === null
      ? refused('form-missing', phrase`Say which: ${known.name} are measured ${offered}.`)
      : refused('form-unknown', phrase`No weight is known for ${known.name} "${said}"; known: ${offered}.`);
  }
  const perUnit = counted ? quantity.stored : quantity.stored / (measureVolume_mL[chosen.unit] ?? Number.NaN);
  return { ok: true, value: { mass_g: grams(perUnit * chosen.mass_g), measure: chosen } };
}

function oneForm(measures: readonly PantryMeasure[]): boolean {
  return new Set(measures.map((one) => one.form)).size === 1;
}

function refused(code: QuantityProblem['code'], message: string): { ok: false; problem: QuantityProblem } {
  return { ok: false, problem: { code, message } };
}
