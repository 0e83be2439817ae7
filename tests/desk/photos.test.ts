import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openKitchen } from '#store/open-kitchen.ts';
import { type TestDesk, temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { daysPlan } from './example-trial.ts';
import { heicHead, onePixelJpeg, onePixelPng, programHead, webpHead } from './small-pictures.ts';

const base64 = (bytes: Buffer) => bytes.toString('base64');

/** A trial with started jars. */
async function startedJars({ ask }: TestDesk) {
  const { trial, jars } = await ask('trials:save', daysPlan);
  await ask('jars:start', { jars: jars.map(({ id }) => id), at: '2026-05-01T08:00:00.000Z' });
  const [a = '', b = ''] = jars.map(({ id }) => id);
  return { trial, a, b };
}

function fileOf({ kitchen }: TestDesk, sha256: string, ending = 'jpg'): string {
  return join(`${kitchen.file}.photos`, `${sha256}.${ending}`);
}

describe('photos:add', () => {
  it('keeps the picture as a file named by its hash, and a row with its size', async () => {
    const test = await temporaryDesk();
    const { a } = await startedJars(test);
    test.clock.move(30);
    const { photo, sha256 } = await test.ask('photos:add', { jar: a, image: base64(onePixelJpeg), note: 'first foam' });
    expect(sha256).toBe(createHash('sha256').update(onePixelJpeg).digest('hex'));
    expect(readFileSync(fileOf(test, sha256))).toEqual(onePixelJpeg);
    expect(readdirSync(`${test.kitchen.file}.photos`)).toEqual([`${sha256}.jpg`]);
    expect((await test.ask('photos:ofJar', { jar: a })).photos).toEqual([
      {
        id: photo,
        takenAt: '2026-05-02T14:00:00.000Z',
        sha256,
        format: 'jpeg',
        width: 1,
        height: 1,
        bytes: onePixelJpeg.length,
        note: 'first foam',
        file: 'here',
      },
    ]);
    expect(await test.ask('photos:read', { photo })).toEqual({ format: 'jpeg', image: base64(onePixelJpeg) });
    expect(await test.ask('store:check', {})).toEqual({ ok: true, problems: [] });
  });

  it('takes PNG and WebP too, of a base too, and reads their sizes from their headers', async () => {
    const test = await temporaryDesk();
    const { base } = await test.ask('bases:start', { name: 'Saturday', volume_mL: 3000 });
    await test.ask('photos:add', { base, image: base64(onePixelPng) });
    await test.ask('photos:add', { base, image: base64(webpHead(640, 480)) });
    expect((await test.ask('photos:ofJar', { base })).photos).toMatchObject([
      { format: 'png', width: 1, height: 1 },
      { format: 'webp', width: 640, height: 480 },
    ]);
  });

  it.each([
    ['a HEIC picture', heicHead, /HEIC picture.*as JPEG/],
    ['a drawing', Buffer.from('<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"/>'), /drawing/],
    ['a drawing after spaces', Buffer.from('\n  <svg onload="x"/>'), /drawing/],
    ['a program', programHead, /program/],
    ['a program of another system', Buffer.from('\u007fELF\u0002\u0001', 'latin1'), /program/],
    ['an archive', Buffer.from('PK\u0003\u0004....', 'latin1'), /archive/],
    ['a GIF', Buffer.from('GIF89a.......'), /JPEG, PNG or WebP/],
    ['a JPEG cut off before its size', onePixelJpeg.subarray(0, 40), /cut off/],
    ['a PNG of no width', Buffer.concat([onePixelPng.subarray(0, 16), Buffer.alloc(8)]), /cut off/],
  ])('refuses %s in a plain sentence, and writes nothing', async (_name, bytes, sentence) => {
    const test = await temporaryDesk();
    const { a } = await startedJars(test);
    const refusal = await test.fail('photos:add', { jar: a, image: base64(bytes) });
    expect(refusal).toMatchObject({ code: 'refused', path: ['image'] });
    expect(refusal.message).toMatch(sentence);
    expect(existsSync(`${test.kitchen.file}.photos`)).toBe(false);
    expect((await test.ask('photos:ofJar', { jar: a })).photos).toEqual([]);
  });

  it('refuses what is over 8 MB, no base64, the same picture twice on one jar, and a jar not started', async () => {
    const test = await temporaryDesk();
    const { a, b } = await startedJars(test);
    const large = Buffer.concat([onePixelJpeg, Buffer.alloc(8 * 1024 * 1024)]);
    expect((await test.fail('photos:add', { jar: a, image: base64(large) })).message).toContain('8 MB');
    const justOver = Buffer.concat([onePixelJpeg, Buffer.alloc(8 * 1024 * 1024 + 1 - onePixelJpeg.length)]);
    expect((await test.fail('photos:add', { jar: a, image: base64(justOver) })).message).toContain('8 MB');
    for (const image of ['not base64!', 'abc', `${base64(onePixelJpeg)}\n`]) {
      expect(await test.fail('photos:add', { jar: a, image })).toMatchObject({ code: 'invalid-input' });
    }
    await test.ask('photos:add', { jar: a, image: base64(onePixelJpeg) });
    await test.ask('photos:add', { jar: b, image: base64(onePixelJpeg) });
    expect(await test.fail('photos:add', { jar: a, image: base64(onePixelJpeg) })).toMatchObject({ code: 'refused' });
    const later = await test.ask('trials:save', { ...daysPlan, question: 'And again?' });
    expect(await test.fail('photos:add', { jar: later.jars[0]?.id, image: base64(onePixelJpeg) })).toMatchObject({
      code: 'refused',
      path: ['jar'],
    });
    expect(await test.fail('photos:add', { image: base64(onePixelJpeg) })).toMatchObject({ code: 'invalid-input' });
  });
});

describe('a photo’s file', () => {
  it('is said to be missing, by the list, by reading and by the check; adding it again brings it back', async () => {
    const test = await temporaryDesk();
    const { a, b } = await startedJars(test);
    const { photo, sha256 } = await test.ask('photos:add', { jar: a, image: base64(onePixelJpeg) });
    rmSync(fileOf(test, sha256));
    expect((await test.ask('photos:ofJar', { jar: a })).photos).toMatchObject([{ file: 'missing' }]);
    expect(await test.fail('photos:read', { photo })).toMatchObject({
      code: 'not-found',
      message: expect.stringContaining('is missing'),
    });
    const check = await test.ask('store:check', {});
    expect(check).toMatchObject({ ok: false, problems: [expect.stringContaining(sha256)] });
    await test.ask('photos:add', { jar: b, image: base64(onePixelJpeg) });
    expect(await test.ask('photos:read', { photo })).toMatchObject({ format: 'jpeg' });
    expect(await test.ask('store:check', {})).toMatchObject({ ok: true });
  });

  it('is never shown once another picture lies in its place, of any size; adding it again puts it right', async () => {
    const test = await temporaryDesk();
    const { a, b } = await startedJars(test);
    const { photo, sha256 } = await test.ask('photos:add', { jar: a, image: base64(onePixelJpeg) });
    const sameSize = Buffer.from(onePixelJpeg);
    sameSize.writeUInt8(sameSize.readUInt8(sameSize.length - 4) ^ 1, sameSize.length - 4);
    writeFileSync(fileOf(test, sha256), sameSize);
    expect(await test.fail('photos:read', { photo })).toMatchObject({
      code: 'refused',
      message: expect.stringContaining('altered'),
    });
    writeFileSync(fileOf(test, sha256), onePixelPng);
    expect((await test.ask('photos:ofJar', { jar: a })).photos).toMatchObject([{ file: 'altered' }]);
    expect((await test.ask('store:check', {})).problems).toEqual([expect.stringContaining('altered')]);
    await test.ask('photos:add', { jar: b, image: base64(onePixelJpeg) });
    expect(readFileSync(fileOf(test, sha256))).toEqual(onePixelJpeg);
  });

  it('stays when its row goes to the bin, and is shown again when it comes back', async () => {
    const test = await temporaryDesk();
    const { a } = await startedJars(test);
    const { photo, sha256 } = await test.ask('photos:add', { jar: a, image: base64(onePixelJpeg) });
    await test.ask('photos:remove', { photo });
    expect((await test.ask('photos:ofJar', { jar: a })).photos).toEqual([]);
    expect(existsSync(fileOf(test, sha256))).toBe(true);
    const { entries } = await test.ask('bin:list', {});
    expect(entries).toMatchObject([{ summary: expect.stringMatching(/photo of jar/), rows: 1 }]);
    await test.ask('bin:restore', { step: entries[0]?.step ?? 0 });
    expect((await test.ask('photos:ofJar', { jar: a })).photos).toMatchObject([{ id: photo, file: 'here' }]);
    expect(await test.fail('photos:remove', { photo: '019e0000-0000-7000-8000-000000000001' })).toMatchObject({
      code: 'not-found',
    });
  });

  it('is shared by a restored backup, not written twice', async () => {
    const test = await temporaryDesk();
    const { a } = await startedJars(test);
    const { sha256 } = await test.ask('photos:add', { jar: a, image: base64(onePixelJpeg) });
    await test.ask('store:backup', {});
    const { backups } = await test.ask('backups:list', {});
    const { file } = await test.ask('backups:restore', { name: backups[0]?.name ?? '' });
    const shared = statSync(join(`${file}.photos`, `${sha256}.jpg`));
    expect(shared.ino).toBe(statSync(fileOf(test, sha256)).ino);
    const restored = await openKitchen(file);
    expect(restored.read.one('SELECT sha256 FROM photos')).toEqual({ sha256 });
    restored.close();
  });
});

describe('photos:ofTrial', () => {
  it('gives every jar, and each photo with its jar and day', async () => {
    const test = await temporaryDesk();
    const { trial, a, b } = await startedJars(test);
    test.clock.move(90);
    await test.ask('photos:add', { jar: b, image: base64(onePixelPng), at: '2026-05-03T09:00:00.000Z' });
    await test.ask('photos:add', { jar: a, image: base64(onePixelJpeg), at: '2026-05-01T08:30:00.000Z' });
    const shown = await test.ask('photos:ofTrial', { trial });
    expect(shown.jars.map(({ label }) => label)).toHaveLength(3);
    expect(shown.photos).toMatchObject([
      { jar: a, day: 0 },
      { jar: b, day: 2 },
    ]);
  });
});
