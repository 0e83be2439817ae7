import { formatQuantity } from '#core/units/format-quantity.ts';
import { shownNumber } from '#core/words/figures.ts';
import { dateWords, timeWords } from '#renderer/format/moments.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { joined } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { columnNames, leftOut } from './column-names-table.ts';
import { listWords } from './list-words.ts';
import { partNames, words } from './words.ts';

export type Entry = Pick<ValueOf<'history:row'>['entries'][number], 'before' | 'after' | 'isErased'>;
type Cell = string | number | null;

/** One part of a row: what it is called, what it was and what it became. */
export interface Change {
  readonly column: string;
  readonly name: string;
  readonly before: string | null;
  readonly after: string;
}

const unit = /_(g_per_L|pctVol|gauge_bar|bar|mL|mm|g|C)$/;

function figure(column: string, value: number, measures: Measures): string {
  if (/^(is|avoids)_/.test(column)) return value === 1 ? words.yes : words.no;
  if (column === 'acidity_g_per_L') return `${shownNumber(value)} g/L`;
  switch (unit.exec(column)?.[1]) {
    case 'g_per_L':
      return measures.sugar(value);
    case 'gauge_bar':
    case 'bar':
      return measures.pressure(value);
    case 'mL':
      return measures.volume(value);
    case 'mm':
      return formatQuantity(value, 'length', measures.system);
    case 'C':
      return measures.temperature(value);
    case 'pctVol':
      return `${shownNumber(value)} % vol`;
    case 'g':
      return measures.mass(value);
    default:
      return shownNumber(value);
  }
}

/** What a named part is called; what is in no list, such as a person's own held thing, is called as it was written. */
function partName(part: string): string {
  const bare = part.replace(unit, '').replaceAll('_', ' ');
  return Object.hasOwn(partNames, bare) ? (partNames[bare] ?? bare) : bare;
}

/** A value of a list or of a thing with named parts, as words: no brackets, no quotation marks, none of its empty parts. */
function spoken(name: string, value: unknown, measures: Measures): string {
  if (value === null || value === undefined || value === '') return words.nothing;
  if (typeof value === 'boolean') return value ? words.yes : words.no;
  if (typeof value === 'number') return figure(name, value, measures);
  if (Array.isArray(value)) {
    return value.length === 0 ? words.nothing : joined(value.map((each) => spoken(name, each, measures)));
  }
  if (typeof value !== 'object') return listWords(name, String(value));
  const parts = Object.entries(value).flatMap(([part, inner]) => {
    const said = spoken(part, inner, measures);
    if (said === words.nothing) return [];
    return [part === 'ingredient' || part === 'name' ? said : `${partName(part)} ${said}`];
  });
  return parts.length === 0 ? words.nothing : parts.join(', ');
}

function written(column: string, text: string, measures: Measures): string {
  if (!/^[[{]/.test(text)) return listWords(column, text);
  try {
    return spoken(column, JSON.parse(text), measures);
  } catch {
    return text;
  }
}

/** What a cell holds, as a person would say it. */
export function cellWords(column: string, cell: Cell, measures: Measures): string {
  if (cell === null || cell === '') return words.nothing;
  if (column.endsWith('_id')) return words.another;
  if (typeof cell === 'number') return figure(column, cell, measures);
  if (/_at$|^planned_(start|pull)$/.test(column)) return `${dateWords(cell)}, ${timeWords(cell)}`;
  return written(column, cell, measures);
}

/** The parts of a row that an entry changed; of a new row, all that somebody filled in. */
export function whatChanged({ before, after }: Entry, measures: Measures): Change[] {
  if (after === null) return [];
  return Object.keys(after).flatMap((column) => {
    const name = columnNames[column];
    const [was, is] = [before?.[column] ?? null, after[column] ?? null];
    if (name === undefined || leftOut.has(column) || was === is) return [];
    const said = cellWords(column, is, measures);
    if (before === null && (column.endsWith('_id') || said === words.nothing)) return [];
    return [{ column, name, before: before === null ? null : cellWords(column, was, measures), after: said }];
  });
}
