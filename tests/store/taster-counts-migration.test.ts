import { describe, expect, it } from 'vitest';
import { deskOf } from '#desk/desk.ts';
import { checkStore } from '#store/keeping/check-store.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { allMigrations } from '#store/migrations/all-migrations.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { copyOfReleased } from './released-kitchen.ts';

function counted(kitchen: Kitchen): Record<string, number> {
  const rows = kitchen.read.all<{ name: string; n: number }>(
    'SELECT t.name, (SELECT count(DISTINCT tasting_id) FROM servings WHERE taster_id = t.id) AS n FROM tasters AS t',
  );
  return Object.fromEntries(rows.map(({ name, n }) => [name, n]));
}

async function listed(kitchen: Kitchen): Promise<Record<string, number>> {
  const answer = await deskOf(kitchen).handle('tasters:list', {});
  if (!answer.ok) throw new Error(answer.error.message);
  const { tasters } = answer.value as { tasters: { name: string; tastings: number }[] };
  return Object.fromEntries(tasters.map(({ name, tastings }) => [name, tastings]));
}

describe('migration 70', () => {
  it('counts the tastings of before, and goes on as tastings come, go and come back', async () => {
    const file = copyOfReleased('kitchen-of-schema-0060.sidejar.gz');
    const old = await openKitchen(file, { migrations: allMigrations.filter(({ number }) => number < 70) });
    const before = counted(old);
    expect(() => old.read.all('SELECT * FROM taster_counts')).toThrow(/no such table/);
    old.close();
    expect(Object.values(before).some((n) => n > 0)).toBe(true);
    const kitchen = await openKitchen(file);
    expect(await listed(kitchen)).toEqual(before);
    const desk = deskOf(kitchen);
    const ids = (table: string) => kitchen.read.all<{ id: string }>(`SELECT id FROM ${table}`).map(({ id }) => id);
    const samples = ids('jars').map((jar) => ({ jar }));
    const again = { name: 'Again', samples, tasters: ids('tasters'), replicates: 2, seed: 1 };
    const built = await desk.handle('tastings:build', again);
    if (!built.ok) throw new Error(built.error.message);
    const more = Object.fromEntries(Object.entries(before).map(([name, n]) => [name, n + 1]));
    expect(await listed(kitchen)).toEqual(more);
    await desk.handle('undo:last', {});
    expect(await listed(kitchen)).toEqual(before);
    await desk.handle('redo:last', {});
    expect(await listed(kitchen)).toEqual(more);
    expect(counted(kitchen)).toEqual(more);
    expect(checkStore(kitchen, () => {})).toEqual([]);
    kitchen.db.exec('UPDATE taster_counts SET tastings = tastings + 1');
    expect(checkStore(kitchen, () => {}).join(' ')).toContain('number of tastings noted of a taster');
    desk.close();
  });
});
