import type { Statements, Value } from './statements.ts';
import type { Row, TableName } from './tables.ts';

/** Reads rows. */
export interface Reader {
  all<Found>(sql: string, ...values: Value[]): Found[];
  one<Found>(sql: string, ...values: Value[]): Found | undefined;
  row<Table extends TableName>(table: Table, id: string): Row<Table> | undefined;
}

export function readerOf(statement: Statements): Reader {
  return {
    all: <Found>(sql: string, ...values: Value[]) => statement(sql).all(...values) as Found[],
    one: <Found>(sql: string, ...values: Value[]) => statement(sql).get(...values) as Found | undefined,
    row: <Table extends TableName>(table: Table, id: string) =>
      statement(`SELECT * FROM ${table} WHERE id = ?`).get(id) as Row<Table> | undefined,
  };
}
