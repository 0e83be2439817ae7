import type { PantryIngredient } from './pantry-ingredient.ts';
import { pantryTable } from './pantry-table.ts';

const byName = new Map<string, PantryIngredient>();
for (const ingredient of pantryTable) {
  for (const name of [ingredient.name, ...ingredient.aliases]) {
    byName.set(name, ingredient);
    byName.set(plain(name), ingredient);
  }
}

/**
 * The pantry's ingredient of that name, or `undefined` when the pantry has none.
 *
 * Answers to our short name ("strawberries, frozen"), to the description in USDA SR ("Strawberries, frozen, unsweetened") and to a few
 * everyday names. Case, spaces around commas and a missing plural do not matter. It never guesses between two ingredients.
 *
 * @example findIngredient('Strawberries, frozen, unsweetened')?.name // 'strawberries, frozen'
 */
export function findIngredient(name: string): PantryIngredient | undefined {
  const exact = byName.get(name);
  if (exact) return exact;
  const asked = plain(name);
  return (
    byName.get(asked) ??
    byName.get(`${asked}s`) ??
    byName.get(`${asked}es`) ??
    byName.get(asked.replace(/y$/, 'ies')) ??
    byName.get(asked.replace(/s$/, ''))
  );
}

function plain(name: string): string {
  return name
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\s*,\s*/g, ', ')
    .replace(/\s+/g, ' ')
    .trim();
}
