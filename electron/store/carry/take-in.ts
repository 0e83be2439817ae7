import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { firstPart } from '#shared/first-part.ts';
import { rowText } from '../log/change-log.ts';
import type { Reader } from '../reader.ts';
import type { Value } from '../statements.ts';
import type { TableName } from '../tables.ts';
import type { Writer } from '../writer.ts';
import { type CarriedFile, carriedTables } from './carried-file.ts';
import { rowProblem, wholeRow } from './row-problem.ts';

type Row = Record<string, Value>;

/** What taking a file in would do, or did. */
export interface TakeIn {
  readonly fresh: { readonly table: TableName; readonly rows: number }[];
  /** Rows that stand here already, alike. */
  readonly same: number;
  /** Rows that stand here in another edition; ours stay. */
  readonly kept: { readonly table: TableName; readonly name: string }[];
  /** People and things whose name is taken here, with the name they get. */
  readonly renamed: { readonly table: TableName; readonly name: string; readonly becomes: string }[];
  readonly write: (writer: Writer, every: (done: number, total: number) => void) => void;
}

/** Tables whose rows are told apart by a name that may be taken here by another. */
const named: readonly TableName[] = ['tasters', 'cultures', 'house_recipes'];
/** Tables whose rows other rows call by name: ours stay, so that nothing here changes its meaning. */
const calledByName: readonly TableName[] = ['ingredients', 'stocks'];

function wordsOf(row: Row): string {
  return String(row.name ?? row.question ?? row.label ?? row.id);
}

function standsNamed(read: Reader, table: TableName, name: string): Row | undefined {
  return read.one<Row>(`SELECT * FROM ${table} WHERE name = ?`, name);
}

function isTaken(read: Reader, table: TableName, name: string, arriving: ReadonlySet<string>): boolean {
  return standsNamed(read, table, name) !== undefined || arriving.has(name.toLowerCase());
}

/** "Ann (Lane kitchen)", then "Ann (Lane kitchen) 2": whoever has the name here keeps it. */
function freeName(read: Reader, table: TableName, name: string, from: string, arriving: ReadonlySet<string>): string {
  const base = `${firstPart(name, 140)} (${firstPart(from, 40)})`;
  for (let number = 1; ; number += 1) {
    const tried = number === 1 ? base : `${base} ${number}`;
    if (!isTaken(read, table, tried, arriving)) return tried;
  }
}

function isEmpty(read: Reader): boolean {
  return carriedTables.every(
    (table) => table === 'kitchens' || read.one(`SELECT 1 FROM ${table} LIMIT 1`) === undefined,
  );
}

/**
 * Looks at a carried file row by row and says what would become of each.
 *
 * Method: rows keep their ids, so the same row is known again. A row that stands here alike is passed over; one that stands here in
 * another edition stays as it is here. A person, culture or recipe whose name is taken here gets the sending kitchen's name behind its
 * own. The kitchen's own row is taken only by an empty kitchen.
 *
 * @throws Failure `invalid-input` with the first row that can't stand in a kitchen; then nothing is taken
 */
export function takeIn(read: Reader, { rows, from }: CarriedFile, watch: () => void): TakeIn {
  const wasEmpty = isEmpty(read);
  const puts: { table: TableName; row: Row }[] = [];
  const fresh: TakeIn['fresh'] = [];
  const kept: TakeIn['kept'] = [];
  const renamed: TakeIn['renamed'] = [];
  let same = 0;
  for (const table of carriedTables) {
    const given = rows.get(table) ?? [];
    if (table === 'kitchens' && !wasEmpty) continue;
    const names = new Set<string>();
    const seen = new Set<string>();
    let count = 0;
    given.forEach((given_row, position) => {
      if (position % 1000 === 0) watch();
      const problem = rowProblem(table, given_row);
      if (problem !== null || seen.has(String(given_row.id))) {
        const why = problem ?? phrase`its id stands twice`;
        throw new Failure(
          'invalid-input',
          phrase`Row ${position + 1} of ${table} can’t stand in a kitchen: ${why}. Nothing was taken.`,
          ['text', 'tables', table, position],
        );
      }
      seen.add(String(given_row.id));
      const row = wholeRow(table, given_row);
      const standing = table === 'kitchens' ? undefined : read.row(table, String(row.id));
      if (standing !== undefined) {
        if (rowText(standing as unknown as Row) === rowText(row)) same += 1;
        else kept.push({ table, name: wordsOf(row) });
        return;
      }
      const name = String(row.name ?? '');
      if (calledByName.includes(table) && standsNamed(read, table, name) !== undefined) {
        kept.push({ table, name });
        return;
      }
      if (named.includes(table)) {
        const arriving =
          table === 'cultures' || table === 'tasters' || table === 'house_recipes' ? names : new Set<string>();
        if (isTaken(read, table, name, arriving)) {
          const becomes = freeName(read, table, name, from, names);
          renamed.push({ table, name, becomes });
          row.name = becomes;
        }
        names.add(String(row.name).toLowerCase());
      }
      puts.push({ table, row });
      count += 1;
    });
    if (count > 0) fresh.push({ table, rows: count });
  }
  return {
    fresh,
    same,
    kept,
    renamed,
    write(writer, every) {
      if (rows.has('kitchens') && wasEmpty) {
        for (const { id } of writer.all<{ id: string }>('SELECT id FROM kitchens')) writer.put('kitchens', id, null);
      }
      puts.forEach(({ table, row }, position) => {
        if (position % 500 === 0) every(position, puts.length);
        try {
          writer.put(table, String(row.id), row);
        } catch (error) {
          const isRange =
            error instanceof Error && 'code' in error && String(error.code).startsWith('SQLITE_CONSTRAINT');
          if (!isRange) throw error;
          throw new Failure(
            'invalid-input',
            phrase`“${wordsOf(row)}” (${table}) holds a value that a kitchen can’t hold, or stands twice. Nothing was taken.`,
            ['text', 'tables', table],
          );
        }
      });
    },
  };
}
