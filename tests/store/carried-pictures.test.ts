import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { daysPlan } from '../desk/example-trial.ts';
import { onePixelJpeg, onePixelPng, programHead } from '../desk/small-pictures.ts';
import { type TestDesk, temporaryDesk, temporaryFolder } from './temporary-kitchen.ts';

const base64 = (bytes: Buffer) => bytes.toString('base64');
const photosOf = ({ kitchen }: TestDesk) => readdirSync(`${kitchen.file}.photos`).toSorted();

/** A trial with a photo of each of two jars. */
async function photographed() {
  const test = await temporaryDesk();
  const { trial, jars } = await test.ask('trials:save', daysPlan);
  await test.ask('jars:start', { jars: jars.map(({ id }) => id), at: '2026-05-01T08:00:00.000Z' });
  test.clock.move(30);
  const [a = '', b = ''] = jars.map(({ id }) => id);
  await test.ask('photos:add', { jar: a, image: base64(onePixelJpeg), note: 'froth' });
  await test.ask('photos:add', { jar: b, image: base64(onePixelPng) });
  return { test, trial, a };
}

describe('photos in a carried file', () => {
  it('go along with a trial, and are the same pictures in another kitchen', async () => {
    const { test, trial, a } = await photographed();
    const { text, pictures, picturesLeft } = await test.ask('data:trialFile', { trial });
    expect({ pictures, picturesLeft }).toEqual({ pictures: 2, picturesLeft: 0 });
    const other = await temporaryDesk();
    expect(await other.ask('data:takeIn', { text, preview: true })).toMatchObject({ pictures: 2, taken: false });
    expect(await other.ask('data:takeIn', { text })).toMatchObject({ pictures: 2, taken: true });
    expect(photosOf(other)).toEqual(photosOf(test));
    const [photo] = (await other.ask('photos:ofJar', { jar: a })).photos;
    expect(photo).toMatchObject({ note: 'froth', file: 'here' });
    expect((await other.ask('photos:read', { photo: photo?.id ?? '' })).image).toBe(base64(onePixelJpeg));
    expect(await other.ask('store:check', {})).toEqual({ ok: true, problems: [] });
  });

  it('may be more than a day brings in a year', async () => {
    const { test, trial, a } = await photographed();
    for (let number = 0; number < 250; number += 1) {
      const another = Buffer.concat([onePixelJpeg, Buffer.from(String(number))]);
      await test.ask('photos:add', { jar: a, image: base64(another) });
    }
    const { text, pictures } = await test.ask('data:trialFile', { trial });
    expect(pictures).toBe(252);
    const other = await temporaryDesk();
    expect(await other.ask('data:takeIn', { text })).toMatchObject({ pictures: 252, taken: true });
    expect(photosOf(other)).toEqual(photosOf(test));
  });

  it('that are missing at home are counted, and said where they are taken in', async () => {
    const { test, trial, a } = await photographed();
    const [name = ''] = photosOf(test).filter((each) => each.endsWith('.jpg'));
    writeFileSync(join(`${test.kitchen.file}.photos`, name), 'altered');
    const { text, pictures, picturesLeft } = await test.ask('data:trialFile', { trial });
    expect({ pictures, picturesLeft }).toEqual({ pictures: 1, picturesLeft: 1 });
    const other = await temporaryDesk();
    await other.ask('data:takeIn', { text });
    expect((await other.ask('photos:ofJar', { jar: a })).photos).toMatchObject([{ file: 'missing' }]);
  });

  it.each([
    ['another picture', base64(onePixelPng)],
    ['a program', base64(programHead)],
    ['no base64', '<svg onload=1>'],
  ])('are held against their hash and kind: %s is refused, and nothing is taken', async (_, image) => {
    const { test, trial } = await photographed();
    const { text } = await test.ask('data:trialFile', { trial });
    const file = JSON.parse(text) as { pictures: Record<string, string> };
    const [jpeg] = Object.entries(file.pictures).find(([, picture]) => picture === base64(onePixelJpeg)) ?? [''];
    file.pictures[jpeg] = image;
    const other = await temporaryDesk();
    expect(await other.fail('data:takeIn', { text: JSON.stringify(file) })).toMatchObject({
      code: 'invalid-input',
      path: ['text', 'pictures', jpeg],
    });
    expect((await other.ask('trials:list', {})).trials).toEqual([]);
  });

  it('lie beside an export’s rows, and come in with them from there', async () => {
    const { test } = await photographed();
    const to = join(temporaryFolder(), 'out');
    const { files } = await test.ask('data:export', { to });
    expect(files.find(({ name }) => name === 'photos')).toEqual({
      name: 'photos',
      rows: 2,
      bytes: onePixelJpeg.length + onePixelPng.length,
    });
    expect(readdirSync(join(to, 'photos')).toSorted()).toEqual(photosOf(test));
    const other = await temporaryDesk();
    expect(await other.ask('data:takeIn', { file: join(to, 'kitchen.json') })).toMatchObject({ pictures: 2 });
    expect(photosOf(other)).toEqual(photosOf(test));
    // A file of that name that is another picture is refused.
    const [name = ''] = photosOf(test);
    const elsewhere = join(temporaryFolder(), 'in');
    mkdirSync(join(elsewhere, 'photos'), { recursive: true });
    writeFileSync(join(elsewhere, 'kitchen.json'), readFileSync(join(to, 'kitchen.json')));
    writeFileSync(join(elsewhere, 'photos', name), programHead);
    const third = await temporaryDesk();
    expect(await third.fail('data:takeIn', { file: join(elsewhere, 'kitchen.json') })).toMatchObject({
      code: 'invalid-input',
    });
  });
});
