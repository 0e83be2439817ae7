import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkStore } from '#store/keeping/check-store.ts';
import { travel, undoState } from '#store/log/undo.ts';
import { allMigrations, lastReleased } from '#store/migrations/all-migrations.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { sqliteDriver } from '#store/sqlite-driver.ts';
import { copyOfReleased, releasedKitchens } from './released-kitchen.ts';

// A kitchen as each released schema wrote it, opened for ever. tests/fixtures/make-kitchen.ts made them; none is made anew.

type Rows = Record<string, Record<string, unknown>[]>;

/** Every row of every table of a file, read without the program. */
function rowsOf(file: string): Rows {
  const Database = sqliteDriver();
  const db = new Database(file, { readonly: true });
  const names = db
    .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name")
    .pluck()
    .all() as string[];
  const rows = Object.fromEntries(names.map((name) => [name, db.prepare(`SELECT * FROM ${name} ORDER BY 1`).all()]));
  db.close();
  return rows as Rows;
}

/** Of the rows after, those that there were before, by their key, with only the columns of before. */
function asBefore(before: Rows, after: Rows): Rows {
  return Object.fromEntries(
    Object.entries(before).map(([table, rows]) => {
      const columns = Object.keys(rows[0] ?? {});
      const key = columns[0] ?? '';
      const found = new Map((after[table] ?? []).map((row) => [row[key], row]));
      const kept = rows.map((row) => found.get(row[key]) ?? {});
      return [table, kept.map((row) => Object.fromEntries(columns.map((column) => [column, row[column]])))];
    }),
  );
}

/** The chain is hashed anew by a later rule; its rows are not. */
function withoutHashes(rows: Rows): Rows {
  return {
    ...rows,
    changes: (rows.changes ?? []).map(({ hash: _, previous_hash: __, ...row }) => row),
  };
}

describe('a kitchen of a released schema', () => {
  it('is kept for every released schema', () => {
    const kept = releasedKitchens.map((name) => Number(/\d{4}/.exec(name)?.[0]));
    expect(kept).toEqual(allMigrations.map(({ number }) => number).filter((number) => number <= lastReleased));
  });

  for (const name of releasedKitchens) {
    const from = Number(/\d{4}/.exec(name)?.[0]);

    it(`${name} opens with every row as it was, checks whole, and every later migration ran`, async () => {
      const file = copyOfReleased(name);
      const before = rowsOf(file);
      expect(before.scores?.length).toBeGreaterThan(50);
      const ran: number[] = [];
      const watched = allMigrations.map((migration) => ({
        ...migration,
        apply(db: Parameters<typeof migration.apply>[0]) {
          // In memory they run too, to tell what the file's schema should be.
          if (!db.memory) ran.push(migration.number);
          migration.apply(db);
        },
      }));
      const kitchen = await openKitchen(file, { migrations: watched });
      expect(ran).toEqual(allMigrations.map(({ number }) => number).filter((number) => number > from));
      expect(checkStore(kitchen, () => {})).toEqual([]);
      kitchen.close();
      expect(withoutHashes(asBefore(before, rowsOf(file)))).toEqual(withoutHashes(before));
    });

    it(`${name} stays as it is in the copy made before`, async () => {
      const file = copyOfReleased(name);
      const before = rowsOf(file);
      (await openKitchen(file)).close();
      const copies = readdirSync(join(file, '..')).filter((each) => each.includes('.before-'));
      if (from === allMigrations.at(-1)?.number) {
        expect(copies).toEqual([]);
        return;
      }
      expect(copies).toHaveLength(1);
      expect(rowsOf(join(file, '..', copies[0] ?? ''))).toEqual(before);
    });

    it(`${name}: undo stops at the migration and says why`, async () => {
      if (from === allMigrations.at(-1)?.number) return;
      const kitchen = await openKitchen(copyOfReleased(name));
      expect(undoState(kitchen.read).undoRefused).toContain('older has another form');
      expect(() => travel(kitchen, 'undo')).toThrow(
        expect.objectContaining({
          code: 'refused',
          message: expect.stringContaining('brought the kitchen up to date'),
        }),
      );
      kitchen.close();
    });
  }

  it('whose log was broken before is not made to look whole', async () => {
    const file = copyOfReleased('kitchen-of-schema-0010.sidejar');
    const Database = sqliteDriver();
    const db = new Database(file);
    db.prepare(
      "UPDATE changes SET after = replace(after, 'Own taster', 'Another') WHERE id = (SELECT max(id) FROM changes WHERE after LIKE '%Own taster%')",
    ).run();
    db.close();
    const kitchen = await openKitchen(file);
    expect(checkStore(kitchen, () => {}).join(' ')).toMatch(/broken at entry \d+ already before/);
    kitchen.close();
  });

  it('of a newer program is refused, and not one byte of its folder changes', async () => {
    const file = copyOfReleased('kitchen-of-schema-0010.sidejar');
    const Database = sqliteDriver();
    const db = new Database(file);
    db.pragma('user_version = 9990');
    db.close();
    const before = readFileSync(file);
    await expect(openKitchen(file)).rejects.toMatchObject({ code: 'store-newer' });
    expect(readFileSync(file).equals(before)).toBe(true);
    expect(readdirSync(join(file, '..'))).toEqual(['kitchen-of-schema-0010.sidejar']);
  });
});
