import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { listTasters } from '#store/rows/people-and-pantry.ts';
import type { Row } from '#store/tables.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { nameKey } from '../pasted/name-key.ts';
import { saveOwnFigures } from './own-figures.ts';
import { pantryName, wholePantry } from './whole-pantry.ts';

/** The pantry's own name of an ingredient, whichever of its names was written. */
function knownName(kitchen: Kitchen, written: string): string {
  const known = pantryName(kitchen, written);
  if (known === undefined) {
    throw new Failure('not-found', phrase`The pantry has no “${written}”. Add it to the pantry first.`, ['name']);
  }
  return known;
}

function assertFree(kitchen: Kitchen, table: 'tasters' | 'ingredients', name: string, id: string | undefined): void {
  const key = nameKey(name);
  const all = kitchen.read.all<{ id: string; name: string }>(`SELECT id, name FROM ${table}`);
  const twin = all.find((row) => nameKey(row.name) === key);
  if (twin === undefined || twin.id === id) return;
  const what = table === 'tasters' ? 'taster' : 'ingredient';
  throw new Failure('refused', phrase`There is a ${what} called “${name}” already. Choose another name.`, ['name']);
}

export const peopleAndPantryHandlers: Handlers<
  | 'tasters:list'
  | 'tasters:save'
  | 'tasters:remove'
  | 'pantry:list'
  | 'pantry:save'
  | 'pantry:figures'
  | 'pantry:stock'
  | 'pantry:remove'
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
      return kitchen.write({ request: 'tasters:save', summary: phrase`Add taster ${input.name}` }, (writer) => ({
        taster: writer.insert('tasters', values).id,
      }));
    }
    found(kitchen.read.row('tasters', id), 'taster', 'id');
    return kitchen.write({ request: 'tasters:save', summary: phrase`Change taster ${input.name}` }, (writer) => ({
      taster: writer.update('tasters', id, values, input.revision).id,
    }));
  },
  'tasters:remove'(kitchen, { taster }) {
    const row = found(kitchen.read.row('tasters', taster), 'taster', 'taster');
    const tastings = kitchen.read.one('SELECT id FROM servings WHERE taster_id = ? LIMIT 1', taster);
    if (tastings !== undefined) {
      throw new Failure(
        'refused',
        phrase`${row.name} has tasted here: the scores need the name. Rename the taster instead.`,
        ['taster'],
      );
    }
    return kitchen.write({ request: 'tasters:remove', summary: phrase`Remove taster ${row.name}` }, (writer) => {
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
        phrase`The pantry knows “${input.name}” already. Give your own a name that tells it apart.`,
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
      source: input.source ?? null,
      measures: input.measures === undefined ? null : JSON.stringify(input.measures),
    };
    const { id } = input;
    if (id === undefined) {
      return kitchen.write({ request: 'pantry:save', summary: phrase`Add ${input.name} to the pantry` }, (writer) => ({
        ingredient: writer.insert('ingredients', values).id,
      }));
    }
    const before = found(kitchen.read.row('ingredients', id), 'ingredient', 'id');
    if (nameKey(before.name) !== nameKey(input.name) && findIngredient(input.name) !== undefined) {
      throw new Failure('refused', phrase`The pantry knows “${input.name}” already. Choose another name.`, ['name']);
    }
    return kitchen.write({ request: 'pantry:save', summary: phrase`Change ${input.name} in the pantry` }, (writer) => ({
      ingredient: writer.update('ingredients', id, values, input.revision).id,
    }));
  },
  'pantry:figures': (kitchen, input) => saveOwnFigures(kitchen, input),
  'pantry:stock'(kitchen, input) {
    const name = knownName(kitchen, input.name);
    if (typeof input.price_per_kg === 'number' && typeof input.price_per_L === 'number') {
      throw new Failure('invalid-input', phrase`Give one price: per kilogram or per litre.`, ['price_per_L']);
    }
    return kitchen.write({ request: 'pantry:stock', summary: phrase`Note what is on hand of ${name}` }, (writer) => {
      // Read inside the transaction: another window may have noted the other of the two.
      const before = writer.one<Row<'stocks'>>('SELECT * FROM stocks WHERE name = ?', name);
      const isPriced = input.price_per_kg !== undefined || input.price_per_L !== undefined;
      const prices = isPriced
        ? { price_per_kg: input.price_per_kg ?? null, price_per_L: input.price_per_L ?? null }
        : { price_per_kg: before?.price_per_kg ?? null, price_per_L: before?.price_per_L ?? null };
      // A new count settles what had been used beyond the old one.
      const counted =
        input.onHand_g === undefined
          ? { on_hand_g: before?.on_hand_g ?? null, short_g: before?.short_g ?? null }
          : { on_hand_g: input.onHand_g, short_g: null };
      const values = { name, ...counted, ...prices };
      if (before === undefined) writer.insert('stocks', values);
      else writer.update('stocks', before.id, values);
      return { name, onHand_g: counted.on_hand_g, ...prices };
    });
  },
  'pantry:remove'(kitchen, { ingredient }) {
    const row = found(kitchen.read.row('ingredients', ingredient), 'ingredient', 'ingredient');
    return kitchen.write(
      { request: 'pantry:remove', summary: phrase`Remove ${row.name} from the pantry` },
      (writer) => {
        writer.remove('ingredients', ingredient);
        return { ingredient };
      },
    );
  },
};
