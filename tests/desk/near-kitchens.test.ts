import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, rmSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { lookForKitchensIn } from '#desk/kitchen/near-kitchens.ts';
import { type TestDesk, temporaryDesk, temporaryFolder } from '#tests/store/temporary-kitchen.ts';

afterEach(() => lookForKitchensIn([], false));

function put(folder: string, name: string, day = 1, bytes = 10): string {
  const file = join(folder, name);
  writeFileSync(file, 'x'.repeat(bytes));
  const at = new Date(Date.UTC(2026, 0, day));
  utimesSync(file, at, at);
  return file;
}

/** A desk that looks into one folder beside its own. */
async function deskNear(folder = temporaryFolder()): Promise<TestDesk & { folder: string }> {
  const test = await temporaryDesk();
  lookForKitchensIn([folder], false);
  return { ...test, folder };
}

describe('kitchens:near', () => {
  it('names the kitchens’ files of the usual folders, the newest first, with size and date, and no other file', async () => {
    const { ask, folder } = await deskNear();
    put(folder, 'old.sidejar', 1, 1500);
    put(folder, 'NEW.SIDEJAR', 3);
    put(folder, 'notes.txt', 5);
    put(folder, '.sidejar', 5);
    mkdirSync(join(folder, 'folder.sidejar'));
    mkdirSync(join(folder, 'inner'));
    put(join(folder, 'inner'), 'deep.sidejar');
    const { folders, dialog } = await ask('kitchens:near', {});
    expect(dialog).toBe(false);
    const found = folders.find((each) => each.folder === folder);
    expect(found).toEqual({
      folder,
      isReadable: true,
      more: 0,
      kitchens: [
        { file: join(folder, 'NEW.SIDEJAR'), name: 'NEW.SIDEJAR', bytes: 10, at: '2026-01-03T00:00:00.000Z' },
        { file: join(folder, 'old.sidejar'), name: 'old.sidejar', bytes: 1500, at: '2026-01-01T00:00:00.000Z' },
      ],
    });
  });

  it('leaves out the open kitchen, by whatever name it goes, and a folder that is named twice', async () => {
    const test = await temporaryDesk();
    const own = join(test.kitchen.file, '..');
    const folder = temporaryFolder();
    symlinkSync(test.kitchen.file, join(folder, 'alias.sidejar'));
    symlinkSync(folder, join(folder, 'again'));
    lookForKitchensIn([folder, own, join(folder, 'again'), join(folder, 'missing')], false);
    const { folders } = await test.ask('kitchens:near', {});
    expect(folders.map((each) => each.folder)).toEqual([own, folder]);
    expect(folders.flatMap(({ kitchens }) => kitchens)).toEqual([]);
  });

  it('follows a link to a file; one that leads nowhere, in a circle, to a folder, a device or a pipe is no kitchen', async () => {
    const { ask, folder } = await deskNear();
    const elsewhere = put(temporaryFolder(), 'far.sidejar', 2, 77);
    symlinkSync(elsewhere, join(folder, 'link.sidejar'));
    symlinkSync(join(folder, 'nothing'), join(folder, 'broken.sidejar'));
    symlinkSync(join(folder, 'circle.sidejar'), join(folder, 'circle.sidejar'));
    symlinkSync(folder, join(folder, 'folder.sidejar'));
    symlinkSync('/dev/zero', join(folder, 'endless.sidejar'));
    if (process.platform !== 'win32') spawnSync('mkfifo', [join(folder, 'pipe.sidejar')]);
    const { folders } = await ask('kitchens:near', {});
    expect(folders.flatMap(({ kitchens }) => kitchens)).toMatchObject([{ name: 'link.sidejar', bytes: 77 }]);
  });

  it('tells forty of thousands of files, the newest, and how many are left out', async () => {
    const { ask, folder } = await deskNear();
    for (let place = 0; place < 3000; place += 1) writeFileSync(join(folder, `k${place}.sidejar`), '');
    const newest = new Date('2030-01-01');
    const begun = process.cpuUsage();
    utimesSync(join(folder, 'k7.sidejar'), newest, newest);
    const { folders } = await ask('kitchens:near', {});
    const { user, system } = process.cpuUsage(begun);
    const found = folders.find((each) => each.folder === folder);
    expect(found?.kitchens).toHaveLength(40);
    expect(found?.kitchens[0]?.name).toBe('k7.sidejar');
    expect((found?.kitchens.length ?? 0) + (found?.more ?? 0)).toBe(3000);
    expect((user + system) / 1000).toBeLessThan(1500);
  });

  it('says which folder may not be read, and lists the others', async () => {
    const closed = temporaryFolder();
    const folder = temporaryFolder();
    put(folder, 'k.sidejar');
    chmodSync(folder, 0o755);
    chmodSync(closed, 0o000);
    const test = await temporaryDesk();
    lookForKitchensIn([closed, folder], false);
    // Root reads everything: for this one look it is somebody else.
    const isRoot = process.getuid?.() === 0;
    if (isRoot) process.seteuid?.(65534);
    try {
      const { folders } = await test.ask('kitchens:near', {});
      expect(folders.find((each) => each.folder === closed)).toEqual({
        folder: closed,
        isReadable: false,
        kitchens: [],
        more: 0,
      });
      expect(folders.find((each) => each.folder === folder)?.kitchens).toHaveLength(1);
    } finally {
      if (isRoot) process.seteuid?.(0);
      chmodSync(closed, 0o755);
      rmSync(closed, { recursive: true });
    }
  });

  it('gives a name as it is on the disk, marks that turn its direction and markup too', async () => {
    const { ask, folder } = await deskNear();
    const names = ['<img src=x onerror=alert(1)>.sidejar', 'a\u202erajedis.exe.sidejar', 'two\nlines.sidejar'];
    for (const name of names) put(folder, name);
    const { folders } = await ask('kitchens:near', {});
    expect(folders.flatMap(({ kitchens }) => kitchens.map(({ name }) => name)).sort()).toEqual([...names].sort());
  });
});

describe('kitchen:openNear', () => {
  it('finds what the list names, and nothing outside of its folders', async () => {
    const { ask, fail, folder } = await deskNear();
    const file = put(folder, 'k.sidejar');
    expect(await ask('kitchen:openNear', { file })).toEqual({ file });
    const outside = put(temporaryFolder(), 'far.sidejar');
    mkdirSync(join(folder, 'inner'));
    const deep = put(join(folder, 'inner'), 'deep.sidejar');
    for (const other of [outside, deep, join(folder, 'none.sidejar'), put(folder, 'k.txt'), folder, basename(file)]) {
      expect(await fail('kitchen:openNear', { file: other }), other).toMatchObject({
        code: 'store-missing',
        path: ['file'],
      });
    }
    expect(await ask('kitchen:openNear', { file: join(folder, 'inner', '..', 'k.sidejar') })).toEqual({ file });
  });
});
