import type { PantryMeasure } from '#core/pantry/pantry-ingredient.ts';
import { parseMeasure } from '#core/units/parse-measure.ts';
import { shownNumber } from '#core/words/figures.ts';
import type { Ingredient } from './ingredient-words.ts';
import { measureName } from './ingredient-words.ts';
import { words } from './words.ts';

export type ReadMeasures =
  | { readonly ok: true; readonly measures: PantryMeasure[] }
  | { readonly ok: false; readonly message: string };

/** What measures weigh, one a line. */
export function readMeasures(text: string): ReadMeasures {
  const measures: PantryMeasure[] = [];
  for (const [place, line] of text.split('\n').entries()) {
    if (line.trim() === '') continue;
    const read = parseMeasure(line);
    if (!read.ok) return { ok: false, message: words.form.line(place + 1, read.problem.message) };
    measures.push(read.value);
  }
  return { ok: true, measures };
}

/** The lines as they would be typed. */
export function measureLines(measures: Ingredient['measures']): string {
  return measures
    .map((one) => `${measureName(one).replace(',', '')} = ${shownNumber(Number(one.mass_g.toPrecision(6)))} g`)
    .join('\n');
}
