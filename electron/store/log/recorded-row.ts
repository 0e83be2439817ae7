import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '../reader.ts';
import { type TableName, tables } from '../tables.ts';
import { lastKnown, type StoredRow } from './last-known.ts';
import { isOfOpenSitting } from './veil.ts';

type RecordedRow = NonNullable<ValueOf<'history:about'>['row']>;
type NamedRow = RecordedRow['of'][number];

interface Naming {
  /** The column that names a row, or the row of another table that does. */
  readonly name?: string | readonly [table: TableName, column: string];
  readonly at?: string;
  /** Rows of other tables that tell it from its like; kept back while its tasting is open. */
  readonly also?: readonly (readonly [table: TableName, column: string])[];
}

const whose = ['tasters', 'taster_id'] as const;
const ofSample = ['samples', 'sample_id'] as const;

/** How a row of each table is told from its like. A table without an entry here does not type-check. */
const naming: Readonly<Record<TableName, Naming>> = {
  kitchens: { name: 'name' },
  tasters: { name: 'name' },
  ingredients: { name: 'name' },
  stocks: { name: 'name' },
  cultures: { name: 'name' },
  culture_log: { name: 'what', at: 'done_at' },
  bases: { name: 'name' },
  trials: { name: 'question' },
  levels: { name: 'name' },
  jars: { name: 'label' },
  readings: { at: 'taken_at' },
  sightings: { name: 'what', at: 'seen_at' },
  sips: { at: 'taken_at' },
  photos: { at: 'taken_at' },
  tastings: { name: 'name', at: 'held_at' },
  attributes: { name: 'name' },
  samples: { name: 'blind_code', also: [['jars', 'jar_id']] },
  servings: { also: [whose, ofSample] },
  scores: { name: ['attributes', 'attribute_id'], also: [whose, ofSample] },
  remarks: { also: [whose, ofSample] },
  wishes: { name: 'attribute' },
  set_asides: { name: whose },
  discriminations: { name: 'name', at: 'held_at' },
  presentations: { name: 'round', also: [whose] },
  house_recipes: { name: 'name' },
  recipe_versions: { name: 'number' },
  version_sources: { name: ['jars', 'jar_id'] },
  batches: { name: 'lot', at: 'made_at' },
  erasures: { name: 'what', at: 'created_at' },
  snoozes: { name: 'need', at: 'until_at' },
  bottlings: { name: 'lot', at: 'bottled_at' },
  bottle_openings: { name: 'pour', at: 'opened_at' },
};

const text = (value: unknown): string => (value === null || value === undefined ? '' : String(value));

function nameIn(read: Reader, table: TableName, row: StoredRow | null): string {
  const { name } = naming[table];
  if (name === undefined || row === null) return '';
  return typeof name === 'string' ? text(row[name]) : nameAt(read, name, row);
}

function nameAt(read: Reader, [table, column]: readonly [TableName, string], row: StoredRow): string {
  const id = row[column];
  return typeof id === 'string' ? nameIn(read, table, lastKnown(read, table, id)?.row ?? null) : '';
}

function namedRow(read: Reader, table: TableName, id: string, row: StoredRow | null): NamedRow {
  const { at } = naming[table];
  const moment = at === undefined ? null : (row?.[at] ?? null);
  return { table, id, name: nameIn(read, table, row), at: typeof moment === 'string' ? moment : null };
}

/** The row that a row is part of: the first of its owners that it names. */
function ownerOf(table: TableName, row: StoredRow | null): { table: TableName; id: string } | undefined {
  const owners: readonly (readonly [string, string])[] = tables[table].owners;
  for (const [owner, column] of owners) {
    const id = row?.[column];
    if (typeof id === 'string') return { table: owner as TableName, id };
  }
  return undefined;
}

function ownersOf(read: Reader, table: TableName, row: StoredRow | null): NamedRow[] {
  const owner = ownerOf(table, row);
  if (owner === undefined) return [];
  const known = lastKnown(read, owner.table, owner.id)?.row ?? null;
  return [namedRow(read, owner.table, owner.id, known), ...ownersOf(read, owner.table, known)];
}

/** A row as a person would speak of it: what it is called, whose it is, what it is part of. */
export function recordedRow(
  read: Reader,
  table: TableName,
  id: string,
  { row, isHere }: { readonly row: StoredRow | null; readonly isHere: boolean },
): RecordedRow {
  const isKept = row === null || isOfOpenSitting(read, table, row);
  const also = isKept ? [] : (naming[table].also ?? []).map((each) => nameAt(read, each, row));
  return {
    ...namedRow(read, table, id, row),
    also: also.filter((each) => each !== ''),
    isHere,
    of: ownersOf(read, table, row),
  };
}
