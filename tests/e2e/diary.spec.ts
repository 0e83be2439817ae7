import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { daysPlan } from '#tests/desk/example-trial.ts';
import { heicHead, jpegWithPlace, onePixelJpeg, programHead } from '#tests/desk/small-pictures.ts';
import { expectAccessible, expectNoSidewaysScroll, tabTo } from './looked-over.ts';
import { expect, test, type Workbench } from './workbench.ts';

const hour = 3_600_000;

/** A days trial whose jars stand since two days and a half. */
async function standingTrial(workbench: Workbench) {
  const start = new Date(Date.now() - 60 * hour).toISOString();
  const { trial, jars } = await workbench.ask('trials:save', { ...daysPlan, start });
  await workbench.ask('jars:start', { jars: jars.map(({ id }) => id), at: start });
  const [a, b] = jars;
  return { trial, a: a?.id ?? '', b: b?.id ?? '', labels: jars.map(({ label }) => label) };
}

/** A picture with something on it, as a camera would send it: JPEG with an EXIF part that tells its place. */
async function cameraPicture(page: Page, width: number, height: number, hue: number): Promise<Buffer> {
  const base64 = await page.evaluate(
    async ([width, height, hue]) => {
      const canvas = new OffscreenCanvas(width, height);
      const pen = canvas.getContext('2d');
      if (pen === null) throw new Error('no canvas');
      pen.fillStyle = `hsl(${hue} 60% 55%)`;
      pen.fillRect(0, 0, width, height);
      pen.fillStyle = 'white';
      pen.fillRect(width / 4, height / 4, width / 2, height / 8);
      const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg' })).arrayBuffer());
      return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
    },
    [width, height, hue] as const,
  );
  return jpegWithPlace(Buffer.from(base64, 'base64'));
}

/** Lets files fall on the place for photos, or be pasted into the page. */
async function bring(page: Page, how: 'drop' | 'paste', name: string, type: string, bytes: Buffer): Promise<void> {
  await page.evaluate(
    ([how, name, type, base64]) => {
      const carried = new DataTransfer();
      carried.items.add(new File([Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))], name, { type }));
      const options = { bubbles: true, cancelable: true };
      if (how === 'paste') window.dispatchEvent(new ClipboardEvent('paste', { ...options, clipboardData: carried }));
      else {
        document
          .querySelector('.photo-entry')
          ?.dispatchEvent(new DragEvent('drop', { ...options, dataTransfer: carried }));
      }
    },
    [how, name, type, bytes.toString('base64')] as const,
  );
}

const photosOf = (page: Page) => page.getByRole('list', { name: 'Diary' }).getByRole('button', { name: /^Show large/ });

test('photos come by file, by drop and by paste; what is kept is smaller and tells no place', async ({ workbench }) => {
  const { page } = workbench;
  const { a } = await standingTrial(workbench);
  await workbench.open(`/jars/${a}`);
  const large = await cameraPicture(page, 2400, 1800, 20);
  expect(large.includes('GPSLatitude')).toBe(true);
  await page.locator('input[type=file]').setInputFiles({ name: 'a.jpg', mimeType: 'image/jpeg', buffer: large });
  await expect(photosOf(page)).toHaveCount(1);
  await bring(page, 'drop', 'b.jpg', 'image/jpeg', await cameraPicture(page, 600, 800, 120));
  await expect(photosOf(page)).toHaveCount(2);
  expect(new URL(page.url()).hash).toBe(`#/jars/${a}`);
  await bring(page, 'paste', '', 'image/png', await cameraPicture(page, 300, 200, 240));
  await expect(photosOf(page)).toHaveCount(3);
  for (const photo of await photosOf(page).all()) {
    await photo.scrollIntoViewIfNeeded();
    await expect(photo.getByRole('img')).toHaveJSProperty('complete', true);
    expect(await photo.getByRole('img').evaluate((image: HTMLImageElement) => image.naturalWidth)).toBeGreaterThan(0);
  }

  const { photos } = await workbench.ask('photos:ofJar', { jar: a });
  expect(photos.map(({ width, height, format }) => [format, width, height])).toEqual([
    ['jpeg', 1600, 1200],
    ['jpeg', 600, 800],
    ['jpeg', 300, 200],
  ]);
  const folder = `${workbench.store}.photos`;
  expect(readdirSync(folder)).toHaveLength(3);
  for (const name of readdirSync(folder)) {
    const bytes = readFileSync(join(folder, name));
    expect(bytes.includes('Exif')).toBe(false);
    expect(bytes.includes('GPSLatitude')).toBe(false);
  }
});

