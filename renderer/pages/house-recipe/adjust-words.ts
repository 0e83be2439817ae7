import { foodDensity_kg_per_m3 } from '#core/ferment/food-density.ts';
import { knownSugars } from '#core/ferment/known-sugars.ts';
import { dilute } from '#core/recipe/dilute.ts';
import { pearsonSquare } from '#core/recipe/pearson-square.ts';
import { sweeten } from '#core/recipe/sweeten.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { compositionOfRow, type PantryRow } from './known-additions.ts';
import { words } from './words.ts';

const said = words.adjust;

/** What came of it: an amount to measure out, or why there is none. */
export interface Advice {
  readonly isWorked: boolean;
  readonly words: string;
}

/** Grams of sugar in a litre of an ingredient; null when its sugar or its water is unknown. */
export function sugarOfRow(row: PantryRow): number | null {
  const composition = compositionOfRow(row);
  const sugars = composition === null ? null : knownSugars(composition);
  if (composition === null || sugars === null) return null;
  return ((sugars.sucrose_g + sugars.hexose_g) / 100) * foodDensity_kg_per_m3(composition);
}

const refused = (message: string): Advice => ({ isWorked: false, words: message });
const worked = (message: string): Advice => ({ isWorked: true, words: message });

interface Drink {
  readonly volume_mL: number;
  readonly now_g_per_L: number;
  readonly target_g_per_L: number;
}

/** How much of a sweetener to stir in. */
export function sweetenAdvice({ volume_mL, now_g_per_L, target_g_per_L }: Drink, row: PantryRow, measures: Measures) {
  const composition = compositionOfRow(row);
  if (composition === null) return refused(said.sugarUnknown(row.name));
  const found = sweeten({ volume_mL, sugar_g_per_L: now_g_per_L }, target_g_per_L, composition, measures.sugar);
  if (!found.ok) return refused(found.code === 'sugar-unknown' ? said.sugarUnknown(row.name) : found.message);
  return worked(said.stirIn(measures.mass(found.value.mass_g), row.name, measures.volume(found.value.volume_mL)));
}

/** How much water to add. */
export function diluteAdvice({ volume_mL, now_g_per_L, target_g_per_L }: Drink, measures: Measures): Advice {
  const found = dilute({ volume_mL, strength: now_g_per_L }, target_g_per_L, measures.sugar);
  if (!found.ok) return refused(found.message);
  return worked(said.addWater(measures.volume(found.value.water_mL), measures.volume(found.value.volume_mL)));
}

interface Juice {
  readonly name: string;
  readonly sugar_g_per_L: number;
}

/** How much of each of two juices. */
export function blendAdvice(
  first: Juice,
  second: Juice,
  target_g_per_L: number,
  volume_mL: number,
  measures: Measures,
): Advice {
  const found = pearsonSquare(first.sugar_g_per_L, second.sugar_g_per_L, target_g_per_L, measures.sugar);
  if (!found.ok) return refused(found.message);
  const first_mL = found.value.firstShare * volume_mL;
  const second_mL = volume_mL - first_mL;
  if (second_mL <= 0) return worked(said.allOf(measures.volume(volume_mL), first.name));
  if (first_mL <= 0) return worked(said.allOf(measures.volume(volume_mL), second.name));
  return worked(said.take(measures.volume(first_mL), first.name, measures.volume(second_mL), second.name));
}
