import { foodDensity_kg_per_m3 } from '#core/ferment/food-density.ts';
import { knownSugars } from '#core/ferment/known-sugars.ts';
import { OutOfDomain, within } from '#core/out-of-domain.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import type { Formula } from './formula.ts';

/** What one glass costs and how much sugar went into it. */
export interface Serving {
  /** In the currency of the prices; `null` when a price is missing. */
  readonly cost: number | null;
  /** Sugar put in, before any of it ferments; `null` when some sugar is unknown. */
  readonly sugar_g: number | null;
  /** What is missing for the cost or the sugar, by name. */
  readonly missing: { readonly prices: readonly string[]; readonly sugars: readonly string[] };
}

/** Prices of the base per litre and of each ingredient per kilogram. */
export interface Prices {
  readonly base_per_L?: number | undefined;
  readonly per_kg: Readonly<Record<string, number>>;
}

/**
 * Cost and sugar of one serving of a formula.
 *
 * Method: what goes with a litre of base, shared over the volume it gives. Leaves out labour, jars, losses on straining, and the sugar that ferments
 * away (so the sugar is an upper bound).
 *
 * @param formula the formula @param serving_mL more than 0, up to 5000 @param prices at least 0 each
 * @returns cost and sugar per serving; what cannot be known is `null` and named
 * @throws OutOfDomain when the serving or a price is outside its range, or the base's sugar is negative
 * Accuracy: that of the food table.
 * @example serving(formula, 250, { base_per_L: 1, per_kg: { raspberries: 12 } })
 */
export function serving(formula: Formula, serving_mL: number, prices: Prices): Serving {
  if (!(serving_mL > 0 && serving_mL <= 5000)) throw new OutOfDomain('serving_mL', serving_mL, 'more than 0 to 5000');
  const missing = { prices: [] as string[], sugars: [] as string[] };
  let volume_mL = 1000;
  let cost = priced(formula.base.name, prices.base_per_L, 1, missing.prices);
  let sugar_g = formula.base.sugar_g_per_L ?? 0;
  if (formula.base.sugar_g_per_L === undefined) missing.sugars.push(formula.base.name);
  for (const { ingredient, amount_g_per_L, composition } of formula.additions) {
    cost += priced(ingredient, prices.per_kg[ingredient], amount_g_per_L / 1000, missing.prices);
    const food = composition ?? findIngredient(ingredient)?.composition;
    const sugars = food ? knownSugars(food) : null;
    if (sugars === null) missing.sugars.push(ingredient);
    else sugar_g += (amount_g_per_L * (sugars.sucrose_g + sugars.hexose_g)) / 100;
    // An ingredient nobody knows is taken as heavy as water: it moves the volume by a few per cent of its own at most.
    volume_mL += (1000 * amount_g_per_L) / (food ? foodDensity_kg_per_m3(food) : 1000);
  }
  const glass = serving_mL / volume_mL;
  return {
    cost: missing.prices.length > 0 ? null : cost * glass,
    sugar_g: missing.sugars.length > 0 ? null : sugar_g * glass,
    missing,
  };
}

function priced(name: string, price: number | undefined, amount: number, missing: string[]): number {
  if (price === undefined) {
    missing.push(name);
    return 0;
  }
  return amount * within(`price of ${name}`, price, 0, Number.MAX_VALUE);
}
