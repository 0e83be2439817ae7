import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '../reader.ts';
import type { Row } from '../tables.ts';

type Taster = ValueOf<'tasters:list'>['tasters'][number];
type Ingredient = ValueOf<'pantry:list'>['ingredients'][number];

export function listTasters(read: Reader): Taster[] {
  return read
    .all<Row<'tasters'> & { tastings: number }>(
      `SELECT t.*, coalesce(n.tastings, 0) AS tastings
       FROM tasters AS t LEFT JOIN taster_counts AS n ON n.taster_id = t.id ORDER BY name`,
    )
    .map((row) => ({
      id: row.id,
      revision: row.revision,
      isSample: row.is_sample === 1,
      name: row.name,
      avoids: JSON.parse(row.avoids) as Taster['avoids'],
      avoidsAlcohol: row.avoids_alcohol === 1,
      note: row.note,
      tastings: row.tastings,
    }));
}

export type Avoiding = Pick<Taster, 'id' | 'name' | 'avoids' | 'avoidsAlcohol'>;

/** What each of some tasters avoids, in the order of their names. */
export function avoidancesOf(read: Reader, tasters: readonly string[]): Avoiding[] {
  return read
    .all<Row<'tasters'>>(
      'SELECT * FROM tasters WHERE id IN (SELECT value FROM json_each(?)) ORDER BY name',
      JSON.stringify(tasters),
    )
    .map(({ id, name, avoids, avoids_alcohol }) => ({
      id,
      name,
      avoids: JSON.parse(avoids) as Taster['avoids'],
      avoidsAlcohol: avoids_alcohol === 1,
    }));
}

/** The ingredients that the owner added, and the owner's figures for some that came with the program. */
export function listOwnIngredients(read: Reader): Ingredient[] {
  return read.all<Row<'ingredients'>>('SELECT * FROM ingredients ORDER BY name').map((row) => ({
    id: row.id,
    revision: row.revision,
    isSample: row.is_sample === 1,
    isBuiltIn: false,
    name: row.name,
    kind: row.kind as Ingredient['kind'],
    water_g: row.water_g,
    sugars_g: row.sugars_g,
    sucrose_g: row.sucrose_g,
    glucose_g: row.glucose_g,
    fructose_g: row.fructose_g,
    fibre_g: row.fibre_g,
    protein_g: row.protein_g,
    fat_g: row.fat_g,
    ash_g: row.ash_g,
    allergens: JSON.parse(row.allergens) as Ingredient['allergens'],
    source: row.source,
    ownFigures: [],
    ownSource: null,
    note: row.note,
    aliases: [],
    fdcId: null,
    colour: null,
    measures: JSON.parse(row.measures ?? '[]') as Ingredient['measures'],
    onHand_g: null,
    stock: null,
    short_g: null,
    price_per_kg: null,
    price_per_L: null,
  }));
}

export function listStocks(read: Reader): Row<'stocks'>[] {
  return read.all<Row<'stocks'>>('SELECT * FROM stocks ORDER BY name');
}