test('readings, sightings, sips and photos stand in one line of time, the newest first', async ({ workbench }) => {
  const { page } = workbench;
  const { a } = await standingTrial(workbench);
  const at = (hours: number) => new Date(Date.now() - hours * hour).toISOString();
  await workbench.ask('photos:add', { jar: a, image: onePixelJpeg.toString('base64'), at: at(20) });
  await workbench.ask('sips:log', { jar: a, tang: 4, liking: 7, at: at(2) });
  await workbench.ask('readings:log', { jar: a, brix: 4.2, at: at(50) });
  await workbench.ask('sightings:log', { jar: a, what: 'froth', at: at(30) });
  await workbench.open(`/jars/${a}`);
  await expect(page.getByText('Day 2, planned 1', { exact: true })).toBeVisible();
  const lines = page.getByRole('list', { name: 'Diary' }).getByRole('listitem');
  await expect(lines).toHaveText([/A sip: tang 4, liking 7.*Day 2/, /Day 1/, /froth.*Day 1/, /4\.2\s°Bx.*Day 0/]);
  await expect(lines.nth(1).getByRole('button', { name: /^Show large/ })).toBeVisible();
});

test('a renamed program, a HEIC picture and a torn one are refused in plain words; the others are added still', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { a } = await standingTrial(workbench);
  await workbench.open(`/jars/${a}`);
  await page.locator('input[type=file]').setInputFiles([
    { name: 'holiday.jpg', mimeType: 'image/jpeg', buffer: programHead },
    { name: 'IMG_1.heic', mimeType: 'image/heic', buffer: heicHead },
    { name: 'torn.jpg', mimeType: 'image/jpeg', buffer: onePixelJpeg.subarray(0, 60) },
    { name: 'good.jpg', mimeType: 'image/jpeg', buffer: onePixelJpeg },
  ]);
  const faults = page.getByRole('region', { name: 'Add photos' }).getByRole('alert');
  await expect(faults).toHaveText([
    /^holiday\.jpg: This is a program/,
    /^IMG_1\.heic: This is a HEIC picture.*Save or send it as JPEG/,
    /^torn\.jpg: This picture can’t be read/,
  ]);
  await expect(photosOf(page)).toHaveCount(1);
});

test('a picture of 60 megapixels is made smaller, and the page stays awake meanwhile', async ({ workbench }) => {
  test.slow();
  const { page } = workbench;
  const { a } = await standingTrial(workbench);
  await workbench.open(`/jars/${a}`);
  const huge = await cameraPicture(page, 9000, 6700, 300);
  await page.evaluate(() => {
    const watch = { last: performance.now(), longest: 0 };
    Object.assign(window, { watch });
    setInterval(() => {
      watch.longest = Math.max(watch.longest, performance.now() - watch.last);
      watch.last = performance.now();
    }, 20);
  });
  await page.locator('input[type=file]').setInputFiles({ name: 'huge.jpg', mimeType: 'image/jpeg', buffer: huge });
  await expect(photosOf(page)).toHaveCount(1, { timeout: 60_000 });
  const longest_ms = await page.evaluate(() => (window as unknown as { watch: { longest: number } }).watch.longest);
  test.info().annotations.push({ type: 'longest pause, ms', description: String(Math.round(longest_ms)) });
  expect(longest_ms).toBeLessThan(1500);
  const { photos } = await workbench.ask('photos:ofJar', { jar: a });
  // 1600 × 6700 / 9000 = 1191.1; browsers round up or down.
  expect(photos).toMatchObject([{ width: 1600, height: expect.any(Number) }]);
  expect(Math.abs((photos[0]?.height ?? 0) - 1191.1)).toBeLessThan(1);
});

test('the strip shows all jars by day, each picture in words, large by keyboard alone', async ({ workbench }) => {
  test.slow();
  const { page } = workbench;
  const { trial, a, b, labels } = await standingTrial(workbench);
  await workbench.open(`/trials/${trial}`);
  await page.getByRole('link', { name: 'Photos by day' }).click();
  await expect(page.getByRole('heading', { name: 'No photos yet' })).toBeVisible();
  for (const [place, jar] of [a, a, b].entries()) {
    const image = (await cameraPicture(page, 400, 300, place * 90)).toString('base64');
    const at = new Date(Date.now() - (place === 1 ? 2 : 50) * hour).toISOString();
    await workbench.ask('photos:add', { jar, image, at });
  }
  const strip = page.getByRole('region', { name: 'Photos by day' });
  await expect(strip.getByRole('columnheader')).toHaveText(['Jar', 'Day 0', 'Day 2']);
  await expect(strip.getByRole('img')).toHaveCount(3);
  await tabTo(page, 'button', `Show large: Jar ${labels[0]}, 1 day, day 2`);
  await page.keyboard.press('Enter');
  const shown = page.getByRole('dialog', { name: `Jar ${labels[0]}, 1 day, day 2` });
  await expect(shown.getByRole('img')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(shown).toBeHidden();

  for (const screen of [`/trials/${trial}/photos`, `/jars/${a}`]) {
    await page.setViewportSize({ width: 1280, height: 860 });
    await workbench.open(screen);
    await expect(page.getByRole('button', { name: /^Show large/ }).first()).toBeVisible();
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
  }
});
