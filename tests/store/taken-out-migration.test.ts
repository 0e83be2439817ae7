import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { deskOf } from '#desk/desk.ts';
import { allMigrations } from '#store/migrations/all-migrations.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { temporaryFolder } from './temporary-kitchen.ts';

const moment = '2026-05-01T08:00:00.000Z';
const rowOf = (id: string) => [id, 1, 0, moment] as const;
const id = (number: number) => `00000000-0000-7000-8000-${String(number).padStart(12, '0')}`;

describe('migration 90', () => {
  it('keeps the rows of before; no sighting is corrected, no sample taken out', async () => {
    const file = join(temporaryFolder(), 'old.sidejar');
    const old = await openKitchen(file, { migrations: allMigrations.filter(({ number }) => number < 90) });
    const put = (sql: string, ...values: (string | number | null)[]) => old.db.prepare(sql).run(...values);
    put(
      'INSERT INTO bases (id, revision, is_sample, created_at, name, made_at, volume_mL) VALUES (?,?,?,?,?,?,?)',
      ...rowOf(id(1)),
      'Saturday',
      moment,
      3000,
    );
    put(
      'INSERT INTO sightings (id, revision, is_sample, created_at, base_id, seen_at, what) VALUES (?,?,?,?,?,?,?)',
      ...rowOf(id(2)),
      id(1),
      moment,
      'mould',
    );
    old.close();

    const kitchen = await openKitchen(file);
    expect(kitchen.read.row('sightings', id(2))).toMatchObject({
      base_id: id(1),
      what: 'mould',
      corrected_at: null,
      correction: null,
    });
    expect(kitchen.read.all('SELECT taken_out_at, taken_out_why FROM samples')).toEqual([]);
    expect((await deskOf(kitchen).handle('bases:open', { base: id(1) })).ok).toBe(true);
    kitchen.close();
  });

  it('refuses half a correction, half a taking out, and what is no moment', async () => {
    const kitchen = await openKitchen(join(temporaryFolder(), 'new.sidejar'));
    const sighting = (at: string | null, why: string | null) =>
      kitchen.db
        .prepare(
          'INSERT INTO sightings (id, revision, is_sample, created_at, base_id, seen_at, what, corrected_at, correction) VALUES (?,?,?,?,?,?,?,?,?)',
        )
        .run(...rowOf(id(9)), id(1), moment, 'film', at, why);
    kitchen.db.pragma('foreign_keys = OFF');
    expect(() => sighting(null, 'a mistake')).toThrow(/CHECK/);
    expect(() => sighting('yesterday', null)).toThrow(/CHECK/);
    expect(() => sighting(moment, '')).toThrow(/CHECK/);
    const sample = (at: string | null, why: string | null) =>
      kitchen.db
        .prepare(
          'INSERT INTO samples (id, revision, is_sample, created_at, tasting_id, jar_id, blind_code, taken_out_at, taken_out_why) VALUES (?,?,?,?,?,?,?,?,?)',
        )
        .run(...rowOf(id(8)), id(1), id(2), '274', at, why);
    expect(() => sample(moment, null)).toThrow(/CHECK/);
    expect(() => sample(null, 'mould')).toThrow(/CHECK/);
    expect(sample(moment, 'mould').changes).toBe(1);
    expect(sighting(moment, 'film yeast').changes).toBe(1);
    kitchen.close();
  });
});
