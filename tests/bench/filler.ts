import { commitmentOf, entryHash, firstHash, newSalt, rowText } from '#store/log/change-log.ts';
import { newRowId } from '#store/row-id.ts';
import type { Sqlite, Statement } from '#store/sqlite-driver.ts';
import type { Value } from '#store/statements.ts';
import { columnNames, type TableName } from '#store/tables.ts';

type Cells = Readonly<Record<string, Value>>;

const empty = new Map<TableName, Cells>();

/** Every column of a table as null, for those that a row says nothing of. */
function nothingIn(table: TableName): Cells {
  const found = empty.get(table) ?? Object.fromEntries(columnNames(table).map((name) => [name, null]));
  empty.set(table, found);
  return found;
}

/** Puts rows and their log entries, one step at a time. */
export class Filler {
  readonly #db: Sqlite;
  readonly #rows = new Map<TableName, Statement<unknown[]>>();
  readonly #change: Statement<unknown[]>;
  readonly #step: Statement<unknown[]>;
  #step_id = 1;
  #change_id = 1;
  #previous = firstHash;
  #stepNow = { id: 0, at: '', request: '', kind: 'do' as const, target: null };
  time: number;

  constructor(db: Sqlite, start: number) {
    this.time = start;
    this.#db = db;
    const last = db.prepare('SELECT id, step_id, hash FROM changes ORDER BY id DESC LIMIT 1').get() as
      | { id: number; step_id: number; hash: string }
      | undefined;
    this.#change_id = (last?.id ?? 0) + 1;
    this.#step_id = (last?.step_id ?? 0) + 1;
    this.#previous = last?.hash ?? firstHash;
    this.#change = db.prepare(
      'INSERT INTO changes (id, step_id, table_name, row_id, before, after, previous_hash, hash, salt) VALUES (?, ?, ?, ?, NULL, ?, ?, ?, ?)',
    );
    this.#step = db.prepare("INSERT INTO steps (id, at, request, summary, kind) VALUES (?, ?, ?, ?, 'do')");
  }

  step(request: string, summary: string): void {
    const at = new Date(this.time).toISOString();
    this.#stepNow = { id: this.#step_id, at, request, kind: 'do', target: null };
    this.#step.run(this.#step_id, at, request, summary);
    this.#step_id += 1;
  }

  insert(table: TableName, cells: Cells): string {
    const id = newRowId(this.time);
    const row: Cells = { id, revision: 1, is_sample: 0, created_at: new Date(this.time).toISOString(), ...cells };
    let statement = this.#rows.get(table);
    if (statement === undefined) {
      const names = columnNames(table);
      statement = this.#db.prepare(
        `INSERT INTO ${table} (${names.join(', ')}) VALUES (${names.map((name) => `@${name}`).join(', ')})`,
      );
      this.#rows.set(table, statement);
    }
    statement.run({ ...nothingIn(table), ...row });
    const after = rowText(row);
    const salt = newSalt();
    const entry = { id: this.#change_id, table_name: table, row_id: id, previous_hash: this.#previous };
    const hash = entryHash(entry, this.#stepNow, commitmentOf(salt, null, after));
    this.#change.run(entry.id, this.#stepNow.id, table, id, after, this.#previous, hash, salt);
    this.#change_id += 1;
    this.#previous = hash;
    return id;
  }
}
