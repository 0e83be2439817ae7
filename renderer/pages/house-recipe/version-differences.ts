import { differenceOfVersions } from '#core/recipe/difference-of-versions.ts';
import type { Formula } from '#core/recipe/formula.ts';
import { ingredientName } from '#core/trial/formula.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

type Version = ValueOf<'recipes:open'>['versionList'][number];

/** A version in the words of the recipe room: amounts per litre of base. */
function perLitre({ formula, base_mL }: Version): Formula {
  return {
    base: { name: 'base' },
    additions: formula.additions.map(({ ingredient, mass_g, state }) => ({
      ingredient: ingredientName(ingredient),
      amount_g_per_L: Number(((1000 * mass_g) / base_mL).toPrecision(4)),
      state,
    })),
    days: formula.days,
    // Compared below only when both versions say it.
    temperature_C: formula.temperature_C ?? 0,
    cover: formula.cover ?? 'not given',
  };
}

/** What changed from one version to the next, one sentence a change; an unsaid temperature is not compared. */
export function versionDifferences(before: Version, after: Version): string[] {
  const isWarmthKnown = before.formula.temperature_C !== null && after.formula.temperature_C !== null;
  return differenceOfVersions(perLitre(before), perLitre(after))
    .filter(({ field }) => field !== 'temperature' || isWarmthKnown)
    .map(({ sentence }) => sentence);
}
