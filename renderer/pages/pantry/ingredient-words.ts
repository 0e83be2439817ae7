import { knownSugars } from '#core/ferment/known-sugars.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { phrase } from '#core/words/phrase.ts';
import { joined } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

export type Ingredient = ValueOf<'pantry:list'>['ingredients'][number];

/** Grams with at most two places; what nobody measured is said, never shown as zero. */
export function gramWords(value: number | null): string {
  return value === null ? words.unknown : phrase`${Number(value.toFixed(2))} g`;
}

/** All sugar in 100 g, also where only its kinds were measured; null when unknown. */
export function sugarsOf(row: Ingredient): number | null {
  const known = knownSugars({ ...row, water_g: row.water_g ?? 0 });
  return known === null ? null : known.sucrose_g + known.hexose_g;
}

const figureNames: Readonly<Record<string, string>> = {
  water_g: phrase`water`,
  sugars_g: phrase`sugars`,
  glucose_g: phrase`glucose`,
  fructose_g: phrase`fructose`,
  sucrose_g: phrase`sucrose`,
  measures: phrase`measures`,
};

/** On what an ingredient's figures rest, a line each. */
export function basisLines(row: Ingredient): string[] {
  if (!row.isBuiltIn) return [row.source === null ? words.ownNoSource : words.ownBasis(row.source)];
  const table = row.source?.includes('from memory') ? words.fromMemory : (row.source ?? words.unknown);
  const own = row.ownFigures.map((figure) => figureNames[figure] ?? figure);
  return [
    row.fdcId === null ? table : `${table}, ${words.fdc(row.fdcId)}`,
    ...(own.length === 0 ? [] : [words.ownFigures(joined(own), row.ownSource ?? words.ownNoSource)]),
  ];
}

/** "1 cup, sliced". */
export function measureName({ unit, form }: Ingredient['measures'][number]): string {
  const one = unit === 'each' ? phrase`1 piece` : `1 ${unit}`;
  return form === null ? one : `${one}, ${form}`;
}

/** The alias that the sought words are in, when its name hasn't them; null when it is not found at all. */
export function foundAs(row: Ingredient, sought: string): { readonly alias: string | null } | null {
  const plain = sought.trim().toLowerCase();
  if (row.name.toLowerCase().includes(plain)) return { alias: null };
  const alias = row.aliases.find((one) => one.toLowerCase().includes(plain));
  if (alias !== undefined) return { alias };
  return plain.length > 2 && findIngredient(plain)?.name === row.name ? { alias: null } : null;
}
