import { phrase } from '#core/words/phrase.ts';
import type { Migration } from '../migrations/migration.ts';
import { type Sqlite, sqliteDriver } from '../sqlite-driver.ts';

interface SchemaEntry {
  readonly type: string;
  readonly name: string;
  readonly tbl_name: string;
  readonly sql: string | null;
}

/** What SQLite keeps for its own planning, made by ANALYZE; it is read by SQLite alone. */
const ownStatistics = /^sqlite_stat[1-4]$/;

function entriesOf(db: Sqlite): SchemaEntry[] {
  return db
    .prepare<[], SchemaEntry>('SELECT type, name, tbl_name, sql FROM sqlite_schema ORDER BY type, name')
    .all()
    .filter(({ type, name }) => !(type === 'table' && ownStatistics.test(name)));
}

const made = new WeakMap<readonly Migration[], Map<number, readonly SchemaEntry[]>>();

/** The schema as the migrations make it in a new file, up to and with number `schema`. */
function expectedEntries(migrations: readonly Migration[], schema: number): readonly SchemaEntry[] {
  const known = made.get(migrations) ?? new Map<number, readonly SchemaEntry[]>();
  made.set(migrations, known);
  const found = known.get(schema);
  if (found !== undefined) return found;
  const Database = sqliteDriver();
  const db = new Database(':memory:');
  try {
    for (const migration of migrations) if (migration.number <= schema) migration.apply(db);
    const entries = entriesOf(db);
    known.set(schema, entries);
    return entries;
  } finally {
    db.close();
  }
}

function told({ type, name }: SchemaEntry): string {
  return `${type} “${name.slice(0, 60)}”`;
}

/**
 * Where a file's schema is not the one that the migrations make, in a few words; null when it is.
 *
 * Method: every table, index, view and trigger by kind, name and the text that made it. So a view in a table's place, a trigger, a
 * generated column, a virtual table, a changed CHECK and one thing more or less are all seen, before any row is read.
 *
 * @param schema the number of the file's last migration; 1 or more
 */
export function strangeSchema(db: Sqlite, migrations: readonly Migration[], schema: number): string | null {
  const expected = new Map(expectedEntries(migrations, schema).map((entry) => [`${entry.type} ${entry.name}`, entry]));
  for (const entry of entriesOf(db)) {
    const own = expected.get(`${entry.type} ${entry.name}`);
    if (own === undefined) return phrase`it has a ${told(entry)} that no kitchen has`;
    if (own.sql !== entry.sql || own.tbl_name !== entry.tbl_name) return phrase`its ${told(entry)} is made otherwise`;
    expected.delete(`${entry.type} ${entry.name}`);
  }
  const [missing] = expected.values();
  return missing === undefined ? null : phrase`its ${told(missing)} is missing`;
}
