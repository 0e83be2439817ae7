import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { ingredientName } from '#core/trial/formula.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { findJar } from '#store/rows/jars.ts';
import { avoidancesOf } from '#store/rows/people-and-pantry.ts';
import { levelsOfTrial } from '#store/rows/trials.ts';
import { ownOf, ownPantry } from '../pantry/whole-pantry.ts';

/** Allergens that a jar's additions bring, as far as the pantry knows; the ingredients it does not know are named apart. */
function broughtBy(kitchen: Kitchen, jarId: string): { allergens: Map<string, string>; unknown: string[] } {
  const jar = findJar(kitchen.read, jarId);
  const level = jar && levelsOfTrial(kitchen.read, jar.trial).find(({ id }) => id === jar.level);
  const own = ownPantry(kitchen);
  const allergens = new Map<string, string>();
  const unknown: string[] = [];
  for (const { ingredient } of level?.formula.additions ?? []) {
    const name = ingredientName(ingredient);
    const brought = ownOf(own, name)?.allergens ?? findIngredient(name)?.allergens;
    if (brought === undefined) unknown.push(name);
    for (const allergen of brought ?? []) allergens.set(allergen, name);
  }
  return { allergens, unknown };
}

/**
 * Who must be asked before a tasting, by taster: allergens they avoid that a jar brings, and alcohol.
 *
 * Every live drink may hold alcohol, so whoever avoids it is always warned. Leaves out what the pantry does not know, and says so.
 */
export function tastingWarnings(
  kitchen: Kitchen,
  tasters: readonly string[],
  jars: readonly string[],
): Map<string, string[]> {
  const brought = jars.map((jar) => broughtBy(kitchen, jar));
  const unknown = [...new Set(brought.flatMap((each) => each.unknown))];
  const warnings = new Map<string, string[]>();
  for (const taster of avoidancesOf(kitchen.read, tasters)) {
    const lines: string[] = [];
    for (const allergen of taster.avoids) {
      const culprit = brought.map(({ allergens }) => allergens.get(allergen)).find((name) => name !== undefined);
      if (culprit !== undefined)
        lines.push(
          phrase`${taster.name} avoids ${allergen}, and ${culprit} brings it: leave ${taster.name} out, or serve other jars.`,
        );
    }
    if (taster.avoids.length > 0 && unknown.length > 0) {
      lines.push(
        phrase`${taster.name} avoids ${taster.avoids.join(', ')}; what ${unknown.join(', ')} brings is not known here. Ask before serving.`,
      );
    }
    if (taster.avoidsAlcohol) {
      lines.push(phrase`${taster.name} avoids alcohol: a live drink always may hold some. Ask before serving.`);
    }
    if (lines.length > 0) warnings.set(taster.id, lines);
  }
  return warnings;
}
