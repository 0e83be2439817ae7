import type { readingColumns } from '#shared/closed-lists.ts';
import { nameKey } from '../pasted/name-key.ts';

/** What a column of a table of readings is taken for; empty where it is left out. */
export type Meaning = (typeof readingColumns)[number] | '';
export type Measures = 'metric' | 'us';

const answersTo: Readonly<Record<Exclude<Meaning, ''>, readonly string[]>> = {
  jar: ['jar', 'label', 'sample'],
  at: ['at', 'when', 'time', 'date', 'moment', 'taken at'],
  hours: ['hours', 'hour', 'h'],
  brix: ['brix', '°bx', 'bx'],
  sg: ['sg', 'gravity', 'specific gravity'],
  ph: ['ph'],
  temperature_C: ['temperature c', 'temp c', 'temperature °c', 'temp °c', '°c', 'celsius'],
  temperature_F: ['temperature f', 'temp f', 'temperature °f', 'temp °f', '°f', 'fahrenheit'],
  acidity_g_per_L: ['acidity g per l', 'acidity', 'ta'],
  acidity_as: ['acidity as', 'acid'],
  note: ['note', 'remark'],
};
const bareTemperatures = ['temperature', 'temp'];

/**
 * What a column's heading says that it holds. A temperature without its unit is one of the kitchen's own measures.
 *
 * @param head as it stands in the table; case, brackets and low lines don't count
 */
export function meaningOf(head: string, measures: Measures): Meaning {
  const plain = nameKey(head)
    .replaceAll(/[\s_,()[\]]+/g, ' ')
    .trim();
  if (bareTemperatures.includes(plain)) return measures === 'us' ? 'temperature_F' : 'temperature_C';
  const found = Object.entries(answersTo).find(([, names]) => names.includes(plain));
  return (found?.[0] ?? '') as Meaning;
}
