import { execFileSync } from 'node:child_process';
import {
  closeSync,
  copyFileSync,
  existsSync,
  openSync,
  readFileSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { deskOf } from '#desk/desk.ts';
import { allMigrations } from '#store/migrations/all-migrations.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { strangeSchema } from '#store/strange/expected-schema.ts';
import { madeKitchen, tampered, tampering } from './tampered-kitchen.ts';
import { temporaryFolder } from './temporary-kitchen.ts';

describe('a file that calls itself a kitchen', () => {
  it.each(tampering)(
    '%s: refused in a sentence, nothing read, its bytes as they were',
    async (_what, change, names) => {
      const file = await tampered(change);
      const before = readFileSync(file);
      const error = await openKitchen(file).then(
        (kitchen) => kitchen.close(),
        (thrown: unknown) => thrown,
      );
      expect(error).toMatchObject({ code: 'store-not-a-kitchen' });
      expect((error as Error).message).toContain(names);
      expect((error as Error).message).toContain('Nothing in it was read or changed');
      expect(readFileSync(file).equals(before)).toBe(true);
    },
  );

  it('one that is untouched is opened, also after SQLite kept statistics in it', async () => {
    const file = await tampered((db) => db.exec('ANALYZE'));
    const kitchen = await openKitchen(file);
    expect(strangeSchema(kitchen.db, allMigrations, allMigrations.at(-1)?.number ?? 0)).toBeNull();
    expect(kitchen.read.all('SELECT name FROM tasters')).toEqual([{ name: 'Taster A' }]);
    kitchen.close();
  });

  it('is opened so that its schema is trusted with nothing, and cannot be rewritten', async () => {
    const kitchen = await openKitchen(await madeKitchen());
    expect(kitchen.db.pragma('trusted_schema', { simple: true })).toBe(0);
    expect(kitchen.db.pragma('cell_size_check', { simple: true })).toBe(1);
    expect(kitchen.db.pragma('compile_options') as object[]).toContainEqual({ compile_options: 'DEFAULT_MMAP_SIZE=0' });
    // SQLite's defensive mode, which better-sqlite3 turns on for every connection.
    kitchen.db.pragma('writable_schema = ON');
    expect(() => kitchen.db.exec("UPDATE sqlite_schema SET sql = 'x'")).toThrow(/may not be modified/);
    kitchen.close();
  });
});

function patched(file: string, at: number, bytes: readonly number[]): void {
  const handle = openSync(file, 'r+');
  writeSync(handle, Buffer.from(bytes), 0, bytes.length, at);
  closeSync(handle);
}

// Header offsets: SQLite's "Database File Format", section 1.3.
const spoilt: [what: string, spoil: (file: string) => void][] = [
  ['a page count beyond the file', (file) => patched(file, 28, [0xff, 0xff, 0xff, 0xfe])],
  ['a page size that is none', (file) => patched(file, 16, [0x00, 0x03])],
  ['a page size of another file', (file) => patched(file, 16, [0x02, 0x00])],
  ['a write format of the future', (file) => patched(file, 18, [9, 9])],
  ['reserved room beyond the page', (file) => patched(file, 20, [0xff])],
  ['a payload fraction that is none', (file) => patched(file, 21, [1, 1, 1])],
  ['a text encoding that is none', (file) => patched(file, 56, [0, 0, 0, 9])],
  ['texts in UTF-16', (file) => patched(file, 56, [0, 0, 0, 2])],
  ['a schema format of the future', (file) => patched(file, 44, [0, 0, 0, 99])],
  ['a first page that is no table', (file) => patched(file, 100, [0x0a])],
  ['a schema page that points beyond itself', (file) => patched(file, 103, [0xff, 0xff])],
  ['half a file', (file) => truncateSync(file, 6000)],
  ['a header alone', (file) => truncateSync(file, 100)],
  ['less than a header', (file) => truncateSync(file, 60)],
];

describe('a kitchen’s file that is not what its header says', () => {
  it.each(spoilt)('%s: a plain refusal, within a second', async (_what, spoil) => {
    const file = await tampered(() => {});
    spoil(file);
    const before = readFileSync(file);
    const begun = performance.now();
    const error = await openKitchen(file).then(
      (kitchen) => kitchen.close(),
      (thrown: unknown) => thrown,
    );
    expect(performance.now() - begun).toBeLessThan(3000);
    expect(['store-not-a-kitchen', 'store-damaged', 'store-newer', 'store-read-only']).toContain(
      (error as { code: string }).code,
    );
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it('ten gigabytes that hold hardly anything are refused before anything is copied', async () => {
    const file = await tampered(() => {});
    patched(file, 28, [0x00, 0x28, 0x00, 0x00]);
    truncateSync(file, 10 * 2 ** 30);
    await expect(openKitchen(file)).rejects.toMatchObject({ code: 'store-damaged' });
    truncateSync(file, 4096);
  });

  it('a pipe and a device are left alone, without waiting for them', async () => {
    const pipe = join(temporaryFolder(), 'pipe.sidejar');
    execFileSync('mkfifo', [pipe]);
    for (const file of [pipe, '/dev/zero', '/dev/null']) {
      await expect(openKitchen(file)).rejects.toMatchObject({ code: 'store-not-a-kitchen' });
    }
  });

  it('a link to something else is refused, and what it points to stays as it was', async () => {
    const folder = temporaryFolder();
    const other = join(folder, 'other.txt');
    writeFileSync(other, 'a letter '.repeat(100));
    symlinkSync(other, join(folder, 'k.sidejar'));
    await expect(openKitchen(join(folder, 'k.sidejar'))).rejects.toMatchObject({ code: 'store-not-a-kitchen' });
    expect(readFileSync(other, 'utf8')).toBe('a letter '.repeat(100));
    symlinkSync(join(folder, 'nowhere', 'deep'), join(folder, 'dangling.sidejar'));
    await expect(openKitchen(join(folder, 'dangling.sidejar'))).rejects.toMatchObject({
      code: expect.stringMatching(/^store-/) as string,
    });
    expect(existsSync(join(folder, 'nowhere'))).toBe(false);
  });

  it('a log of noise beside it changes nothing', async () => {
    const file = await madeKitchen();
    writeFileSync(`${file}-wal`, Buffer.alloc(100_000, 'noise'));
    const kitchen = await openKitchen(file);
    expect(kitchen.read.all('SELECT name FROM tasters')).toEqual([{ name: 'Taster A' }]);
    kitchen.close();
  });

  // SQLite takes a log by its name alone: nothing in it says whose it is.
  it('a log of another kitchen never passes for the truth: refused, found by the check, or the other kitchen whole', async () => {
    const folder = temporaryFolder();
    const file = await madeKitchen('a.sidejar', folder);
    const other = await openKitchen(join(folder, 'b.sidejar'));
    const desk = deskOf(other);
    for (let number = 0; number < 40; number += 1) await desk.handle('tasters:save', { name: `Other ${number}` });
    other.db.pragma('wal_checkpoint(TRUNCATE)');
    await desk.handle('tasters:save', { name: 'The last' });
    copyFileSync(join(folder, 'b.sidejar-wal'), `${file}-wal`);
    desk.close();
    const outcome = await openKitchen(file).then(
      async (opened) => {
        const checked = await deskOf(opened).handle('store:check', {});
        opened.close();
        return checked.ok ? `check ${(checked.value as { ok: boolean }).ok}` : checked.error.code;
      },
      (thrown: { code: string }) => thrown.code,
    );
    expect(['check false', 'store-damaged', 'store-not-a-kitchen']).toContain(outcome);
  });
});
