import { ingredientName } from '#core/trial/formula.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Kitchen } from '#store/kitchen.ts';
import type { Jar } from '#store/rows/jars.ts';
import { levelsOfTrial } from '#store/rows/trials.ts';
import type { Row } from '#store/tables.ts';
import type { Writer } from '#store/writer.ts';
import { pantryName } from './whole-pantry.ts';

type Taken = ValueOf<'jars:start'>['stock'][number];

/** What goes into these jars, by the pantry's name of each ingredient. */
function neededBy(kitchen: Kitchen, writer: Writer, jars: readonly Jar[]): Map<string, number> {
  const needed = new Map<string, number>();
  for (const jar of jars) {
    const level = levelsOfTrial(writer, jar.trial).find(({ id }) => id === jar.level);
    for (const { ingredient, mass_g } of level?.formula.additions ?? []) {
      const written = ingredientName(ingredient);
      const name = pantryName(kitchen, written) ?? written;
      needed.set(name, (needed.get(name) ?? 0) + mass_g);
    }
  }
  return needed;
}

/**
 * What goes into the jars is no longer on hand.
 *
 * On hand never goes below nothing: what was used beyond the note is kept beside it, until somebody counts again. What nobody counted
 * stays unknown.
 */
export function takeFromStock(kitchen: Kitchen, writer: Writer, jars: readonly Jar[]): Taken[] {
  return [...neededBy(kitchen, writer, jars)].map(([name, taken_g]) => {
    const stock = writer.one<Row<'stocks'>>('SELECT * FROM stocks WHERE name = ?', name);
    if (stock?.on_hand_g == null) return { name, taken_g, left_g: null, short_g: null };
    const left_g = Math.max(0, stock.on_hand_g - taken_g);
    const missing_g = Math.max(0, taken_g - stock.on_hand_g);
    const short_g = missing_g === 0 ? stock.short_g : (stock.short_g ?? 0) + missing_g;
    writer.update('stocks', stock.id, { on_hand_g: left_g, short_g });
    return { name, taken_g, left_g, short_g };
  });
}
