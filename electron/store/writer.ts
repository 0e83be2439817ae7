import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { bothVersions } from './both-versions.ts';
import { type ChangeLog, commitmentOf, erasedText, rowText, type StoredChange } from './log/change-log.ts';
import type { Reader } from './reader.ts';
import { newRowId } from './row-id.ts';
import type { Statements, Value } from './statements.ts';
import { type Columns, columnNames, ownedTables, type Row, type TableName } from './tables.ts';

/** Reads and writes rows inside one transaction; every change also goes into the change log. */
export interface Writer extends Reader {
  insert<Table extends TableName>(table: Table, values: Columns<Table>): Row<Table>;
  /** @throws Failure `changed-since` when `seenRevision` is given and the row is a newer edition */
  update<Table extends TableName>(
    table: Table,
    id: string,
    values: Partial<Columns<Table>>,
    seenRevision?: number,
  ): Row<Table>;
  /** Removes a row and all rows that are part of it; the bin keeps them. */
  remove(table: TableName, id: string): void;
  /** Puts a row exactly as it is written (undo and restoring use it); `null` takes it away. */
  put(table: TableName, id: string, row: Readonly<Record<string, Value>> | null): void;
  /**
   * Puts a row (`null` takes it away) and erases for good what the log says of it until now.
   *
   * @returns the entries of the log that were erased
   */
  forget(table: TableName, id: string, row: Readonly<Record<string, Value>> | null): number[];
  readonly now: string;
}

interface WriterParts {
  readonly statement: Statements;
  readonly read: Reader;
  readonly log: ChangeLog;
  readonly now: Date;
  readonly markAsSample: boolean;
  readonly touched: Map<TableName, Set<string>>;
  /** Has references checked at the end of the transaction instead of row by row. */
  deferReferences(): void;
}

/** What is the same for every row of a table. */
interface TableText {
  readonly insert: string;
  readonly update: string;
  /** Every column as null: a row from a log entry that is older than a column has nothing to say about it. */
  readonly nothing: Readonly<Record<string, null>>;
}

const texts = new Map<TableName, TableText>();

function textOf(table: TableName): TableText {
  const known = texts.get(table);
  if (known !== undefined) return known;
  const names = columnNames(table);
  const text = {
    insert: `INSERT INTO ${table} (${names.join(', ')}) VALUES (${names.map((name) => `@${name}`).join(', ')})`,
    update: `UPDATE ${table} SET ${names.map((name) => `${name} = @${name}`).join(', ')} WHERE id = @id`,
    nothing: Object.fromEntries(names.map((name) => [name, null])),
  };
  texts.set(table, text);
  return text;
}

export function writerOf(parts: WriterParts): Writer {
  const { statement, read, log, now, markAsSample, touched, deferReferences } = parts;
  const at = now.toISOString();

  function note(table: TableName, id: string, before: string | null, after: object | null): void {
    log.add(table, id, before, after === null ? null : rowText(after as Record<string, Value>));
    const ids = touched.get(table) ?? new Set();
    ids.add(id);
    touched.set(table, ids);
  }

  function place(
    table: TableName,
    id: string,
    before: object | undefined,
    row: Readonly<Record<string, Value>> | null,
  ): void {
    if (row === null) {
      statement(`DELETE FROM ${table} WHERE id = ?`).run(id);
    } else {
      const { insert, update, nothing } = textOf(table);
      statement(before === undefined ? insert : update).run({ ...nothing, ...row });
    }
  }

  function write(table: TableName, id: string, row: Readonly<Record<string, Value>> | null): void {
    const before = read.row(table, id);
    if (row === null && before === undefined) return;
    place(table, id, before, row);
    note(table, id, before === undefined ? null : rowText(before as unknown as Record<string, Value>), row);
  }

  /** A removed trial takes its jars and its tasting with it, and comes back, in any order. */
  function put(table: TableName, id: string, row: Readonly<Record<string, Value>> | null): void {
    deferReferences();
    write(table, id, row);
  }

  function forget(table: TableName, id: string, row: Readonly<Record<string, Value>> | null): number[] {
    const standing = read.all<Pick<StoredChange, 'id' | 'before' | 'after' | 'salt'>>(
      'SELECT id, before, after, salt FROM changes WHERE table_name = ? AND row_id = ? AND commitment IS NULL',
      table,
      id,
    );
    const blank = statement(
      'UPDATE changes SET before = iif(before IS NULL, NULL, @erased), after = iif(after IS NULL, NULL, @erased), salt = NULL, commitment = @commitment WHERE id = @id',
    );
    for (const { id: entry, before, after, salt } of standing) {
      blank.run({ id: entry, erased: erasedText, commitment: commitmentOf(salt ?? '', before, after) });
    }
    const before = read.row(table, id);
    deferReferences();
    if (before !== undefined || row !== null) {
      place(table, id, before, row);
      note(table, id, before === undefined ? null : erasedText, row);
    }
    return standing.map(({ id: entry }) => entry);
  }

  function remove(table: TableName, id: string): void {
    if (read.row(table, id) === undefined) return;
    for (const owned of ownedTables(table)) {
      const rows = read.all<{ id: string }>(`SELECT id FROM ${owned.table} WHERE ${owned.column} = ?`, id);
      for (const row of rows) remove(owned.table, row.id);
    }
    put(table, id, null);
  }

  return {
    ...read,
    now: at,
    put,
    remove,
    forget,
    insert<Table extends TableName>(table: Table, values: Columns<Table>): Row<Table> {
      const id = newRowId(now.getTime());
      const row = { id, revision: 1, is_sample: markAsSample ? 1 : 0, created_at: at, ...values } as Row<Table>;
      write(table, id, row as unknown as Record<string, Value>);
      return row;
    },
    update<Table extends TableName>(table: Table, id: string, values: Partial<Columns<Table>>, seenRevision?: number) {
      const before = read.row(table, id);
      if (before === undefined) throw new Failure('not-found', phrase`There is no such row in ${table} any more.`);
      if (seenRevision !== undefined && before.revision !== seenRevision) {
        throw new Failure('changed-since', bothVersions(before, values), ['revision']);
      }
      const row = { ...before, ...values, revision: before.revision + 1 };
      write(table, id, row as unknown as Record<string, Value>);
      return row;
    },
  };
}
