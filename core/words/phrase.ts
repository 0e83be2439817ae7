import { shownNumber } from './figures.ts';
import { type Laid, laidWords } from './laid-words.ts';

/** What can stand in a place of a phrase. A number is written with the decimal mark that was chosen. */
export type Put = string | number;

const keys = new WeakMap<TemplateStringsArray, string>();

function shown(value: Put): string {
  return typeof value === 'number' ? shownNumber(value) : value;
}

/** The name of a phrase in the catalogue: its English, with the places numbered. */
export function keyOf(strings: readonly string[]): string {
  return strings.reduce((key, part, index) => `${key}{${index - 1}}${part}`);
}

function inEnglish(strings: readonly string[], values: readonly Put[]): string {
  let text = strings[0] ?? '';
  for (let at = 0; at < values.length; at += 1) text += shown(values[at] ?? '') + strings[at + 1];
  return text;
}

function inLaid(laid: Laid, strings: TemplateStringsArray, values: readonly Put[]): string | null {
  let key = keys.get(strings);
  if (key === undefined) {
    key = keyOf(strings);
    keys.set(strings, key);
  }
  const parts = laid.partsOf(key, values);
  if (parts === null) return null;
  let text = '';
  for (const part of parts) text += typeof part === 'string' ? part : shown(values[part] ?? '');
  return text;
}

/**
 * Words of the screen, written in English where they are said, and said in another language when one is laid in.
 *
 * Method: the English text with numbered places is looked up in the words laid in (`layWords`); what is missing there stays English.
 * Leaves out people's own words, names of codes and units, which are handed in as values.
 *
 * @param values what stands in the places: words, or numbers
 * @example phrase`Look at ${what}` // 'Look at jar 2', under the name 'Look at {0}' in the catalogue
 */
export function phrase(strings: TemplateStringsArray, ...values: readonly Put[]): string {
  const laid = laidWords();
  return (laid === null ? null : inLaid(laid, strings, values)) ?? inEnglish(strings, values);
}
