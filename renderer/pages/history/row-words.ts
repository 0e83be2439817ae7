import { phrase } from '#core/words/phrase.ts';
import { dateWords, timeWords } from '#renderer/format/moments.ts';
import { joined } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { RecordedTable } from '#shared/recorded-tables.ts';
import { listWords } from './list-words.ts';

export type RecordedRow = NonNullable<ValueOf<'history:about'>['row']>;
type NamedRow = Pick<RecordedRow, 'table' | 'id' | 'name' | 'at'>;

interface RowWords {
  /** One row, by its name and its moment in words; either may be empty. */
  readonly one: (name: string, at: string) => string;
  /** What several are called, above their list. */
  readonly many: string;
}

const withName = (bare: string, named: string, name: string): string => (name === '' ? bare : named);

/** What the rows of each table are called. A table without its words here does not type-check. */
const rowWords: Readonly<Record<RecordedTable, RowWords>> = {
  kitchens: { one: (name) => phrase`the kitchen “${name}”`, many: phrase`Kitchens` },
  tasters: {
    one: (name) => withName(phrase`a taster`, phrase`the taster ${name}`, name),
    many: phrase`Tasters`,
  },
  ingredients: { one: (name) => phrase`the ingredient ${name}`, many: phrase`Ingredients` },
  stocks: { one: (name) => phrase`what is on hand of ${name}`, many: phrase`Amounts on hand` },
  cultures: { one: (name) => phrase`the culture “${name}”`, many: phrase`Cultures` },
  culture_log: {
    one: (name, at) => phrase`culture ${listWords('what', name)}, ${at}`,
    many: phrase`What was done to it`,
  },
  bases: { one: (name) => phrase`the base “${name}”`, many: phrase`Bases` },
  trials: { one: (name) => phrase`the trial “${name}”`, many: phrase`Trials` },
  levels: { one: (name) => phrase`the level ${name}`, many: phrase`Levels` },
  jars: { one: (name) => phrase`jar ${name}`, many: phrase`Jars` },
  readings: { one: (_, at) => phrase`reading of ${at}`, many: phrase`Readings` },
  sightings: { one: (name, at) => phrase`seen: ${listWords('what', name)}, ${at}`, many: phrase`Sightings` },
  sips: { one: (_, at) => phrase`sip of ${at}`, many: phrase`Sips` },
  photos: { one: (_, at) => phrase`photo of ${at}`, many: phrase`Photos` },
  tastings: { one: (name) => phrase`the tasting “${name}”`, many: phrase`Tastings` },
  attributes: { one: (name) => phrase`what is asked: ${name}`, many: phrase`What is asked` },
  samples: { one: (name) => phrase`the sample ${name}`, many: phrase`Samples` },
  servings: { one: () => phrase`a cup served`, many: phrase`Cups served` },
  scores: { one: (name) => withName(phrase`a score`, phrase`a score for ${name}`, name), many: phrase`Scores` },
  remarks: { one: () => phrase`a remark`, many: phrase`Remarks` },
  wishes: { one: (name) => phrase`what is wanted of ${name}`, many: phrase`What is wanted` },
  set_asides: {
    one: (name) => withName(phrase`a taster set aside`, phrase`${name}, set aside`, name),
    many: phrase`Tasters set aside`,
  },
  discriminations: { one: (name) => phrase`the test “${name}”`, many: phrase`Tests of two jars` },
  presentations: {
    one: (name) => withName(phrase`a tray`, phrase`a tray of round ${name}`, name),
    many: phrase`Trays`,
  },
  house_recipes: { one: (name) => phrase`the house recipe “${name}”`, many: phrase`House recipes` },
  recipe_versions: { one: (name) => phrase`version ${name}`, many: phrase`Its versions` },
  version_sources: { one: (name) => phrase`it comes from jar ${name}`, many: phrase`Where it comes from` },
  batches: {
    one: (name, at) => withName(phrase`batch of ${at}`, phrase`batch ${name} of ${at}`, name),
    many: phrase`Batches`,
  },
  erasures: { one: (_, at) => phrase`erased for good, ${at}`, many: phrase`Erasures` },
  snoozes: { one: (name, at) => phrase`put off until ${at}: ${listWords('need', name)}`, many: phrase`Put off` },
  bottlings: {
    one: (name, at) => withName(phrase`bottles of ${at}`, phrase`bottles ${name} of ${at}`, name),
    many: phrase`Bottles`,
  },
  bottle_openings: {
    one: (name, at) => phrase`a bottle opened ${at}: ${listWords('pour', name)}`,
    many: phrase`Bottles opened`,
  },
};

/** @example rowName({ table: 'jars', name: 'A1', … }) // 'jar A1' */
export function rowName({ table, name, at }: NamedRow): string {
  return rowWords[table].one(name, at === null ? '' : `${dateWords(at)}, ${timeWords(at)}`);
}

/** With whose it is and of which sample, where that may be told. */
export function wholeName(row: RecordedRow): string {
  return row.also.length === 0 ? rowName(row) : `${rowName(row)} (${row.also.join(', ')})`;
}

/** What a row is part of, from the nearest outwards. */
export function ownersWords(row: RecordedRow): string {
  return joined(row.of.map(rowName));
}

export function manyWords(table: RecordedTable): string {
  return rowWords[table].many;
}

const pages: Readonly<Partial<Record<RecordedTable, (id: string) => string>>> = {
  jars: (id) => `/jars/${id}`,
  trials: (id) => `/trials/${id}`,
  tasters: () => '/tasters',
  house_recipes: (id) => `/house-recipes/${id}`,
  bases: (id) => `/bases/${id}`,
  cultures: (id) => `/cultures/${id}`,
  tastings: (id) => `/tastings/${id}`,
  discriminations: (id) => `/telling-apart/${id}`,
  ingredients: () => '/pantry',
  stocks: () => '/pantry',
  kitchens: () => '/data',
  erasures: () => '/data',
};

/** The pages that a row stands on: its own, or those of what it is part of, from the nearest outwards. */
export function pagesOf(row: RecordedRow): { readonly words: string; readonly path: string }[] {
  return [row, ...row.of].flatMap((each) => {
    const path = pages[each.table]?.(each.id);
    return path === undefined ? [] : [{ words: rowName(each), path }];
  });
}
