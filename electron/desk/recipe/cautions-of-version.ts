import { baseAlcohol } from '#core/ferment/base-alcohol.ts';
import type { JarAddition } from '#core/ferment/jar-input.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { recipeCautions } from '#core/recipe/recipe-cautions.ts';
import type { Kitchen } from '#store/kitchen.ts';
import type { RecipeDraft } from '#store/rows/recipes.ts';
import { compositionIn } from '../pantry/pantry-lookup.ts';
import { ownOf, ownPantry } from '../pantry/whole-pantry.ts';

/** How warm a kitchen is when nobody says. Common practice, no source. */
const room_C = 22;

/** The usual cautions of a version, from its formula, its vessel, and what the kitchen knows of base and ingredients. */
export function cautionsOfVersion(
  kitchen: Kitchen,
  version: Pick<RecipeDraft, 'formula' | 'base_mL' | 'vessel' | 'base'>,
): RecipeDraft['cautions'] {
  const base = version.base === null ? undefined : kitchen.read.row('bases', version.base.id);
  const own = ownPantry(kitchen);
  const compositionOf = compositionIn(kitchen);
  const sugar_g_per_L = base?.sugar_now_g_per_L ?? base?.sugar_start_g_per_L ?? null;
  const held =
    base === undefined
      ? null
      : baseAlcohol({
          alcohol_pctVol: base.alcohol_pctVol,
          sugarStart_g_per_L: base.sugar_start_g_per_L,
          sugarNow_g_per_L: base.sugar_now_g_per_L,
        });
  const mine = version.formula.additions.flatMap(({ ingredient }) =>
    typeof ingredient === 'string' ? (ownOf(own, ingredient) ?? []) : [],
  );
  const known = version.formula.additions.flatMap(({ ingredient, mass_g, state }): JarAddition[] => {
    if (typeof ingredient !== 'string') return [{ ingredient, mass_g, state }];
    const isBuiltIn = ownOf(own, ingredient) === undefined && findIngredient(ingredient) !== undefined;
    if (isBuiltIn) return [{ ingredient, mass_g, state }];
    const composition = compositionOf(ingredient);
    return composition === null ? [] : [{ ingredient: { name: ingredient, ...composition }, mass_g, state }];
  });
  const temperature_C = version.formula.temperature_C ?? room_C;
  const jar = {
    vessel: version.vessel,
    base: {
      volume_mL: version.base_mL,
      temperature_C,
      sugar_g_per_L: sugar_g_per_L ?? 0,
      alcohol_pctVol: held?.pctVol ?? 0,
    },
    additions: known,
    ambient_C: temperature_C,
  };
  return recipeCautions(jar, {
    isSugarKnown: sugar_g_per_L !== null && known.length === version.formula.additions.length,
    ownAllergens: [...new Set(mine.flatMap(({ allergens }) => allergens))],
  });
}
