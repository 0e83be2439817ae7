import type { Sqlite, Statement } from './sqlite-driver.ts';

/** What a column can hold. */
export type Value = string | number | null;

/** Prepares each statement once and keeps it: preparing costs more than most reads and writes. */
export type Statements = (sql: string) => Statement<(Value | Readonly<Record<string, Value>>)[]>;

export function statementsOf(db: Sqlite): Statements {
  const kept = new Map<string, ReturnType<Statements>>();
  return (sql) => {
    let found = kept.get(sql);
    if (found === undefined) {
      found = db.prepare<(Value | Readonly<Record<string, Value>>)[]>(sql);
      kept.set(sql, found);
    }
    return found;
  };
}
