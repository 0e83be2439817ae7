import { copyFileSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { deskOf } from '#desk/desk.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { temporaryDesk, temporaryFolder } from './temporary-kitchen.ts';

describe('two programs on one kitchen', () => {
  it('a stale edit is refused with both versions, and nothing of either is lost', async () => {
    const file = join(temporaryFolder(), 'k.sidejar');
    const [one, two] = [deskOf(await openKitchen(file)), deskOf(await openKitchen(file))];
    const made = (await one.handle('cultures:save', { name: 'Mother', kind: 'kombucha' })) as {
      value: { culture: string };
    };
    const edit = { id: made.value.culture, revision: 1, kind: 'kombucha' };
    await one.handle('cultures:save', { ...edit, name: 'Old mother' });
    expect(await two.handle('cultures:save', { ...edit, name: 'Green mother' })).toMatchObject({
      ok: false,
      error: {
        code: 'changed-since',
        message: expect.stringMatching(/there it is “Old mother”, yours is “Green mother”/),
      },
    });
    // Each changes its own part of one row: neither takes the other's back.
    await one.handle('kitchen:change', { name: 'Lane' });
    await two.handle('kitchen:change', { measures: 'us' });
    expect(await one.handle('kitchen:open', {})).toMatchObject({ value: { name: 'Lane', measures: 'us' } });
    one.close();
    two.close();
  });

  it('each is told what the other wrote, once, and nothing of its own', async () => {
    const file = join(temporaryFolder(), 'k.sidejar');
    const [one, two] = [await openKitchen(file), await openKitchen(file)];
    const told: (readonly string[])[] = [];
    two.onChange(({ tables }) => told.push(tables));
    await deskOf(one).handle('tasters:save', { name: 'A' });
    two.lookForOthers();
    two.lookForOthers();
    expect(told).toEqual([['tasters']]);
    await deskOf(two).handle('cultures:save', { name: 'M', kind: 'k' });
    await deskOf(one).handle('tasters:save', { name: 'B' });
    await deskOf(two).handle('bases:start', { name: 'B', volume_mL: 100 });
    two.lookForOthers();
    expect(told.slice(1)).toEqual([['cultures'], ['bases'], expect.arrayContaining(['tasters'])]);
    one.close();
    two.close();
  });

  it('a hundred writes of each at once all stand, in one chain', async () => {
    const file = join(temporaryFolder(), 'k.sidejar');
    const desks = [deskOf(await openKitchen(file)), deskOf(await openKitchen(file))];
    await Promise.all(
      desks.flatMap((desk, side) =>
        Array.from({ length: 100 }, (_, at) => desk.handle('tasters:save', { name: `Taster ${side}-${at}` })),
      ),
    );
    expect(await desks[0]?.handle('tasters:list', {})).toMatchObject({ value: { tasters: { length: 200 } } });
    expect(await desks[1]?.handle('store:check', {})).toMatchObject({ value: { ok: true } });
    for (const desk of desks) desk.close();
  });
});

describe('a kitchen’s file', () => {
  it('moved away under the program: writing is refused, reading and a backup elsewhere still work', async () => {
    const test = await temporaryDesk();
    const { ask, fail, kitchen } = test;
    await ask('tasters:save', { name: 'A' });
    renameSync(kitchen.file, `${kitchen.file}.away`);
    expect(await fail('tasters:save', { name: 'B' })).toMatchObject({ code: 'store-missing' });
    expect(await fail('drafts:keep', { name: 'd', body: 1 })).toMatchObject({ code: 'store-missing' });
    expect((await ask('tasters:list', {})).tasters).toHaveLength(1);
    const to = join(temporaryFolder(), 'saved.sidejar');
    await ask('store:backup', { to });
    const saved = deskOf(await openKitchen(to));
    expect(await saved.handle('tasters:list', {})).toMatchObject({ value: { tasters: [{ name: 'A' }] } });
    saved.close();
    // Put back, it is the same file again.
    renameSync(`${kitchen.file}.away`, kitchen.file);
    await ask('tasters:save', { name: 'B' });
  });

  it('replaced by another, as a cloud folder does: writing is refused', async () => {
    const { ask, fail, kitchen } = await temporaryDesk();
    await ask('tasters:save', { name: 'A' });
    copyFileSync(kitchen.file, `${kitchen.file}.other`);
    renameSync(`${kitchen.file}.other`, kitchen.file);
    expect(await fail('tasters:save', { name: 'B' })).toMatchObject({ code: 'store-missing' });
  });
});
