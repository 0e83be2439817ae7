import { knownSugars } from '#core/ferment/known-sugars.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import type { PantryMeasure } from '#core/pantry/pantry-ingredient.ts';
import type { ScaledFormula } from './scale-formula.ts';

/** What can be measured out: a scale with a step, or spoons and cups (to a quarter of each). */
export type KitchenTool = { readonly scaleStep_g: number } | { readonly spoons: true };

/** One amount as it will be measured, and what rounding did to it. */
export interface RoundedAddition {
  readonly ingredient: string;
  readonly exact_g: number;
  readonly rounded_g: number;
  /** Such as "1.25 tbsp"; `null` where it is weighed. */
  readonly spoons: {
    readonly count: number;
    readonly unit: PantryMeasure['unit'];
    readonly form: string | null;
  } | null;
  /** Per cent more or less than asked; 0 for nothing asked. */
  readonly change_pct: number;
}

/** A scaled formula as it will be measured out. */
export interface RoundedFormula {
  readonly additions: readonly RoundedAddition[];
  /** Sugar that rounding added per litre of base; `null` when an addition whose amount changed has unknown sugar. */
  readonly sugarChange_g_per_L: number | null;
}

/**
 * Rounds a scaled formula to what the kitchen can measure, and says what that changed.
 *
 * Method: to the scale's step; or, where the food table knows the ingredient's spoons, to the largest measure of which at least one is
 * needed, in quarters. An amount that would round to nothing keeps one step, so that no ingredient is silently dropped.
 *
 * @param scaled from `scaleFormula`
 * @param tool a scale with a step above 0 g, or spoons
 * @throws OutOfDomain when the step is not above 0
 * @example roundFormula(scaled, { scaleStep_g: 5 }).additions[0].change_pct
 */
export function roundFormula(scaled: ScaledFormula, tool: KitchenTool): RoundedFormula {
  if ('scaleStep_g' in tool && !(tool.scaleStep_g > 0 && Number.isFinite(tool.scaleStep_g))) {
    throw new OutOfDomain('scaleStep_g', tool.scaleStep_g, 'more than 0 g');
  }
  const additions = scaled.additions.map(({ ingredient, mass_g, form, measures }) => {
    const own = measures ?? findIngredient(ingredient)?.measures ?? [];
    const spoons = 'spoons' in tool ? bySpoons(own, mass_g, form ?? null) : null;
    const step_g = 'scaleStep_g' in tool ? tool.scaleStep_g : 1;
    const rounded_g = spoons ? spoons.rounded_g : roundUpFromNothing(mass_g, step_g) * step_g;
    return {
      ingredient,
      exact_g: mass_g,
      rounded_g,
      spoons: spoons ? { count: spoons.count, unit: spoons.unit, form: spoons.form } : null,
      change_pct: mass_g === 0 ? 0 : (100 * (rounded_g - mass_g)) / mass_g,
    };
  });
  return { additions, sugarChange_g_per_L: sugarChange(scaled, additions) };
}

/** Whole steps, but never none of something. */
function roundUpFromNothing(amount: number, step: number): number {
  return amount > 0 ? Math.max(1, Math.round(amount / step)) : 0;
}

function bySpoons(measures: readonly PantryMeasure[], mass_g: number, form: string | null) {
  const known = measures.filter((one) => one.unit !== 'each');
  const ofForm = known.filter((one) => one.form === form);
  // Without a form said, only an ingredient that is measured in one way has an unmistakable spoon.
  const fitting = ofForm.length > 0 ? ofForm : new Set(known.map((one) => one.form)).size === 1 ? known : [];
  const bySize = fitting.toSorted((a, b) => b.mass_g - a.mass_g);
  const chosen = bySize.find((one) => one.mass_g <= mass_g) ?? bySize.at(-1);
  if (!chosen) return null;
  const count = roundUpFromNothing(mass_g / chosen.mass_g, 0.25) / 4;
  return { count, unit: chosen.unit, form: chosen.form, rounded_g: count * chosen.mass_g };
}

function sugarChange(
  { additions: exact, base_mL }: ScaledFormula,
  additions: readonly RoundedAddition[],
): number | null {
  let change_g = 0;
  for (const [place, { ingredient, exact_g, rounded_g }] of additions.entries()) {
    if (rounded_g === exact_g) continue;
    const composition = exact[place]?.composition ?? findIngredient(ingredient)?.composition;
    const sugars = composition ? knownSugars(composition) : null;
    if (sugars === null) return null;
    change_g += ((rounded_g - exact_g) * (sugars.sucrose_g + sugars.hexose_g)) / 100;
  }
  return (1000 * change_g) / base_mL;
}
