import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { deskOf } from '#desk/desk.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { sqliteDriver } from '#store/sqlite-driver.ts';
import { temporaryFolder, temporaryKitchen } from './temporary-kitchen.ts';

describe('openKitchen(file)', () => {
  it('makes a kitchen where there is no file, folders included, in WAL with full sync and foreign keys', async () => {
    const kitchen = await temporaryKitchen(undefined, join(temporaryFolder(), 'deep', 'er', 'k.sidejar'));
    expect(kitchen.db.pragma('journal_mode', { simple: true })).toBe('wal');
    expect(kitchen.db.pragma('synchronous', { simple: true })).toBe(2);
    expect(kitchen.db.pragma('foreign_keys', { simple: true })).toBe(1);
    expect(kitchen.read.one('SELECT name FROM kitchens')).toEqual({ name: 'Home kitchen' });
  });

  it('takes an empty file as a new kitchen', async () => {
    const file = join(temporaryFolder(), 'empty.sidejar');
    writeFileSync(file, '');
    const kitchen = await temporaryKitchen(undefined, file);
    expect(kitchen.read.one('SELECT count(*) AS n FROM kitchens')).toEqual({ n: 1 });
  });

  it('refuses what is no database, and leaves it as it is', async () => {
    const file = join(temporaryFolder(), 'letter.sidejar');
    writeFileSync(file, 'Dear reader, this is a letter and not a kitchen at all.'.repeat(10));
    const before = readFileSync(file);
    await expect(openKitchen(file)).rejects.toMatchObject({ code: 'store-not-a-kitchen' });
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it('refuses another program’s database, and a folder', async () => {
    const folder = temporaryFolder();
    const file = join(folder, 'other.db');
    const Database = sqliteDriver();
    const other = new Database(file);
    other.exec('CREATE TABLE songs (title TEXT)');
    other.close();
    const before = readFileSync(file);
    await expect(openKitchen(file)).rejects.toMatchObject({ code: 'store-not-a-kitchen' });
    expect(readFileSync(file).equals(before)).toBe(true);
    mkdirSync(join(folder, 'inner'));
    await expect(openKitchen(join(folder, 'inner'))).rejects.toMatchObject({ code: 'store-not-a-kitchen' });
  });

  it('only reads a write-protected kitchen: reading answers, writing settles as store-read-only', async () => {
    const file = join(temporaryFolder(), 'k.sidejar');
    (await openKitchen(file)).close();
    chmodSync(file, 0o444);
    const kitchen = await openKitchen(file);
    const desk = deskOf(kitchen);
    expect(await desk.handle('tasters:list', {})).toEqual({ ok: true, value: { tasters: [] } });
    const refused = await desk.handle('tasters:save', { name: 'Taster A' });
    expect(refused).toMatchObject({ ok: false, error: { code: 'store-read-only' } });
    desk.close();
  });

  it('reads a kitchen in a folder where nothing may be written, as somebody who is no administrator', async () => {
    const folder = temporaryFolder();
    const file = join(folder, 'k.sidejar');
    (await openKitchen(file)).close();
    chmodSync(file, 0o444);
    chmodSync(folder, 0o555);
    const isRoot = process.getuid?.() === 0;
    if (isRoot) process.seteuid?.(65_534);
    try {
      const desk = deskOf(await openKitchen(file));
      expect(await desk.handle('tasters:list', {})).toEqual({ ok: true, value: { tasters: [] } });
      const refused = await desk.handle('tasters:save', { name: 'Taster A' });
      expect(refused).toMatchObject({ ok: false, error: { code: 'store-read-only' } });
      desk.close();
    } finally {
      if (isRoot) process.seteuid?.(0);
      chmodSync(folder, 0o755);
    }
  });

  it('waits for another writer, then settles as store-locked with nothing written', async () => {
    const file = join(temporaryFolder(), 'k.sidejar');
    const kitchen = await openKitchen(file, { patience_ms: 50 });
    const Database = sqliteDriver();
    const other = new Database(file);
    other.exec('BEGIN IMMEDIATE');
    const desk = deskOf(kitchen);
    const refused = await desk.handle('tasters:save', { name: 'Taster A' });
    expect(refused).toMatchObject({ ok: false, error: { code: 'store-locked' } });
    other.exec('ROLLBACK');
    other.close();
    expect(await desk.handle('tasters:list', {})).toEqual({ ok: true, value: { tasters: [] } });
    desk.close();
  });
});

describe('sqliteDriver(node)', () => {
  it('refuses a Node on which the store would crash, before loading it', () => {
    expect(() => sqliteDriver('20.20.2')).toThrow(expect.objectContaining({ code: 'node-too-old' }));
    expect(() => sqliteDriver('21.9.0')).toThrow(expect.objectContaining({ code: 'node-too-old' }));
    expect(typeof sqliteDriver('24.0.0')).toBe('function');
  });
});
