import { appendFileSync, existsSync, readdirSync, readFileSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { CountedWork } from '#shared/carriage.ts';
import { Failure } from '#shared/failure.ts';
import { onePixelJpeg } from '#tests/desk/small-pictures.ts';
import { smallDisk } from '#tests/faults/full-disk.ts';
import { type TestDesk, temporaryDesk, temporaryFolder } from './temporary-kitchen.ts';

const each_bytes = 120_000;

/** A kitchen with so many photos, each a picture of its own and as large as a small one of a telephone. */
async function photographed(count: number): Promise<TestDesk & { photos: string }> {
  const test = await temporaryDesk();
  const { base } = await test.ask('bases:start', { name: 'B', volume_mL: 3000 });
  const photos = `${test.kitchen.file}.photos`;
  for (let place = 0; place < count; place += 1) {
    // What follows a JPEG's end is part of its file, and of its hash.
    const image = Buffer.concat([onePixelJpeg, Buffer.alloc(16, place + 1)]).toString('base64');
    await test.ask('photos:add', { base, image });
  }
  for (const name of readdirSync(photos)) appendFileSync(join(photos, name), Buffer.alloc(each_bytes, name));
  return { ...test, photos };
}

const bytesOf = (folder: string) =>
  readdirSync(folder).reduce((sum, name) => sum + readFileSync(join(folder, name)).length, 0);

describe('an export’s photos', () => {
  it('are counted while they are copied: so many of so many, and how many bytes', async () => {
    const { desk, photos } = await photographed(6);
    const told: { done: number; total: number; work: CountedWork | undefined }[] = [];
    const to = join(temporaryFolder(), 'out');
    const envelope = await desk.handle(
      'data:export',
      { to },
      { progress: (done, total, work) => told.push({ done, total, work }), assertGoing() {} },
    );
    expect(envelope).toMatchObject({ ok: true });
    const work = told.flatMap((each) => each.work ?? []);
    const whole = bytesOf(photos);
    expect(work[0]).toEqual({ what: 'photos', done: 0, total: 6, done_bytes: 0, total_bytes: whole });
    expect(work.at(-1)).toEqual({ what: 'photos', done: 6, total: 6, done_bytes: whole, total_bytes: whole });
    const shares = told.map(({ done, total }) => done / total);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBeGreaterThan(0.99);
    expect(bytesOf(join(to, 'photos'))).toBe(whole);
  });

  it('can be stopped between any two of them, and nothing of the export is left', async () => {
    const { desk } = await photographed(4);
    for (let after = 0; after <= 4; after += 1) {
      const folder = temporaryFolder();
      let copied = 0;
      const to = join(folder, 'out');
      const envelope = await desk.handle(
        'data:export',
        { to },
        {
          progress() {},
          assertGoing() {
            const standing = join(`${to}.unfinished`, 'photos');
            copied = existsSync(standing) ? readdirSync(standing).length : 0;
            if (existsSync(standing) && copied === after) throw new Failure('stopped', 'Stopped.');
          },
        },
      );
      expect(envelope).toMatchObject({ ok: false, error: { code: 'stopped' } });
      expect(copied).toBe(after);
      expect(readdirSync(folder)).toEqual([]);
    }
  });

  it('that are taken away while it copies are missing in it, like those that were missing before', async () => {
    const { desk, photos } = await photographed(3);
    const to = join(temporaryFolder(), 'out');
    const last = readdirSync(photos);
    const envelope = await desk.handle(
      'data:export',
      { to },
      {
        progress(_done, _total, work) {
          if (work?.done === 0) for (const name of last.slice(1)) rmSync(join(photos, name));
        },
        assertGoing() {},
      },
    );
    expect(envelope).toMatchObject({ ok: true });
    expect(readdirSync(join(to, 'photos'))).toHaveLength(1);
  });

  it('that a full disk has no room for leave nothing half-written, and a plain sentence', async (context) => {
    const disk = smallDisk(2);
    if (disk === null) return context.skip('mounting a small disk needs Linux and root');
    try {
      const { desk } = await photographed(8);
      const outcomes = new Set<string>();
      for (const rest of [2_000, 20_000, 60_000, 250_000, 600_000, 900_000, 1_500_000]) {
        for (const name of readdirSync(disk.folder)) rmSync(join(disk.folder, name), { recursive: true });
        const { bavail, bsize } = statfsSync(disk.folder);
        writeFileSync(join(disk.folder, 'filler'), Buffer.alloc(Math.max(0, bavail * bsize - rest), 1));
        let isCopying = false;
        const envelope = await desk.handle(
          'data:export',
          { to: join(disk.folder, 'out') },
          {
            progress(_done, _total, work) {
              isCopying ||= work !== undefined;
            },
            assertGoing() {},
          },
        );
        outcomes.add(envelope.ok ? 'whole' : isCopying ? 'full among the photos' : 'full among the rows');
        if (envelope.ok) {
          expect(readdirSync(join(disk.folder, 'out', 'photos'))).toHaveLength(8);
          continue;
        }
        expect(envelope.error).toEqual({
          code: 'store-full',
          message: 'The disk is full. The half-written export was taken away; make room and try again.',
          path: ['to'],
        });
        expect(readdirSync(disk.folder)).toEqual(['filler']);
      }
      expect(outcomes).toEqual(new Set(['full among the rows', 'full among the photos', 'whole']));
    } finally {
      disk.remove();
    }
  });
});
