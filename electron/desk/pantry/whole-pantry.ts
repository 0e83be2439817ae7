import type { FoodComposition } from '#core/ferment/food-composition.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import type { PantryIngredient } from '#core/pantry/pantry-ingredient.ts';
import { pantryTable } from '#core/pantry/pantry-table.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { listOwnIngredients, listStocks } from '#store/rows/people-and-pantry.ts';
import { nameKey } from '../pasted/name-key.ts';

export type Ingredient = ValueOf<'pantry:list'>['ingredients'][number];

const figures = ['water_g', 'sugars_g', 'sucrose_g', 'glucose_g', 'fructose_g'] as const;
const kindsOfSugar = ['sucrose_g', 'glucose_g', 'fructose_g'] as const;

/** A row of the built-in pantry in the contract's shape. Unknown stays null. */
function builtIn(row: PantryIngredient): Ingredient {
  const { composition } = row;
  return {
    id: null,
    revision: null,
    isSample: false,
    isBuiltIn: true,
    name: row.name,
    kind: row.category,
    water_g: composition.water_g,
    sugars_g: composition.sugars_g,
    sucrose_g: composition.sucrose_g ?? null,
    glucose_g: composition.glucose_g ?? null,
    fructose_g: composition.fructose_g ?? null,
    fibre_g: composition.fibre_g ?? null,
    protein_g: composition.protein_g ?? null,
    fat_g: composition.fat_g ?? null,
    ash_g: composition.ash_g ?? null,
    allergens: row.allergens as Ingredient['allergens'],
    source: row.source,
    ownFigures: [],
    ownSource: null,
    note: null,
    aliases: [...row.aliases],
    fdcId: row.fdcId,
    colour: row.colour,
    measures: row.measures.map((measure) => ({ ...measure })),
    onHand_g: null,
    stock: null,
    short_g: null,
    price_per_kg: null,
    price_per_L: null,
  };
}

/** The owner's figures laid over those that came with the program: a total of the owner's own drops the table's kinds of sugar. */
function overlaid(table: Ingredient, own: Ingredient): Ingredient {
  const given = figures.filter((figure) => own[figure] !== null);
  const kinds = own.sugars_g === null ? [] : kindsOfSugar;
  return {
    ...table,
    ...Object.fromEntries(kinds.map((kind) => [kind, null])),
    ...Object.fromEntries(given.map((figure) => [figure, own[figure]])),
    id: own.id,
    revision: own.revision,
    isSample: own.isSample,
    measures: own.measures.length > 0 ? own.measures : table.measures,
    ownFigures: [...given, ...(own.measures.length > 0 ? ['measures'] : [])],
    ownSource: own.source,
  };
}

/** What 100 g of it are made of, and nothing else of the row; null where not even its water is known. */
export function compositionOf(row: Ingredient): FoodComposition | null {
  const { water_g, sugars_g, sucrose_g, glucose_g, fructose_g, fibre_g, protein_g, fat_g, ash_g } = row;
  if (water_g === null) return null;
  return { water_g, sugars_g, sucrose_g, glucose_g, fructose_g, fibre_g, protein_g, fat_g, ash_g };
}

/** Everything the owner has added or corrected, by name. */
export function ownPantry(kitchen: Kitchen): Map<string, Ingredient> {
  return new Map(
    listOwnIngredients(kitchen.read).map((row) => {
      const table = pantryTable.find(({ name }) => nameKey(name) === nameKey(row.name));
      return [nameKey(row.name), table === undefined ? row : overlaid(builtIn(table), row)];
    }),
  );
}

/** The owner's ingredient of that name, also by any name that the built-in one answers to. */
export function ownOf(own: ReadonlyMap<string, Ingredient>, written: string): Ingredient | undefined {
  const mine = own.get(nameKey(written));
  if (mine !== undefined) return mine;
  const known = findIngredient(written);
  return known === undefined ? undefined : own.get(nameKey(known.name));
}

/** The whole pantry: the owner's ingredients first, then those that come with the program. */
export function wholePantry(kitchen: Kitchen): Ingredient[] {
  const own = ownPantry(kitchen);
  const all = [
    ...[...own.values()].filter((row) => !row.isBuiltIn),
    ...pantryTable.map((row) => own.get(nameKey(row.name)) ?? builtIn(row)),
  ];
  const stocks = new Map(listStocks(kitchen.read).map((row) => [nameKey(row.name), row]));
  return all.map((each) => {
    const stock = stocks.get(nameKey(each.name));
    if (stock === undefined) return each;
    const { id, on_hand_g, short_g, price_per_kg, price_per_L } = stock;
    return { ...each, stock: id, onHand_g: on_hand_g, short_g, price_per_kg, price_per_L };
  });
}

/** The pantry's own name of an ingredient, whichever of its names was written; undefined where it has none. */
export function pantryName(kitchen: Kitchen, written: string): string | undefined {
  const key = nameKey(written);
  const own = listOwnIngredients(kitchen.read).find(({ name }) => nameKey(name) === key);
  return own?.name ?? findIngredient(written)?.name;
}
