import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sqliteDriver } from '#store/sqlite-driver.ts';
import { openStrangeDatabase, type StrangeDatabase } from '#store/strange/strange-database.ts';
import { temporaryFolder } from './temporary-kitchen.ts';

const Database = sqliteDriver();

/** A file with tasters, and one table that no kitchen has. */
function strange(more = ''): StrangeDatabase {
  const file = join(temporaryFolder(), 'strange.sidejar');
  const db = new Database(file);
  db.exec(`CREATE TABLE tasters (id, name); CREATE TABLE secrets (word); INSERT INTO secrets VALUES ('hidden');
    INSERT INTO tasters VALUES (1, 'Ada'), (9007199254740993, 'Bo'); ${more}`);
  db.close();
  return openStrangeDatabase(file);
}

/** What was read of a statement before it failed, and the failure. */
function readAll(db: StrangeDatabase, sql: string) {
  const rows: unknown[] = [];
  try {
    for (const row of db.rows(sql)) rows.push(row);
    return { rows, failure: null };
  } catch (error) {
    return { rows, failure: String(error) };
  }
}

describe('openStrangeDatabase(copy)', () => {
  it('reads rows of a kitchen’s tables, whole numbers of any size among them', () => {
    const db = strange();
    expect(readAll(db, 'SELECT id, name FROM tasters')).toEqual({
      rows: [
        { id: 1, name: 'Ada' },
        { id: 2 ** 53, name: 'Bo' },
      ],
      failure: null,
    });
    db.close();
  });

  // sqlite.org/c3ref/set_authorizer.html and /c3ref/limit.html say what each may refuse.
  it.each([
    ['another table', 'SELECT word FROM secrets'],
    ['a function', 'SELECT upper(name) FROM tasters'],
    ['writing', "INSERT INTO tasters VALUES (3, 'Cy')"],
    ['a change of the schema', 'DROP TABLE tasters'],
    ['another file', "ATTACH ':memory:' AS other"],
    ['a setting', 'PRAGMA writable_schema = ON'],
    ['an endless query', 'WITH RECURSIVE n(i) AS (VALUES (1) UNION ALL SELECT i + 1 FROM n) SELECT i FROM n'],
  ])('gives no leave for %s', (_what, sql) => {
    const db = strange();
    const { rows, failure } = readAll(db, sql);
    expect(rows).toEqual([]);
    expect(failure).toMatch(/not authorized|prohibited|attached/);
    expect(readAll(db, 'SELECT name FROM tasters').rows).toHaveLength(2);
    db.close();
  });

  it('builds no text beyond 16 million letters; what came before is read', () => {
    const db = strange("INSERT INTO tasters VALUES (3, printf('%.*c', 17000000, 'x'));");
    const { rows, failure } = readAll(db, 'SELECT name FROM tasters');
    expect(rows).toHaveLength(2);
    expect(failure).toMatch(/too big/);
    db.close();
  });
});
