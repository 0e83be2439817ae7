import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { deskOf } from '#desk/desk.ts';
import { travel } from '#store/log/undo.ts';
import { allMigrations } from '#store/migrations/all-migrations.ts';
import { applicationId, openKitchen } from '#store/open-kitchen.ts';
import { sqliteDriver } from '#store/sqlite-driver.ts';
import { temporaryFolder } from './temporary-kitchen.ts';

const common = { revision: 1, is_sample: 0, created_at: '2026-05-01T08:00:00.000Z' };
const culture = '019e0000-0000-7000-8000-000000000001';
const base = '019e0000-0000-7000-8000-000000000002';

/** A kitchen as the program before this migration left it, with its rows. */
function oldKitchen(file: string): void {
  const Database = sqliteDriver();
  const db = new Database(file);
  const before = allMigrations.filter(({ number }) => number < 50);
  for (const migration of before) migration.apply(db);
  db.pragma(`user_version = ${before.at(-1)?.number ?? 0}`);
  db.pragma(`application_id = ${applicationId}`);
  db.prepare(
    `INSERT INTO cultures VALUES (@id, @revision, @is_sample, @created_at, 'Old grains', 'water kefir', 210,
     '2026-04-20T08:00:00.000Z', 'fridge door', NULL)`,
  ).run({ ...common, id: culture });
  db.prepare(
    `INSERT INTO bases VALUES (@id, @revision, @is_sample, @created_at, @culture, 'Batch 7', '2026-04-29T08:00:00.000Z',
     NULL, 3000, 22, 60, NULL, NULL, NULL)`,
  ).run({ ...common, id: base, culture });
  db.close();
}

describe('migration 50', () => {
  it('keeps cultures and bases, and leaves what is new unknown', async () => {
    const file = join(temporaryFolder(), 'old.sidejar');
    oldKitchen(file);
    const kitchen = await openKitchen(file);
    expect(kitchen.db.pragma('user_version', { simple: true })).toBeGreaterThanOrEqual(50);
    expect(kitchen.read.row('cultures', culture)).toMatchObject({
      name: 'Old grains',
      weight_g: 210,
      refreshed_at: '2026-04-20T08:00:00.000Z',
      refresh_days: null,
      parent_id: null,
    });
    expect(kitchen.read.row('bases', base)).toMatchObject({
      culture_id: culture,
      name: 'Batch 7',
      volume_mL: 3000,
      planned_hours: null,
      went_in: null,
    });
    for (const table of ['culture_log', 'snoozes', 'bottlings', 'bottle_openings']) {
      expect(kitchen.read.one(`SELECT count(*) AS n FROM ${table}`), table).toEqual({ n: 0 });
    }
    expect(kitchen.db.pragma('foreign_key_check')).toEqual([]);
    kitchen.close();
  });

  it('refuses what is out of range, and rows that belong to nothing or to two things', async () => {
    const file = join(temporaryFolder(), 'old.sidejar');
    oldKitchen(file);
    const kitchen = await openKitchen(file);
    const bottle = `'x', 1, 0, '${common.created_at}', '2026-05-01T08:00:00.000Z'`.replace("'x'", `'${base}'`);
    for (const change of [
      'UPDATE bases SET planned_hours = 0',
      'UPDATE cultures SET refresh_days = 367',
      `INSERT INTO culture_log (id, revision, is_sample, created_at, done_at, culture_id, what) VALUES (${bottle}, '${culture}', 'eaten')`,
      `INSERT INTO snoozes (id, revision, is_sample, created_at, until_at, need) VALUES (${bottle}, 'look')`,
      `INSERT INTO snoozes (id, revision, is_sample, created_at, until_at, need, base_id, culture_id) VALUES (${bottle}, 'feed', '${base}', '${culture}')`,
      `INSERT INTO bottlings (id, revision, is_sample, created_at, bottled_at, count, size_mL, closure) VALUES (${bottle}, 1, 500, 'crown')`,
      `INSERT INTO bottle_openings (id, revision, is_sample, created_at, opened_at, bottling_id, pour) VALUES (${bottle}, '${base}', 'sideways')`,
    ]) {
      expect(() => kitchen.db.exec(change), change).toThrow(/CHECK/);
    }
    expect(() => kitchen.db.exec(`UPDATE cultures SET parent_id = '${base}'`)).toThrow(/FOREIGN KEY/);
    kitchen.close();
  });

  it('reads log entries from before it as rows without the new columns: checked as whole, undone and brought back', async () => {
    const kitchen = await openKitchen(join(temporaryFolder(), 'k.sidejar'));
    const id = '019e0000-0000-7000-8000-000000000009';
    kitchen.write({ request: 'cultures:save', summary: 'Add' }, (writer) =>
      writer.put('cultures', id, {
        ...common,
        id,
        name: 'Grains',
        kind: 'water kefir',
        weight_g: null,
        refreshed_at: null,
        rests: null,
        note: null,
      }),
    );
    const desk = deskOf(kitchen);
    expect(await desk.handle('store:check', {})).toEqual({ ok: true, value: { ok: true, problems: [] } });
    kitchen.write({ request: 'cultures:save', summary: 'Change' }, (writer) =>
      writer.update('cultures', id, { refresh_days: 10 }),
    );
    travel(kitchen, 'undo');
    expect(kitchen.read.row('cultures', id)).toMatchObject({ name: 'Grains', refresh_days: null, parent_id: null });
    travel(kitchen, 'undo');
    expect(kitchen.read.row('cultures', id)).toBeUndefined();
    travel(kitchen, 'redo');
    expect(kitchen.read.row('cultures', id)).toMatchObject({ name: 'Grains', refresh_days: null });
    kitchen.close();
  });
});
