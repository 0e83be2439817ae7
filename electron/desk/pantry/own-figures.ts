import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { phrase } from '#core/words/phrase.ts';
import type { InputOf, ValueOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import type { Row } from '#store/tables.ts';

/** How far rounded figures may overshoot 100 g. */
const rounding_g = 1;

/** Keeps the owner's figures for a built-in ingredient as a row of its name; without any, takes that row away. */
export function saveOwnFigures(kitchen: Kitchen, input: InputOf<'pantry:figures'>): ValueOf<'pantry:figures'> {
  const table = findIngredient(input.name);
  if (table === undefined) {
    throw new Failure(
      'not-found',
      phrase`“${input.name}” does not come with the program. Change it as your own instead.`,
      ['name'],
    );
  }
  const { name } = table;
  const before = kitchen.read.one<Row<'ingredients'>>('SELECT * FROM ingredients WHERE name = ?', name);
  const figures = {
    water_g: input.water_g ?? null,
    sugars_g: input.sugars_g ?? null,
    sucrose_g: input.sucrose_g ?? null,
    glucose_g: input.glucose_g ?? null,
    fructose_g: input.fructose_g ?? null,
  };
  const measures = input.measures ?? [];
  if (Object.values(figures).every((value) => value === null) && measures.length === 0) {
    if (before !== undefined) {
      kitchen.write(
        { request: 'pantry:figures', summary: phrase`Go back to the table’s figures of ${name}` },
        (writer) => writer.remove('ingredients', before.id),
      );
    }
    return { name, isOwn: false };
  }
  if (input.source === undefined) {
    throw new Failure('invalid-input', phrase`Say where the figures come from, such as “label of the bag”.`, [
      'source',
    ]);
  }
  const { fibre_g, protein_g, fat_g, ash_g } = table.composition;
  const water_g = figures.water_g ?? table.composition.water_g;
  const rest_g = [water_g, fibre_g, protein_g, fat_g, ash_g].reduce<number>((sum, part) => sum + (part ?? 0), 0);
  const most_g = 100 + rounding_g - rest_g;
  if (figures.sugars_g !== null && figures.sugars_g > most_g) {
    throw new Failure(
      'invalid-input',
      phrase`Beside ${water_g} g of water and the other parts, sugars_g can be 0 to ${Math.max(0, Math.floor(10 * most_g) / 10)} g in 100 g of ${name}; this says ${figures.sugars_g}.`,
      ['sugars_g'],
    );
  }
  const values = {
    name,
    kind: table.category,
    ...figures,
    fibre_g: null,
    protein_g: null,
    fat_g: null,
    ash_g: null,
    allergens: '[]',
    note: null,
    source: input.source,
    measures: measures.length === 0 ? null : JSON.stringify(measures),
  };
  kitchen.write({ request: 'pantry:figures', summary: phrase`Note your own figures of ${name}` }, (writer) =>
    before === undefined ? writer.insert('ingredients', values) : writer.update('ingredients', before.id, values),
  );
  return { name, isOwn: true };
}
