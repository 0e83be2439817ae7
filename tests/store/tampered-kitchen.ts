import { join } from 'node:path';
import { deskOf } from '#desk/desk.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { type Sqlite, sqliteDriver } from '#store/sqlite-driver.ts';
import { temporaryFolder } from './temporary-kitchen.ts';

const Database = sqliteDriver();

/** A whole kitchen in one file, with a taster in it. */
export async function madeKitchen(name = 'k.sidejar', folder = temporaryFolder()): Promise<string> {
  const file = join(folder, name);
  const desk = deskOf(await openKitchen(file));
  await desk.handle('tasters:save', { name: 'Taster A' });
  desk.close();
  return file;
}

/** The kitchen after somebody else had it in hand. */
export async function tampered(change: (db: Sqlite) => void): Promise<string> {
  const file = await madeKitchen();
  const db = new Database(file);
  db.pragma('journal_mode = DELETE');
  db.unsafeMode();
  db.pragma('foreign_keys = OFF');
  change(db);
  db.close();
  return file;
}

function rewrite(db: Sqlite, change: string): void {
  db.pragma('writable_schema = ON');
  db.exec(change);
  db.pragma('writable_schema = RESET');
}

/** What somebody may do to a kitchen's schema, and what the refusal names. */
export const tampering: [what: string, change: (db: Sqlite) => void, names: string][] = [
  ['a trigger', (db) => db.exec('CREATE TRIGGER t AFTER INSERT ON tasters BEGIN DELETE FROM jars; END'), 'trigger “t”'],
  [
    'a view in a table’s place',
    (db) => db.exec('DROP TABLE wishes; CREATE VIEW wishes AS SELECT * FROM tasters'),
    'view “wishes”',
  ],
  [
    'a virtual table in a table’s place',
    (db) => db.exec('DROP TABLE wishes; CREATE VIRTUAL TABLE wishes USING fts5(id, revision)'),
    'wishes',
  ],
  ['a view beside', (db) => db.exec('CREATE VIEW more AS SELECT randomblob(1000000000)'), 'view “more”'],
  ['a generated column', (db) => db.exec('ALTER TABLE drafts ADD COLUMN g TEXT AS (hex(zeroblob(1000)))'), '“drafts”'],
  [
    'a CHECK that calls a function',
    (db) =>
      rewrite(
        db,
        "UPDATE sqlite_schema SET sql = replace(sql, 'length(name) BETWEEN 1 AND 200)', 'length(name) BETWEEN 1 AND 200 AND randomblob(9) <> 1)') WHERE name = 'kitchens'",
      ),
    'table “kitchens” is made otherwise',
  ],
  [
    'a default that counts anew',
    (db) =>
      rewrite(
        db,
        "UPDATE sqlite_schema SET sql = replace(sql, 'name TEXT', 'name TEXT DEFAULT (random())') WHERE name = 'drafts'",
      ),
    'table “drafts” is made otherwise',
  ],
  ['an index on an expression', (db) => db.exec('CREATE INDEX x ON tasters (lower(name))'), 'index “x”'],
  [
    'an index under a known name, of another table',
    (db) => db.exec('DROP INDEX jars_by_pull; CREATE INDEX jars_by_pull ON trials (starts_at)'),
    'jars_by_pull',
  ],
  ['a table less', (db) => db.exec('DROP TABLE wishes'), 'is missing'],
  ['a table more', (db) => db.exec('CREATE TABLE songs (title TEXT)'), 'table “songs”'],
  ['a name of another script', (db) => db.exec('CREATE TABLE "t\u0430sters" (id TEXT)'), 't\u0430sters'],
];
