import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { deskOf } from '#desk/desk.ts';
import { allMigrations } from '#store/migrations/all-migrations.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { temporaryFolder } from './temporary-kitchen.ts';

const note = { request: 'test', summary: 'test' };
const base = {
  culture_id: null,
  name: 'Saturday',
  made_at: '2026-05-01T08:00:00.000Z',
  strained_at: null,
  volume_mL: 3000,
  temperature_C: null,
  sugar_start_g_per_L: null,
  sugar_now_g_per_L: null,
  alcohol_pctVol: null,
  planned_hours: null,
  went_in: null,
  note: null,
};
const photo = {
  jar_id: null,
  taken_at: '2026-05-02T08:00:00.000Z',
  sha256: 'a'.repeat(64),
  format: 'jpeg',
  width: 1600,
  height: 1200,
  bytes: 300_000,
  note: null,
};

describe('migration 60', () => {
  it('keeps the rows of before, has no photo yet, and counts those that come and go', async () => {
    const file = join(temporaryFolder(), 'old.sidejar');
    const before = allMigrations.filter(({ number }) => number < 60);
    const old = await openKitchen(file, { migrations: before });
    expect(() => old.read.all('SELECT * FROM photos')).toThrow(/no such table/);
    const { id } = old.write(note, (writer) => writer.insert('bases', base));
    old.close();

    const kitchen = await openKitchen(file);
    expect(kitchen.read.row('bases', id)).toMatchObject(base);
    expect(kitchen.read.all('SELECT * FROM photos')).toEqual([]);
    const counted = () => kitchen.read.one("SELECT total FROM row_counts WHERE table_name = 'photos'");
    expect(counted()).toEqual({ total: 0 });
    const row = kitchen.write(note, (writer) => writer.insert('photos', { ...photo, base_id: id }));
    expect(counted()).toEqual({ total: 1 });
    kitchen.write(note, (writer) => writer.remove('bases', id));
    expect(kitchen.read.row('photos', row.id)).toBeUndefined();
    expect(counted()).toEqual({ total: 0 });
    expect(await deskOf(kitchen).handle('store:check', {})).toMatchObject({ value: { ok: true } });
    kitchen.close();
  });

  it('refuses a photo of nothing, of both, of another kind, and with a hash that is none', async () => {
    const kitchen = await openKitchen(join(temporaryFolder(), 'new.sidejar'));
    const { id } = kitchen.write(note, (writer) => writer.insert('bases', base));
    for (const change of [
      { base_id: null },
      { format: 'svg' },
      { sha256: `../../${'a'.repeat(58)}` },
      { sha256: 'A'.repeat(64) },
      { width: 0 },
      { bytes: 8 * 1024 * 1024 + 1 },
    ]) {
      const bad = { ...photo, base_id: id, ...change };
      expect(() => kitchen.write(note, (writer) => writer.insert('photos', bad)), JSON.stringify(change)).toThrow();
    }
    kitchen.close();
  });
});
