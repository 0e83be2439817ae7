import { counting } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { CountWords } from '#renderer/format/counted.ts';

interface Table {
  readonly one: string;
  readonly many: string;
  readonly counted: CountWords;
  /** Kept within others: not shown among what the kitchen holds. */
  readonly isInner?: true;
}

/** What the rows of each table are called, alone, together and counted. */
const tables: Readonly<Record<string, Table>> = {
  trials: {
    one: phrase`trial`,
    many: phrase`trials`,
    counted: (isOne, n) => (isOne ? phrase`${n} trial` : phrase`${n} trials`),
  },
  jars: { one: phrase`jar`, many: phrase`jars`, counted: (isOne, n) => (isOne ? phrase`${n} jar` : phrase`${n} jars`) },
  readings: {
    one: phrase`reading`,
    many: phrase`readings`,
    counted: (isOne, n) => (isOne ? phrase`${n} reading` : phrase`${n} readings`),
  },
  sightings: {
    one: phrase`sighting`,
    many: phrase`sightings`,
    counted: (isOne, n) => (isOne ? phrase`${n} sighting` : phrase`${n} sightings`),
  },
  photos: {
    one: phrase`photo`,
    many: phrase`photos`,
    counted: (isOne, n) => (isOne ? phrase`${n} photo` : phrase`${n} photos`),
  },
  sips: { one: phrase`sip`, many: phrase`sips`, counted: (isOne, n) => (isOne ? phrase`${n} sip` : phrase`${n} sips`) },
  tastings: {
    one: phrase`tasting`,
    many: phrase`tastings`,
    counted: (isOne, n) => (isOne ? phrase`${n} tasting` : phrase`${n} tastings`),
  },
  scores: {
    one: phrase`score`,
    many: phrase`scores`,
    counted: (isOne, n) => (isOne ? phrase`${n} score` : phrase`${n} scores`),
  },
  tasters: {
    one: phrase`taster`,
    many: phrase`tasters`,
    counted: (isOne, n) => (isOne ? phrase`${n} taster` : phrase`${n} tasters`),
  },
  house_recipes: {
    one: phrase`house recipe`,
    many: phrase`house recipes`,
    counted: (isOne, n) => (isOne ? phrase`${n} house recipe` : phrase`${n} house recipes`),
  },
  batches: {
    one: phrase`batch`,
    many: phrase`batches`,
    counted: (isOne, n) => (isOne ? phrase`${n} batch` : phrase`${n} batches`),
  },
  bottlings: {
    one: phrase`bottling`,
    many: phrase`bottlings`,
    counted: (isOne, n) => (isOne ? phrase`${n} bottling` : phrase`${n} bottlings`),
  },
  bases: {
    one: phrase`base`,
    many: phrase`bases`,
    counted: (isOne, n) => (isOne ? phrase`${n} base` : phrase`${n} bases`),
  },
  cultures: {
    one: phrase`culture`,
    many: phrase`cultures`,
    counted: (isOne, n) => (isOne ? phrase`${n} culture` : phrase`${n} cultures`),
  },
  ingredients: {
    one: phrase`ingredient of your own`,
    many: phrase`ingredients of your own`,
    counted: (isOne, n) => (isOne ? phrase`${n} ingredient of your own` : phrase`${n} ingredients of your own`),
  },
  kitchens: {
    one: phrase`kitchen’s name and measures`,
    many: phrase`kitchens`,
    counted: (isOne, n) => (isOne ? phrase`${n} kitchen’s name and measures` : phrase`${n} kitchens`),
    isInner: true,
  },
  levels: {
    one: phrase`level`,
    many: phrase`levels`,
    counted: (isOne, n) => (isOne ? phrase`${n} level` : phrase`${n} levels`),
    isInner: true,
  },
  attributes: {
    one: phrase`attribute`,
    many: phrase`attributes`,
    counted: (isOne, n) => (isOne ? phrase`${n} attribute` : phrase`${n} attributes`),
    isInner: true,
  },
  samples: {
    one: phrase`sample`,
    many: phrase`samples`,
    counted: (isOne, n) => (isOne ? phrase`${n} sample` : phrase`${n} samples`),
    isInner: true,
  },
  servings: {
    one: phrase`serving`,
    many: phrase`servings`,
    counted: (isOne, n) => (isOne ? phrase`${n} serving` : phrase`${n} servings`),
    isInner: true,
  },
  remarks: {
    one: phrase`remark`,
    many: phrase`remarks`,
    counted: (isOne, n) => (isOne ? phrase`${n} remark` : phrase`${n} remarks`),
    isInner: true,
  },
  wishes: {
    one: phrase`wish`,
    many: phrase`wishes`,
    counted: (isOne, n) => (isOne ? phrase`${n} wish` : phrase`${n} wishes`),
    isInner: true,
  },
  set_asides: {
    one: phrase`taster set aside`,
    many: phrase`tasters set aside`,
    counted: (isOne, n) => (isOne ? phrase`${n} taster set aside` : phrase`${n} tasters set aside`),
    isInner: true,
  },
  discriminations: {
    one: phrase`test of two jars`,
    many: phrase`tests of two jars`,
    counted: (isOne, n) => (isOne ? phrase`${n} test of two jars` : phrase`${n} tests of two jars`),
    isInner: true,
  },
  presentations: {
    one: phrase`tray`,
    many: phrase`trays`,
    counted: (isOne, n) => (isOne ? phrase`${n} tray` : phrase`${n} trays`),
    isInner: true,
  },
  recipe_versions: {
    one: phrase`version`,
    many: phrase`versions`,
    counted: (isOne, n) => (isOne ? phrase`${n} version` : phrase`${n} versions`),
    isInner: true,
  },
  version_sources: {
    one: phrase`source of a version`,
    many: phrase`sources of versions`,
    counted: (isOne, n) => (isOne ? phrase`${n} source of a version` : phrase`${n} sources of versions`),
    isInner: true,
  },
  stocks: {
    one: phrase`amount on hand`,
    many: phrase`amounts on hand`,
    counted: (isOne, n) => (isOne ? phrase`${n} amount on hand` : phrase`${n} amounts on hand`),
    isInner: true,
  },
};

/** The tables whose rows count among what a kitchen holds. */
export const shownTables: readonly { readonly table: string; readonly many: string }[] = Object.entries(tables).flatMap(
  ([table, { many, isInner }]) => (isInner ? [] : [{ table, many }]),
);

/** What one row of a table is called. */
export function oneOf(table: string): string {
  return tables[table]?.one ?? phrase`row of ${table}`;
}

/** @example countedRows(3, 'jars') // '3 jars' */
export function countedRows(count: number, table: string): string {
  const n = counting(count);
  const said = tables[table]?.counted;
  if (said !== undefined) return said(count === 1, n);
  return count === 1 ? phrase`${n} row of ${table}` : phrase`${n} rows of ${table}`;
}
