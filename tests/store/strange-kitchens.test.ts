import { copyFileSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkStore } from '#store/keeping/check-store.ts';
import { allMigrations } from '#store/migrations/all-migrations.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { sqliteDriver } from '#store/sqlite-driver.ts';
import { copyStrange } from '#store/strange/copy-strange.ts';
import { strangeSchema } from '#store/strange/expected-schema.ts';
import { tampered, tampering } from './tampered-kitchen.ts';
import { temporaryFolder } from './temporary-kitchen.ts';

const Database = sqliteDriver();

describe('a kitchen from elsewhere that does not open', () => {
  it.each(tampering)(
    '%s: its rows can be copied into a new kitchen, one by one, and none of its schema comes along',
    async (_what, change) => {
      const strange = await tampered(change);
      const before = readFileSync(strange);
      const own = await openKitchen(join(temporaryFolder(), 'own.sidejar'));
      const { file, rows, refused } = await copyStrange(own, strange);
      own.close();
      // The kitchen's name and the taster.
      expect([rows, refused]).toEqual([2, 0]);
      const copied = await openKitchen(file);
      expect(copied.read.all('SELECT name FROM tasters')).toEqual([{ name: 'Taster A' }]);
      expect(strangeSchema(copied.db, allMigrations, allMigrations.at(-1)?.number ?? 0)).toBeNull();
      expect(checkStore(copied, () => {})).toEqual([]);
      copied.close();
      expect(readFileSync(strange).equals(before)).toBe(true);
    },
  );

  it('with rows that no kitchen holds: the good ones are copied, the others counted', async () => {
    const strange = await tampered((db) => {
      const [row] = db.prepare('SELECT * FROM tasters').all() as Record<string, unknown>[];
      const columns = Object.keys(row ?? {});
      db.exec('DROP TABLE tasters');
      db.exec(`CREATE TABLE tasters (${columns.join(', ')}, more AS (hex(zeroblob(1000))))`);
      const put = db.prepare(
        `INSERT INTO tasters (${columns.join(', ')}) VALUES (${columns.map(() => '?').join(', ')})`,
      );
      const add = (place: number, cells: object) => {
        const id = `0198d5a0-0000-7000-8000-00000000000${place}`;
        const whole = { ...row, id, ...cells } as Record<string, unknown>;
        put.run(...columns.map((column) => whole[column]));
      };
      add(1, { name: '<img src=x onerror=alert(1)>' });
      add(2, { name: 'turned \u202e over' });
      add(3, { name: Buffer.from('bytes') });
      add(4, { name: 'x'.repeat(2_000_000) });
      add(5, { name: 'NUL \0 inside' });
      add(6, { name: 'Odd avoids', avoids: '{"__proto__": 1}' });
      add(7, { name: 'A taster without a moment', created_at: 'yesterday' });
      add(8, { name: 'y'.repeat(300) });
    });
    const own = await openKitchen(join(temporaryFolder(), 'own.sidejar'));
    const { file, refused } = await copyStrange(own, strange);
    own.close();
    const copied = await openKitchen(file);
    expect(copied.read.all('SELECT name FROM tasters')).toEqual([{ name: '<img src=x onerror=alert(1)>' }]);
    expect(refused).toBe(7);
    expect(checkStore(copied, () => {})).toEqual([]);
    copied.close();
  });

  it('what is no database, holds nothing that can stand, or claims ten gigabytes is refused, and no file is made', async () => {
    const folder = temporaryFolder();
    const own = await openKitchen(join(folder, 'own.sidejar'));
    const songs = join(temporaryFolder(), 'songs.sidejar');
    const db = new Database(songs);
    db.exec("CREATE TABLE songs (title TEXT); INSERT INTO songs VALUES ('one')");
    db.close();
    const letter = join(temporaryFolder(), 'letter.sidejar');
    writeFileSync(letter, 'a letter '.repeat(1000));
    const hollow = join(temporaryFolder(), 'hollow.sidejar');
    copyFileSync(songs, hollow);
    truncateSync(hollow, 10 * 2 ** 30);
    const code = (file: string) =>
      copyStrange(own, file).then(
        () => 'copied',
        (error: { code: string }) => error.code,
      );
    expect(await code(songs)).toBe('refused');
    expect(await code(letter)).toBe('store-not-a-kitchen');
    expect(await code(hollow)).toBe('store-damaged');
    truncateSync(hollow, 4096);
    expect(await code('/dev/zero')).toBe('store-not-a-kitchen');
    expect(await code(join(folder, 'nowhere'))).toBe('store-missing');
    expect(readdirSync(folder).filter((name) => name.includes('copied'))).toEqual([]);
    own.close();
  });

  it('at a place that there can’t be is said to be missing', async () => {
    const own = await openKitchen(join(temporaryFolder(), 'own.sidejar'));
    for (const place of ['y'.repeat(5000), join(own.file, 'inside-a-file.sidejar'), join(temporaryFolder(), 'gone')]) {
      await expect(copyStrange(own, place)).rejects.toMatchObject({ code: 'store-missing', path: ['file'] });
    }
    own.close();
  });
});
