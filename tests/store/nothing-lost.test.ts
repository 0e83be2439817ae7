import { chmodSync, copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { deskOf } from '#desk/desk.ts';
import { backupsToKeep } from '#store/keeping/backup-schedule.ts';
import { checkStore } from '#store/keeping/check-store.ts';
import { listBackups } from '#store/keeping/list-backups.ts';
import { tendKitchen } from '#store/keeping/tend-kitchen.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { daysPlan, preparedTrial } from '#tests/desk/example-trial.ts';
import { handClock, type TestDesk, temporaryDesk, temporaryFolder } from './temporary-kitchen.ts';

const quiet = () => {};

/** Every byte of the kitchen's file and its log, as text to look for a name in. */
function bytesOf({ kitchen }: TestDesk): string {
  const log = `${kitchen.file}-wal`;
  return readFileSync(kitchen.file, 'latin1') + readFileSync(log, 'latin1');
}

async function tastedBy(test: TestDesk, name: string) {
  const { ask } = test;
  const prepared = await preparedTrial(test, 2);
  const { taster } = await ask('tasters:save', {
    name: `${name} before`,
    note: 'lives in Lane Seven',
    avoids: ['nuts'],
  });
  await ask('tasters:save', { id: taster, revision: 1, name });
  const { tasting, codes } = await ask('tastings:build', {
    trial: prepared.trial,
    name: 'T',
    samples: prepared.jars.map(({ id }) => ({ jar: id })),
    tasters: [...prepared.tasters, taster],
    seed: 9,
  });
  const sample = Object.values(codes)[0] ?? '';
  await ask('scores:enter', { tasting, scores: [{ taster: name, sample, attribute: 'tang', score: 5 }] });
  await ask('remarks:save', { tasting, taster: name, sample, words: 'tastes of Lane Seven' });
  await ask('drafts:keep', { name: 'sheet', body: { [name]: 4 } });
  await ask('tastings:close', { tasting });
  await ask('tasters:setAside', { trial: prepared.trial, taster, reason: 'had a cold that day' });
  return { ...prepared, taster, tasting };
}

describe('tasters:erase', () => {
  it('takes the name out of rows, log, history, drafts and every byte of the file; the scores stay, and the chain holds', async () => {
    const test = await temporaryDesk();
    const { ask } = test;
    const { taster, tasting, trial } = await tastedBy(test, 'Zwickelfritz');
    expect(bytesOf(test)).toContain('Zwickelfritz');
    const before = await ask('findings:read', { trial });
    const erased = await ask('tasters:erase', { taster });
    expect(erased).toMatchObject({ name: 'Nameless taster 1', backups: 0 });
    expect(erased.entries).toBeGreaterThanOrEqual(4);
    for (const gone of ['Zwickelfritz', 'Lane Seven', 'had a cold']) expect(bytesOf(test), gone).not.toContain(gone);
    expect((await ask('scores:list', { tasting })).scores).toMatchObject([{ taster: 'Nameless taster 1', score: 5 }]);
    expect((await ask('findings:read', { trial })).scores.length).toBe(before.scores.length);
    expect((await ask('drafts:open', { name: 'sheet' })).draft?.body).toEqual({ 'Nameless taster 1': 4 });
    const history = await ask('history:read', { limit: 500 });
    expect(JSON.stringify(history)).not.toContain('Zwickelfritz');
    expect(await ask('store:check', {})).toEqual({ ok: true, problems: [] });
  });

  it('cannot be undone, nor can what it erased; history says that it was', async () => {
    const test = await temporaryDesk();
    const { ask, fail } = test;
    const { taster } = await ask('tasters:save', { name: 'Zwickelfritz' });
    await ask('tasters:erase', { taster });
    expect(await fail('undo:last', {})).toMatchObject({ code: 'refused', message: expect.stringContaining('erased') });
    const { entries } = await ask('history:row', { table: 'tasters', id: taster });
    expect(entries.map(({ isErased }) => isErased)).toEqual([false, true]);
    expect(entries[1]).toMatchObject({ after: null, summary: 'Add taster a taster' });
  });

  it('is the only way to blank an entry: one that no erasure declares is found, and so is one blanked half', async () => {
    const test = await temporaryDesk();
    const { taster } = await test.ask('tasters:save', { name: 'Zwickelfritz' });
    await test.ask('tasters:save', { name: 'Other' });
    await test.ask('tasters:erase', { taster });
    const { db } = test.kitchen;
    const blank = `UPDATE changes SET after = '{"erased":true}', salt = NULL, commitment = hash WHERE id = ?`;
    const last = db.prepare("SELECT max(id) FROM changes WHERE after LIKE '%Other%'").pluck().get();
    db.prepare(blank).run(last);
    expect(checkStore(test.kitchen, quiet).join(' ')).toContain('no erasure says why');
    expect(checkStore(test.kitchen, quiet).join(' ')).toContain('broken');
  });
});

describe('the bin', () => {
  it('keeps for 90 days, is emptied of what is older when the kitchen is tended, and undo passes that by', async () => {
    const test = await temporaryDesk();
    const { ask, fail, clock, kitchen } = test;
    const { trial } = await ask('trials:save', { ...daysPlan, question: 'Zwickelfritz?' });
    await ask('trials:remove', { trial });
    clock.move(89 * 24);
    expect((await ask('store:tend', {})).emptied).toBe(0);
    await ask('tasters:save', { name: 'Kept' });
    clock.move(2 * 24);
    expect((await ask('store:tend', {})).emptied).toBe(7);
    expect((await ask('bin:list', {})).entries).toEqual([]);
    expect(await ask('store:check', {})).toEqual({ ok: true, problems: [] });
    const log = kitchen.read.all<{ after: string | null }>("SELECT after FROM changes WHERE table_name = 'trials'");
    expect(JSON.stringify(log)).not.toContain('Zwickelfritz');
    expect((await ask('undo:last', {})).summary).toBe('Add taster Kept');
    expect(await fail('undo:last', {})).toMatchObject({ code: 'refused', message: expect.stringContaining('erased') });
  });

  it('is emptied of one removal when its owner says so', async () => {
    const { ask, fail } = await temporaryDesk();
    const { taster } = await ask('tasters:save', { name: 'Zwickelfritz' });
    await ask('tasters:remove', { taster });
    const step = (await ask('bin:list', {})).entries[0]?.step ?? 0;
    expect(await ask('bin:empty', { step })).toEqual({ rows: 1 });
    expect(await fail('bin:restore', { step })).toMatchObject({ code: 'not-found' });
    expect((await ask('store:check', {})).ok).toBe(true);
  });
});

describe('history:row', () => {
  it('tells everything that happened to a row, and nothing of a blind tasting before it is closed', async () => {
    const test = await temporaryDesk();
    const { ask, fail, kitchen } = test;
    const { taster } = await ask('tasters:save', { name: 'A' });
    await ask('tasters:save', { id: taster, revision: 1, name: 'B' });
    await ask('undo:last', {});
    const { entries } = await ask('history:row', { table: 'tasters', id: taster });
    expect(entries.map(({ before, after, kind }) => [before?.name, after?.name, kind])).toEqual([
      ['B', 'A', 'undo'],
      ['A', 'B', 'do'],
      [undefined, 'A', 'do'],
    ]);
    const { trial, jars, tasters } = await preparedTrial(test, 2);
    const built = { trial, name: 'T', samples: jars.map(({ id }) => ({ jar: id })), tasters, seed: 1 };
    const { tasting } = await ask('tastings:build', built);
    const sample = kitchen.read.one<{ id: string }>('SELECT id FROM samples')?.id ?? '';
    expect(await fail('history:row', { table: 'samples', id: sample })).toMatchObject({ code: 'refused' });
    expect(await fail('history:row', { table: 'tastings', id: tasting })).toMatchObject({ code: 'refused' });
    await ask('tastings:close', { tasting });
    expect((await ask('history:row', { table: 'samples', id: sample })).entries).toHaveLength(1);
    expect(await fail('history:row', { table: 'sqlite_schema', id: sample })).toMatchObject({ path: ['table'] });
  });
});

describe('undo', () => {
  it('holds through a restart', async () => {
    const file = join(temporaryFolder(), 'k.sidejar');
    const first = deskOf(await openKitchen(file));
    await first.handle('tasters:save', { name: 'A' });
    await first.handle('tasters:save', { name: 'B' });
    await first.handle('undo:last', {});
    first.close();
    const second = deskOf(await openKitchen(file));
    expect(await second.handle('undo:state', {})).toMatchObject({
      value: { undo: 'Add taster A', redo: 'Add taster B' },
    });
    await second.handle('redo:last', {});
    await second.handle('undo:last', {});
    await second.handle('undo:last', {});
    expect(await second.handle('tasters:list', {})).toEqual({ ok: true, value: { tasters: [] } });
    second.close();
  });
});

describe('backups', () => {
  it('are made when something changed since the last, and only then; those of a person are never thinned', async () => {
    const test = await temporaryDesk();
    const { ask, clock } = test;
    const first = await ask('store:tend', {});
    expect(first.backup?.bytes).toBeGreaterThan(0);
    clock.move(1);
    expect((await ask('store:tend', {})).backup).toBeNull();
    await ask('store:backup', {});
    for (let day = 0; day < 40; day += 1) {
      clock.move(24);
      await ask('tasters:save', { name: `Taster ${day}` });
      expect((await ask('backups:list', {})).due).toBe(true);
      await ask('store:tend', {});
    }
    const { backups, due } = await ask('backups:list', {});
    expect(due).toBe(false);
    expect(backups.filter(({ kind }) => kind === 'made')).toHaveLength(1);
    const kept = backups.filter(({ kind }) => kind === 'kept');
    expect(kept.length).toBeGreaterThanOrEqual(9);
    expect(kept.length).toBeLessThanOrEqual(7 + 4 + 3);
    expect(backups.every(({ bytes }) => bytes > 0)).toBe(true);
  });

  it('are restored into a new kitchen beside the old, which stays', async () => {
    const test = await temporaryDesk();
    const { ask, fail, kitchen, clock } = test;
    await ask('tasters:save', { name: 'Then' });
    await ask('store:tend', {});
    clock.move(24);
    await ask('tasters:save', { name: 'Since' });
    const name = (await ask('backups:list', {})).backups[0]?.name ?? '';
    const { file } = await ask('backups:restore', { name });
    expect(dirname(file)).toBe(dirname(kitchen.file));
    const again = await ask('backups:restore', { name });
    expect(again.file).not.toBe(file);
    const restored = deskOf(await openKitchen(file));
    expect(await restored.handle('tasters:list', {})).toMatchObject({ value: { tasters: [{ name: 'Then' }] } });
    expect(await restored.handle('store:check', {})).toMatchObject({ value: { ok: true } });
    restored.close();
    expect((await ask('tasters:list', {})).tasters).toHaveLength(2);
    expect(await fail('backups:restore', { name: '../../etc/passwd' })).toMatchObject({ code: 'not-found' });
  });

  it('a damaged one is not restored, and a copy that is not whole is not kept', async () => {
    const test = await temporaryDesk();
    const { ask, fail, kitchen } = test;
    await ask('kitchen:sample', {});
    await ask('store:tend', {});
    const [backup] = listBackups(kitchen.file);
    const bytes = readFileSync(backup?.file ?? '');
    bytes.fill(0xff, 8192, 40_960);
    writeFileSync(backup?.file ?? '', bytes);
    expect(await fail('backups:restore', { name: backup?.name ?? '' })).toMatchObject({ code: 'store-damaged' });
  });

  it('the schedule keeps 7 days, 4 weeks and 12 months, however long nobody came', () => {
    const daily = Array.from({ length: 800 }, (_, day) => new Date(Date.UTC(2024, 0, 1 + day, 9)));
    const kept = [...backupsToKeep(daily)].map((at) => at.toISOString().slice(0, 10)).sort();
    // 800 days from 1 January 2024 end on 10 March 2026, a Tuesday: counted by hand.
    expect(kept).toEqual([
      ...['2025-04-30', '2025-05-31', '2025-06-30', '2025-07-31', '2025-08-31', '2025-09-30', '2025-10-31'],
      ...['2025-11-30', '2025-12-31', '2026-01-31', '2026-02-22', '2026-02-28', '2026-03-01'],
      ...['2026-03-04', '2026-03-05', '2026-03-06', '2026-03-07', '2026-03-08', '2026-03-09', '2026-03-10'],
    ]);
    const twice = [new Date(Date.UTC(2020, 1, 1)), new Date(Date.UTC(2026, 1, 1))];
    expect(backupsToKeep(twice).size).toBe(2);
  });
});

describe('beside the kitchen', () => {
  it('second editions that a cloud folder leaves are named, backups are not', async () => {
    const { ask, kitchen } = await temporaryDesk();
    const folder = dirname(kitchen.file);
    const stray = [
      'k (conflicted copy 2026-05-01).sidejar',
      'k (Ada’s conflicted copy).sidejar',
      'k.sync-conflict-20260501-101010-ABC.sidejar',
      'k (1).sidejar',
      'k - Copy.sidejar',
    ];
    for (const name of [...stray, 'kombucha.sidejar', 'notes.txt']) copyFileSync(kitchen.file, join(folder, name));
    expect([...(await ask('backups:list', {})).copies].sort()).toEqual([...stray].sort());
  });
});

describe('a kitchen that is only read', () => {
  it('is not tended: no backup beside it, no bin emptied', async () => {
    const file = join(temporaryFolder(), 'k.sidejar');
    (await openKitchen(file)).close();
    chmodSync(file, 0o444);
    const kitchen = await openKitchen(file, { clock: handClock().now });
    expect(await tendKitchen(kitchen)).toEqual({ backup: null, thinned: 0, emptied: 0 });
    expect(listBackups(file).map(({ file: each }) => basename(each))).toEqual([]);
    kitchen.close();
  });
});

describe('store:rescue', () => {
  it('saves rows whose page is gone from the log, into a new file that checks whole', async () => {
    const test = await temporaryDesk();
    const { ask, kitchen } = test;
    await ask('kitchen:sample', {});
    const wanted = kitchen.read.all('SELECT * FROM scores ORDER BY id');
    kitchen.db.pragma('wal_checkpoint(TRUNCATE)');
    const root = Number(kitchen.db.prepare("SELECT rootpage FROM sqlite_schema WHERE name = 'scores'").pluck().get());
    const bytes = readFileSync(kitchen.file);
    bytes.fill(0xff, (root - 1) * 4096, root * 4096);
    const damaged = join(temporaryFolder(), 'damaged.sidejar');
    writeFileSync(damaged, bytes);
    const desk = deskOf(await openKitchen(damaged));
    expect(await desk.handle('scores:list', { tasting: '00000000-0000-7000-8000-000000000000' })).toMatchObject({
      ok: false,
    });
    const rescued = await desk.handle('store:rescue', {});
    expect(rescued).toMatchObject({ ok: true, value: { lost: 0, fromLog: wanted.length } });
    desk.close();
    expect(readFileSync(damaged).equals(bytes)).toBe(true);
    const saved = await openKitchen((rescued as { value: { file: string } }).value.file);
    expect(saved.read.all('SELECT * FROM scores ORDER BY id')).toEqual(wanted);
    expect(checkStore(saved, quiet)).toEqual([]);
    saved.close();
  });
});
