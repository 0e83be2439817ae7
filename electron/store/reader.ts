import type { Sqlite, Statement } from './sqlite-driver.ts';
import type { Row, TableName } from './tables.ts';

export type Value = string | number | null;

/** Reads rows. Statements are prepared once and kept. */
export interface Reader {
  all<Found>(sql: string, ...values: Value[]): Found[];
  one<Found>(sql: string, ...values: Value[]): Found | undefined;
  row<Table extends TableName>(table: Table, id: string): Row<Table> | undefined;
}

export function readerOf(db: Sqlite): Reader {
  const kept = new Map<string, Statement<Value[]>>();
  function statement(sql: string) {
    let found = kept.get(sql);
    if (found === undefined) {
      found = db.prepare<Value[]>(sql);
      kept.set(sql, found);
    }
    return found;
  }
  return {
    all: <Found>(sql: string, ...values: Value[]) => statement(sql).all(...values) as Found[],
    one: <Found>(sql: string, ...values: Value[]) => statement(sql).get(...values) as Found | undefined,
    row: <Table extends TableName>(table: Table, id: string) =>
      statement(`SELECT * FROM ${table} WHERE id = ?`).get(id) as Row<Table> | undefined,
  };
}
