import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { deskOf } from '#desk/desk.ts';
import { travel } from '#store/log/undo.ts';
import { kitchenMigration } from '#store/migrations/0010-kitchen.ts';
import { applicationId, openKitchen } from '#store/open-kitchen.ts';
import { sqliteDriver } from '#store/sqlite-driver.ts';
import { temporaryFolder } from './temporary-kitchen.ts';

const row = { revision: 1, is_sample: 0, created_at: '2026-05-01T08:00:00.000Z' };

/** A kitchen as the program before this migration left it: its rows, and the log that wrote them. */
function oldKitchen(file: string): void {
  const Database = sqliteDriver();
  const db = new Database(file);
  kitchenMigration.apply(db);
  db.pragma('user_version = 10');
  db.pragma(`application_id = ${applicationId}`);
  db.prepare('INSERT INTO kitchens VALUES (@id, @revision, @is_sample, @created_at, @name, @measures)').run({
    ...row,
    id: '019e0000-0000-7000-8000-000000000001',
    name: 'Old kitchen',
    measures: 'us',
  });
  db.prepare('INSERT INTO stocks VALUES (@id, @revision, @is_sample, @created_at, @name, @on_hand_g, @price)').run({
    ...row,
    id: '019e0000-0000-7000-8000-000000000002',
    name: 'raspberries',
    on_hand_g: 500,
    price: 12.5,
  });
  db.prepare(
    `INSERT INTO ingredients VALUES (@id, @revision, @is_sample, @created_at, 'quince paste', 'fruit', 30, 60,
     NULL, NULL, NULL, NULL, NULL, NULL, NULL, '[]', NULL)`,
  ).run({ ...row, id: '019e0000-0000-7000-8000-000000000003' });
  db.close();
}

describe('migration 20', () => {
  it('keeps kitchen, stocks and ingredients, and leaves what is new unknown', async () => {
    const file = join(temporaryFolder(), 'old.sidejar');
    oldKitchen(file);
    const kitchen = await openKitchen(file);
    expect(kitchen.db.pragma('user_version', { simple: true })).toBeGreaterThanOrEqual(20);
    expect(kitchen.read.one('SELECT name, measures, currency FROM kitchens')).toEqual({
      name: 'Old kitchen',
      measures: 'us',
      currency: null,
    });
    expect(kitchen.read.one('SELECT on_hand_g, price_per_kg, price_per_L, short_g FROM stocks')).toEqual({
      on_hand_g: 500,
      price_per_kg: 12.5,
      price_per_L: null,
      short_g: null,
    });
    expect(kitchen.read.one('SELECT sugars_g, source, measures FROM ingredients')).toEqual({
      sugars_g: 60,
      source: null,
      measures: null,
    });
    for (const change of [
      "UPDATE kitchens SET currency = 'a currency of thirteen'",
      'UPDATE stocks SET price_per_L = -1',
      'UPDATE stocks SET short_g = 0',
      "UPDATE ingredients SET measures = '{}'",
      "UPDATE ingredients SET source = ''",
    ]) {
      expect(() => kitchen.db.exec(change), change).toThrow(/CHECK/);
    }
    kitchen.close();
  });

  it('reads log entries from before it as rows without the new columns: checked as whole, undone and brought back', async () => {
    const file = join(temporaryFolder(), 'k.sidejar');
    const kitchen = await openKitchen(file);
    const stock = { name: 'raspberries', on_hand_g: 500, price_per_kg: null, price_per_L: null, short_g: null };
    const id = '019e0000-0000-7000-8000-000000000009';
    kitchen.write({ request: 'pantry:stock', summary: 'Count' }, (writer) =>
      writer.put('stocks', id, { ...row, id, name: stock.name, on_hand_g: 500, price_per_kg: null }),
    );
    const [entry] = kitchen.read.all<{ after: string }>("SELECT after FROM changes WHERE table_name = 'stocks'");
    expect(entry?.after).not.toContain('price_per_L');
    const desk = deskOf(kitchen);
    expect(await desk.handle('store:check', {})).toEqual({ ok: true, value: { ok: true, problems: [] } });
    kitchen.write({ request: 'pantry:stock', summary: 'Count again' }, (writer) =>
      writer.update('stocks', id, { on_hand_g: 100, price_per_L: 3 }),
    );
    travel(kitchen, 'undo');
    expect(kitchen.read.row('stocks', id)).toMatchObject(stock);
    travel(kitchen, 'undo');
    expect(kitchen.read.row('stocks', id)).toBeUndefined();
    travel(kitchen, 'redo');
    expect(kitchen.read.row('stocks', id)).toMatchObject(stock);
    kitchen.db.exec('UPDATE stocks SET price_per_L = 7');
    expect(await desk.handle('store:check', {})).toMatchObject({ value: { ok: false } });
    kitchen.close();
  });
});
