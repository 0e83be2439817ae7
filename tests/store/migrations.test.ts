import { copyFileSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { allMigrations } from '#store/migrations/all-migrations.ts';
import type { Migration } from '#store/migrations/migration.ts';
import { applicationId, openKitchen } from '#store/open-kitchen.ts';
import { sqliteDriver } from '#store/sqlite-driver.ts';
import { columnNames, tableNames, tables } from '#store/tables.ts';
import { temporaryFolder, temporaryKitchen } from './temporary-kitchen.ts';

const newest = allMigrations.at(-1)?.number ?? 0;

describe('the migrations', () => {
  it('are numbered in tens, in order, each once', () => {
    const numbers = allMigrations.map(({ number }) => number);
    expect(numbers).toEqual([...new Set(numbers)].sort((a, b) => a - b));
    for (const number of numbers) expect(number % 10).toBe(0);
  });

  it('every one runs on a new file, and the file knows its number', async () => {
    const ran: number[] = [];
    const watched: Migration[] = allMigrations.map((migration) => ({
      ...migration,
      apply(db) {
        ran.push(migration.number);
        migration.apply(db);
      },
    }));
    const kitchen = await openKitchen(join(temporaryFolder(), 'new.sidejar'), { migrations: watched });
    expect(ran).toEqual(allMigrations.map(({ number }) => number));
    expect(kitchen.db.pragma('user_version', { simple: true })).toBe(allMigrations.at(-1)?.number);
    expect(kitchen.db.pragma('application_id', { simple: true })).toBe(applicationId);
    kitchen.close();
  });

  it('10 makes tables that hold rows and refuse what is out of range', async () => {
    const kitchen = await temporaryKitchen();
    const note = { request: 'test', summary: 'test' };
    const jar = kitchen.write(note, (writer) => {
      const trial = writer.insert('trials', {
        question: 'How long?',
        factor: 'days',
        calendar: 'staggered-pull',
        base_id: null,
        base_each_mL: 700,
        replicates: 1,
        vessel_kind: 'lidded-jar',
        vessel_capacity_mL: 1000,
        vessel_diameter_mm: null,
        vessel_rated_gauge_bar: null,
        starts_at: '2026-05-01T08:00:00.000Z',
        held: '{}',
        seed: 1,
        closed_at: null,
        note: null,
      });
      const level = writer.insert('levels', {
        trial_id: trial.id,
        position: 1,
        name: '2 days',
        value: 2,
        is_control: 1,
        formula: '{}',
      });
      return writer.insert('jars', {
        trial_id: trial.id,
        level_id: level.id,
        label: 'A',
        replicate: 1,
        base_mL: 700,
        planned_start: '2026-05-01T08:00:00.000Z',
        planned_pull: '2026-05-03T08:00:00.000Z',
        started_at: null,
        pulled_at: null,
        strained_at: null,
        discarded_at: null,
        discard_reason: null,
      });
    });
    expect(kitchen.read.row('jars', jar.id)).toEqual(jar);
    const refused = [
      { pulled_at: '2026-05-02T08:00:00.000Z' },
      { base_mL: -1 },
      { base_mL: Number.NaN },
      { discarded_at: '2026-05-02T08:00:00.000Z' },
      { planned_pull: '2026-04-01T08:00:00.000Z' },
      { started_at: 'yesterday' },
    ];
    for (const values of refused) {
      expect(() => kitchen.write(note, (writer) => writer.update('jars', jar.id, values))).toThrow(
        expect.objectContaining({ code: 'refused' }),
      );
    }
    expect(kitchen.read.row('jars', jar.id)).toEqual(jar);
  });

  it('an older kitchen is copied and checked before its schema changes, and keeps its rows', async () => {
    const folder = temporaryFolder();
    const file = join(folder, 'old.sidejar');
    const first = await openKitchen(file);
    first.write({ request: 'test', summary: 'test' }, (writer) =>
      writer.insert('tasters', { name: 'Taster A', avoids: '[]', avoids_alcohol: 0, note: null }),
    );
    first.close();
    const next: Migration = {
      number: 9990,
      title: 'a column more',
      apply: (db) => db.exec('ALTER TABLE tasters ADD COLUMN colour TEXT'),
    };
    const second = await openKitchen(file, { migrations: [...allMigrations, next] });
    expect(second.read.one('SELECT name, colour FROM tasters')).toEqual({ name: 'Taster A', colour: null });
    second.close();
    const copies = readdirSync(folder).filter(
      (name) => name.includes(`.before-${newest}-`) && name.endsWith('.sidejar'),
    );
    expect(copies).toHaveLength(1);
    const Database = sqliteDriver();
    const copy = new Database(join(folder, copies[0] ?? ''), { readonly: true });
    expect(copy.pragma('user_version', { simple: true })).toBe(newest);
    expect(copy.prepare('SELECT name FROM tasters').pluck().get()).toBe('Taster A');
    copy.close();
  });

  it('one that fails leaves the kitchen as it was', async () => {
    const file = join(temporaryFolder(), 'old.sidejar');
    (await openKitchen(file)).close();
    const broken: Migration = {
      number: 9990,
      title: 'broken',
      apply(db) {
        db.exec('CREATE TABLE half (id TEXT) STRICT');
        db.exec('CREATE TABLE tasters (id TEXT) STRICT');
      },
    };
    await expect(openKitchen(file, { migrations: [...allMigrations, broken] })).rejects.toThrow();
    const again = await openKitchen(file);
    expect(again.db.pragma('user_version', { simple: true })).toBe(newest);
    expect(again.read.one("SELECT name FROM sqlite_schema WHERE name = 'half'")).toBeUndefined();
    again.close();
  });

  it('a kitchen of a newer program is refused and its bytes stay', async () => {
    const folder = temporaryFolder();
    const file = join(folder, 'newer.sidejar');
    const later: Migration = {
      number: 9990,
      title: 'later',
      apply: (db) => db.exec('CREATE TABLE later (id TEXT) STRICT'),
    };
    (await openKitchen(file, { migrations: [...allMigrations, later] })).close();
    copyFileSync(file, `${file}.copy`);
    await expect(openKitchen(file)).rejects.toMatchObject({ code: 'store-newer' });
    expect(readFileSync(file).equals(readFileSync(`${file}.copy`))).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(['newer.sidejar', 'newer.sidejar.copy']);
  });
});

describe('the list of tables', () => {
  it('names the columns of the real schema, in STRICT tables', async () => {
    const kitchen = await temporaryKitchen();
    for (const table of tableNames) {
      const real = kitchen.db.pragma(`table_info(${table})`) as { name: string; type: string; notnull: number }[];
      expect(real.map(({ name }) => name).sort(), table).toEqual(columnNames(table).sort());
      const kinds: Record<string, string> = tables[table].columns;
      for (const { name, type, notnull } of real) {
        const kind = kinds[name];
        if (kind === undefined) continue;
        expect(kind.endsWith('?'), `${table}.${name} may be null`).toBe(notnull === 0);
        expect(kind.startsWith('text'), `${table}.${name} is text`).toBe(type === 'TEXT');
      }
      const sql = kitchen.db.prepare('SELECT sql FROM sqlite_schema WHERE name = ?').pluck().get(table);
      expect(sql).toMatch(/STRICT$/);
    }
  });
});
