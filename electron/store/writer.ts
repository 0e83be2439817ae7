import { Failure } from '#shared/failure.ts';
import { type ChangeLog, rowText } from './change-log.ts';
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
  readonly now: string;
}

interface WriterParts {
  readonly statement: Statements;
  readonly read: Reader;
  readonly log: ChangeLog;
  readonly now: Date;
  readonly markAsSample: boolean;
  readonly touched: Map<TableName, Set<string>>;
}

export function writerOf({ statement, read, log, now, markAsSample, touched }: WriterParts): Writer {
  const at = now.toISOString();

  function note(table: TableName, id: string, before: object | undefined, after: object | null): void {
    log.add(
      table,
      id,
      before === undefined ? null : rowText(before as Record<string, Value>),
      after === null ? null : rowText(after as Record<string, Value>),
    );
    const ids = touched.get(table) ?? new Set();
    ids.add(id);
    touched.set(table, ids);
  }

  function put(table: TableName, id: string, row: Readonly<Record<string, Value>> | null): void {
    const before = read.row(table, id);
    if (row === null) {
      if (before === undefined) return;
      statement(`DELETE FROM ${table} WHERE id = ?`).run(id);
    } else {
      const names = columnNames(table);
      const sql =
        before === undefined
          ? `INSERT INTO ${table} (${names.join(', ')}) VALUES (${names.map((name) => `@${name}`).join(', ')})`
          : `UPDATE ${table} SET ${names.map((name) => `${name} = @${name}`).join(', ')} WHERE id = @id`;
      // A row from a log entry that is older than a column has nothing to say about it.
      statement(sql).run({ ...Object.fromEntries(names.map((name) => [name, null])), ...row });
    }
    note(table, id, before, row);
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
    insert<Table extends TableName>(table: Table, values: Columns<Table>): Row<Table> {
      const id = newRowId(now.getTime());
      const row = { id, revision: 1, is_sample: markAsSample ? 1 : 0, created_at: at, ...values } as Row<Table>;
      put(table, id, row as unknown as Record<string, Value>);
      return row;
    },
    update<Table extends TableName>(table: Table, id: string, values: Partial<Columns<Table>>, seenRevision?: number) {
      const before = read.row(table, id);
      if (before === undefined) throw new Failure('not-found', `There is no such row in ${table} any more.`);
      if (seenRevision !== undefined && before.revision !== seenRevision) {
        throw new Failure(
          'changed-since',
          'This was changed elsewhere since you opened it. Look at both before you save.',
          ['revision'],
        );
      }
      const row = { ...before, ...values, revision: before.revision + 1 };
      put(table, id, row as unknown as Record<string, Value>);
      return row;
    },
  };
}
