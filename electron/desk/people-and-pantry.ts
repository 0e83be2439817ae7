import { findIngredient } from '#core/pantry/find-ingredient.ts';
import type { PantryIngredient } from '#core/pantry/pantry-ingredient.ts';
import { pantryTable } from '#core/pantry/pantry-table.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { listOwnIngredients, listStocks, listTasters } from '#store/people-and-pantry.ts';
import type { Row } from '#store/tables.ts';
import { found } from './found.ts';
import type { Handlers } from './handler.ts';

type Ingredient = ValueOf<'pantry:list'>['ingredients'][number];

/** A row of the built-in pantry in the contract's shape. Unknown stays null. */
function builtIn(row: PantryIngredient): Ingredient {
  const { composition } = row;
  return {
    id: null,
    revision: null,
    isSample: false,
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
    note: null,
    aliases: [...row.aliases],
    fdcId: row.fdcId,
    colour: row.colour,
    measures: row.measures.map((measure) => ({ ...measure })),
    onHand_g: null,
    price_per_kg: null,
  };
}

/** The whole pantry: the owner's ingredients first, then those that come with the program. */
export function wholePantry(kitchen: Kitchen): Ingredient[] {
  const own = listOwnIngredients(kitchen.read);
  const taken = new Set(own.map(({ name }) => name.toLowerCase()));
  const all = [...own, ...pantryTable.filter(({ name }) => !taken.has(name.toLowerCase())).map(builtIn)];
  const stocks = new Map(listStocks(kitchen.read).map((row) => [row.name.toLowerCase(), row]));
  return all.map((each) => {
    const stock = stocks.get(each.name.toLowerCase());
    return stock === undefined ? each : { ...each, onHand_g: stock.on_hand_g, price_per_kg: stock.price_per_kg };
  });
}

/** The pantry's own name of an ingredient, whichever of its names was written. */
function pantryName(kitchen: Kitchen, written: string): string {
  const own = listOwnIngredients(kitchen.read).find(({ name }) => name.toLowerCase() === written.toLowerCase());
  const known = own?.name ?? findIngredient(written)?.name;
  if (known === undefined) {
    throw new Failure('not-found', `The pantry has no “${written}”. Add it to the pantry first.`, ['name']);
  }
  return known;
}

function assertFree(kitchen: Kitchen, table: 'tasters' | 'ingredients', name: string, id: string | undefined): void {
  const twin = kitchen.read.one<{ id: string }>(`SELECT id FROM ${table} WHERE name = ? COLLATE NOCASE`, name);
  if (twin === undefined || twin.id === id) return;
  const what = table === 'tasters' ? 'taster' : 'ingredient';
  throw new Failure('refused', `There is a ${what} called “${name}” already. Choose another name.`, ['name']);
}

export const peopleAndPantryHandlers: Handlers<
  'tasters:list' | 'tasters:save' | 'tasters:remove' | 'pantry:list' | 'pantry:save' | 'pantry:stock' | 'pantry:remove'
> = {
  'tasters:list': (kitchen) => ({ tasters: listTasters(kitchen.read) }),
  'tasters:save'(kitchen, input) {
    assertFree(kitchen, 'tasters', input.name, input.id);
    const values = {
      name: input.name,
      avoids: JSON.stringify([...new Set(input.avoids)].sort()),
      avoids_alcohol: input.avoidsAlcohol ? (1 as const) : (0 as const),
      note: input.note ?? null,
    };
    const { id } = input;
    if (id === undefined) {
      return kitchen.write({ request: 'tasters:save', summary: `Add taster ${input.name}` }, (writer) => ({
        taster: writer.insert('tasters', values).id,
      }));
    }
    found(kitchen.read.row('tasters', id), 'taster', 'id');
    return kitchen.write({ request: 'tasters:save', summary: `Change taster ${input.name}` }, (writer) => ({
      taster: writer.update('tasters', id, values, input.revision).id,
    }));
  },
  'tasters:remove'(kitchen, { taster }) {
    const row = found(kitchen.read.row('tasters', taster), 'taster', 'taster');
    const tastings = kitchen.read.one('SELECT id FROM servings WHERE taster_id = ? LIMIT 1', taster);
    if (tastings !== undefined) {
      throw new Failure(
        'refused',
        `${row.name} has tasted here: the scores need the name. Rename the taster instead.`,
        ['taster'],
      );
    }
    return kitchen.write({ request: 'tasters:remove', summary: `Remove taster ${row.name}` }, (writer) => {
      writer.remove('tasters', taster);
      return { taster };
    });
  },
  'pantry:list': (kitchen) => ({ ingredients: wholePantry(kitchen) }),
  'pantry:save'(kitchen, input) {
    assertFree(kitchen, 'ingredients', input.name, input.id);
    if (input.id === undefined && findIngredient(input.name) !== undefined) {
      throw new Failure(
        'refused',
        `The pantry knows “${input.name}” already. Give your own a name that tells it apart.`,
        ['name'],
      );
    }
    const values = {
      name: input.name,
      kind: input.kind,
      water_g: input.water_g ?? null,
      sugars_g: input.sugars_g ?? null,
      sucrose_g: input.sucrose_g ?? null,
      glucose_g: input.glucose_g ?? null,
      fructose_g: input.fructose_g ?? null,
      fibre_g: input.fibre_g ?? null,
      protein_g: input.protein_g ?? null,
      fat_g: input.fat_g ?? null,
      ash_g: input.ash_g ?? null,
      allergens: JSON.stringify([...new Set(input.allergens)].sort()),
      note: input.note ?? null,
    };
    const { id } = input;
    if (id === undefined) {
      return kitchen.write({ request: 'pantry:save', summary: `Add ${input.name} to the pantry` }, (writer) => ({
        ingredient: writer.insert('ingredients', values).id,
      }));
    }
    found(kitchen.read.row('ingredients', id), 'ingredient', 'id');
    return kitchen.write({ request: 'pantry:save', summary: `Change ${input.name} in the pantry` }, (writer) => ({
      ingredient: writer.update('ingredients', id, values, input.revision).id,
    }));
  },
  'pantry:stock'(kitchen, input) {
    const name = pantryName(kitchen, input.name);
    const before = kitchen.read.one<Row<'stocks'>>('SELECT * FROM stocks WHERE name = ?', name);
    const onHand_g = input.onHand_g === undefined ? (before?.on_hand_g ?? null) : input.onHand_g;
    const price_per_kg = input.price_per_kg === undefined ? (before?.price_per_kg ?? null) : input.price_per_kg;
    const values = { name, on_hand_g: onHand_g, price_per_kg };
    kitchen.write({ request: 'pantry:stock', summary: `Note what is on hand of ${name}` }, (writer) =>
      before === undefined ? writer.insert('stocks', values) : writer.update('stocks', before.id, values),
    );
    return { name, onHand_g, price_per_kg };
  },
  'pantry:remove'(kitchen, { ingredient }) {
    const row = found(kitchen.read.row('ingredients', ingredient), 'ingredient', 'ingredient');
    return kitchen.write({ request: 'pantry:remove', summary: `Remove ${row.name} from the pantry` }, (writer) => {
      writer.remove('ingredients', ingredient);
      return { ingredient };
    });
  },
};
