import { phrase } from '#core/words/phrase.ts';
import { carriedFile, carriedFormat, mostPictures } from '#shared/contract/carried-file.ts';
import { atFirstComplaint } from '#shared/contract/first-complaint.ts';
import { Failure } from '#shared/failure.ts';
import { jsonExcess } from '#shared/json-excess.ts';
import type { Value } from '../statements.ts';
import { type TableName, tableNames } from '../tables.ts';

/** What travels: every table but the erasures, which speak of this file's own log and would say nothing true of another's. */
export const carriedTables = tableNames.filter((table) => table !== 'erasures');

/** Rows by table, as they stand in a kitchen. */
export type CarriedRows = ReadonlyMap<TableName, readonly Readonly<Record<string, Value>>[]>;

export interface CarriedFile {
  /** The kitchen's own name, so that a person knows where it comes from. */
  readonly from: string;
  readonly holds: 'kitchen' | 'trial';
  /** The number of the schema's last migration. */
  readonly schema: number;
  readonly rows: CarriedRows;
  /** Photos' files by their SHA-256, as base64. */
  readonly pictures: ReadonlyMap<string, string>;
}

/** File, tables, table, row; and a row says its id and its moment at least, in 100 characters or more. */
const bounds = { depth: 4, members: mostPictures, charactersEach: 60 };

/**
 * Reads a carried file. Its length, its nesting and how much it holds are looked at before it is parsed.
 *
 * @param schema the number of this program's own last migration
 * @throws Failure `too-large` when it nests too deep or is too dense; `ill-formed-json` when it is no JSON; `invalid-input` when it is another file; `store-newer` when a newer program made it
 */
export function readCarriedFile(text: string, schema: number): CarriedFile {
  const excess = jsonExcess(text, bounds);
  if (excess !== null) {
    throw new Failure(
      'too-large',
      phrase`This file nests deeper, or holds more for its length, than any that carries a kitchen. Nothing was taken from it.`,
      ['text'],
    );
  }
  let whole: unknown;
  try {
    whole = JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text);
  } catch {
    throw new Failure('ill-formed-json', phrase`This file can’t be read: it is no JSON, or it is cut off.`, ['text']);
  }
  const read = carriedFile.safeParse(whole, atFirstComplaint);
  if (!read.success) {
    throw new Failure(
      'invalid-input',
      phrase`This is not a file that carries a kitchen or a trial. Nothing was taken from it.`,
      ['text'],
    );
  }
  if (read.data.schema > schema) {
    throw new Failure(
      'store-newer',
      phrase`A newer program wrote this file. Nothing was taken from it; update this one first.`,
      ['text'],
    );
  }
  const rows = new Map<TableName, Readonly<Record<string, Value>>[]>();
  for (const [name, own] of Object.entries(read.data.tables)) {
    const table = carriedTables.find((each) => each === name);
    if (table === undefined) {
      throw new Failure(
        'invalid-input',
        phrase`The file holds “${name.slice(0, 40)}”, which no kitchen has. Nothing was taken from it.`,
        ['text'],
      );
    }
    rows.set(table, own);
  }
  const { from, holds, schema: written, pictures = {} } = read.data;
  return { from, holds, schema: written, rows, pictures: new Map(Object.entries(pictures)) };
}

/** The pieces of a carried file, row by row, so that a large kitchen need not stand in memory as one text. */
export function* carriedText(
  { from, holds, schema, pictures }: Omit<CarriedFile, 'rows' | 'pictures'> & Partial<Pick<CarriedFile, 'pictures'>>,
  rowsOf: (table: TableName) => Iterable<Readonly<Record<string, Value>>>,
): Generator<string> {
  const withPictures = pictures === undefined || pictures.size === 0 ? {} : { pictures: Object.fromEntries(pictures) };
  const head = { format: carriedFormat, holds, schema, from, ...withPictures };
  yield `${JSON.stringify(head, null, 1).slice(0, -2)},\n "tables": {`;
  let isFirstTable = true;
  for (const table of carriedTables) {
    let isFirst = true;
    for (const row of rowsOf(table)) {
      if (isFirst) yield `${isFirstTable ? '' : ','}\n  ${JSON.stringify(table)}: [`;
      yield `${isFirst ? '' : ','}\n   ${JSON.stringify(row)}`;
      isFirst = false;
      isFirstTable = false;
    }
    if (!isFirst) yield '\n  ]';
  }
  yield '\n }\n}\n';
}
