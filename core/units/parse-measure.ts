import type { PantryMeasure } from '#core/pantry/pantry-ingredient.ts';
import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { type Parsed, parseQuantity, type QuantityProblem } from './parse-quantity.ts';
import { usMeasure_mL } from './unit-table.ts';

/** Nothing that is eaten weighs less or more than this. Puffed grain lies near 0.02, honey at 1.43 (USDA SR28: 339 g a cup), salt at 1.2. */
const lightest_g_per_mL = 0.01;
const heaviest_g_per_mL = 2;

const kept: Readonly<Record<string, readonly [PantryMeasure['unit'], number]>> = {
  cup: ['cup', usMeasure_mL.cup],
  'fl oz': ['fl oz', usMeasure_mL.fluidOunce],
  tbsp: ['tbsp', usMeasure_mL.tablespoon],
  tsp: ['tsp', usMeasure_mL.teaspoon],
};

/**
 * Reads what a household measure weighs: "1/2 cup = 75 g", "1 cup mashed = 150 g", "1 tbsp is 8 g", "1 piece = 120 g".
 *
 * Method: the weight over the number of measures; any other volume (100 mL, a pint) is turned into cups. The weight is held against what
 * food can weigh, so that kilograms typed for grams are noticed.
 *
 * @param text one measure
 * @returns what one measure weighs, or a sentence that says what is unclear; for a likely slip it asks
 * @example parseMeasure('1/2 cup sliced = 75 g') // { unit: 'cup', form: 'sliced', mass_g: 150 }
 */
export function parseMeasure(text: string): Parsed<PantryMeasure> {
  const sides = text.split(/\s*=\s*|\s+(?:is|are|weighs?)\s+/i);
  const [measure, weight] = sides;
  if (measure === undefined || weight === undefined || sides.length > 2) {
    return refused('not-a-number', phrase`Write what a measure weighs, such as 1/2 cup = 75 g.`);
  }
  const left = parseQuantity(measure);
  if (!left.ok) return left;
  const right = parseQuantity(weight, 'mass');
  if (!right.ok) return right;
  if (right.value.rest !== '') return refused('unit-unknown', phrase`“${right.value.rest}” is too much here.`);
  const { unit, stored, rest } = left.value;
  if (!(stored > 0)) return refused('not-a-number', phrase`The measure is nothing; permitted: more than zero.`);
  const mass_g = right.value.stored;
  if (!(mass_g > 0)) return refused('not-a-number', phrase`A measure weighs more than zero grams.`);
  const form = rest === '' ? null : rest.toLowerCase().slice(0, 60);
  if (unit.dimension === 'count') {
    const each_g = mass_g / stored;
    return each_g <= 100_000
      ? { ok: true, value: { unit: 'each', form, mass_g: each_g } }
      : refused('out-of-range', phrase`A piece of ${each_g / 1000} kg? Permitted: up to 100 kg.`);
  }
  if (unit.dimension !== 'volume') {
    return refused('wrong-kind', phrase`${unit.symbol} is no kitchen measure; write cups, spoons, fl oz or pieces.`);
  }
  const density = mass_g / stored;
  if (!(density >= lightest_g_per_mL && density <= heaviest_g_per_mL))
    return tooOdd(measure.trim(), right.value, stored);
  const [name, size_mL] = kept[unit.symbol] ?? (['cup', usMeasure_mL.cup] as const);
  return { ok: true, value: { unit: name, form, mass_g: density * size_mL } };
}

function tooOdd(
  measure: string,
  { value, unit, stored: mass_g }: { value: number; unit: { symbol: string }; stored: number },
  volume_mL: number,
): Parsed<never> {
  const range = phrase`${plain(lightest_g_per_mL * volume_mL)} to ${plain(heaviest_g_per_mL * volume_mL)} g`;
  const slip = unit.symbol === 'kg' && value / volume_mL <= heaviest_g_per_mL ? phrase` Did you mean ${value} g?` : '';
  return refused(
    'out-of-range',
    phrase`${measure} of ${plain(mass_g)} g: no food weighs that.${slip} Permitted: ${range}.`,
  );
}

function plain(value: number): string {
  return shownNumber(Number(value.toPrecision(3)));
}

function refused(code: QuantityProblem['code'], message: string): Parsed<never> {
  return { ok: false, problem: { code, message } };
}
