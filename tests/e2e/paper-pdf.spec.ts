import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { daysTrial, openTasting } from './paper-kitchen.ts';
import { type ReadPdf, readPdf, squeezed } from './read-pdf.ts';
import { expect, test } from './workbench.ts';

// Each paper is printed as the print window does it, and what the file holds is read back.

const a4 = [210, 297];
const letter = [216, 279.5];

/** What poppler reads of the file, where it is installed; null where it is not. */
function byPoppler(pdf: Buffer): string | null {
  const folder = mkdtempSync(join(tmpdir(), 'sidejar-pdf-'));
  try {
    writeFileSync(join(folder, 'paper.pdf'), pdf);
    return execFileSync('pdftotext', ['-raw', join(folder, 'paper.pdf'), '-'], { encoding: 'utf8' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Prints the page and reads the file; every needed word must stand in it, for another reader too. */
async function printedWith(page: Page, needed: readonly string[]): Promise<ReadPdf & { readonly all: string }> {
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  const read = readPdf(pdf);
  const all = squeezed(read.pages.join(' '));
  const poppler = byPoppler(pdf);
  for (const words of needed) {
    expect(all, words).toContain(squeezed(words));
    if (poppler !== null) expect(squeezed(poppler), `${words}, read by poppler`).toContain(squeezed(words));
  }
  return { ...read, all };
}

const times = <Value>(count: number, value: Value) => Array.from({ length: count }, () => value);

test('jar labels on A4, on letter and on a strip: letter, level, start and pull in the file, nothing of the screen', async ({
  sample,
}) => {
  const { page, ask } = sample;
  const trial = await daysTrial(sample);
  const { jarsWhole, question } = await ask('trials:open', { trial });
  await sample.open(`/trials/${trial}/labels`);
  await expect(page.getByText(/^4 labels on 1 sheet/)).toBeVisible();
  const needed = ['2 days (control)', 'Start', 'Pull', ...jarsWhole.map(({ levelName }) => levelName)];
  const sheet = await printedWith(page, needed);
  expect(sheet.sizes_mm).toEqual([a4]);
  expect(sheet.all.split(squeezed(question).slice(0, 12)).length - 1).toBeGreaterThanOrEqual(4);
  for (const unwanted of ['Print labels', 'Undo', 'House recipes']) expect(sheet.all).not.toContain(squeezed(unwanted));
  await page.getByLabel('Print on').selectOption('letter');
  expect((await printedWith(page, needed)).sizes_mm).toEqual([letter]);
  await page.getByLabel('Print on').selectOption('strip');
  const strip = await printedWith(page, needed);
  expect(strip.sizes_mm).toEqual(times(4, [62, 36]));
});

test('stickers and pen sheets: codes in their order in the file, no jar’s level', async ({ sample }) => {
  const { page, ask } = sample;
  const tasting = await openTasting(sample);
  const { orders, attributes } = await ask('tastings:open', { tasting });
  const { sampleList } = await ask('tastings:pour', { tasting });
  await sample.open(`/tastings/${tasting}/stickers`);
  await expect(page.locator('.sticker').first()).toBeVisible();
  const codes = orders.flatMap(({ sittings }) => sittings.flatMap((sitting) => sitting.codes));
  const stickers = await printedWith(page, codes);
  expect(stickers.all).toBe(codes.join(''));
  expect(stickers.sizes_mm[0]).toEqual(a4);

  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/tastings/${tasting}/pen-sheets`);
  await expect(page.locator('.pen-sheet')).toHaveCount(orders.length);
  const sheets = await printedWith(
    page,
    attributes.map(({ name }) => name),
  );
  expect(sheets.sizes_mm).toEqual(times(orders.length, a4));
  orders.forEach(({ name, sittings }, place) => {
    const own = squeezed(sheets.pages[place] ?? '');
    expect(own).toContain(squeezed(name));
    const places = sittings.flatMap((sitting) => sitting.codes).map((code) => own.indexOf(code));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places).not.toContain(-1);
    for (const { jar } of sampleList) expect(own).not.toContain(squeezed(jar?.level ?? '–'));
  });
});

test('the recipe card: name, amounts, cautions and where it comes from', async ({ sample }) => {
  const { page, ask } = sample;
  const [recipe] = (await ask('recipes:list', {})).recipes;
  await sample.open(`/house-recipes/${recipe?.id}`);
  await expect(page.getByRole('heading', { level: 1 })).toContainText(recipe?.name ?? '');
  const card = await printedWith(page, [
    recipe?.name ?? 'no recipe',
    '80 g pears',
    '6 g ginger',
    '0.5 % vol',
    'Where it comes from',
  ]);
  expect(card.pages.length).toBeLessThanOrEqual(2);
  expect(card.all).not.toContain(squeezed('House recipesBases'));
});

test('the trial’s report: one page of A4 or letter with the answer, its doubt and the means', async ({ sample }) => {
  const { page, ask } = sample;
  const trial = await daysTrial(sample);
  const { headline } = await ask('findings:read', { trial });
  await sample.open(`/trials/${trial}/report`);
  await expect(page.locator('.report .recharts-surface')).toHaveCount(6, { timeout: 20_000 });
  const needed = [
    headline?.sentence ?? 'no headline',
    ...(headline?.doubts ?? ['no doubts']),
    'Best liked: 3 days, 7.4',
    'days',
  ];
  for (const [paper, size] of [
    ['a4', a4],
    ['letter', letter],
  ] as const) {
    await page.getByLabel('Paper').selectOption(paper);
    expect((await printedWith(page, needed)).sizes_mm).toEqual([size]);
  }
});

test('the bottle label: ingredients in order of weight, allergens, keep cold, best before, alcohol; the screen says that the law is local', async ({
  sample,
}) => {
  const { page, ask } = sample;
  const [recipe] = (await ask('recipes:list', {})).recipes;
  await sample.open(`/house-recipes/${recipe?.id}/label`);
  await expect(page.getByText(/what a label must say is local. Ask your local authority/)).toBeVisible();
  await page.getByLabel('What the base is made of').fill('green tea kombucha (water, sugar, tea, BARLEY)');
  await page.getByLabel('Best before').fill('2026-05-04');
  await page.getByLabel('How many labels').fill('2');
  const label = await printedWith(page, [
    'Ingredients: green tea kombucha (water, sugar, tea, BARLEY), pears, ginger root.',
    'Keep cold.',
    'May hold more than 0.5 % vol alcohol.',
    '4 May 2026',
  ]);
  expect(label.sizes_mm).toEqual([a4]);
  expect(label.all.toLowerCase()).toContain('contains:barley');
});

test('how things were printed is remembered for the next time, for each kind of label and for paper', async ({
  sample,
}) => {
  const { page } = sample;
  const trial = await daysTrial(sample);
  await sample.open(`/trials/${trial}/labels`);
  await page.getByLabel('Print on').selectOption('letter');
  await page.getByLabel('Labels on the sheet').selectOption('2×7');
  await page.getByLabel('Start at label number').fill('5');
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/trials/${trial}/report`);
  await expect(page.locator('.report .recharts-surface').first()).toBeVisible({ timeout: 20_000 });
  await page.getByLabel('Paper').selectOption('letter');
  await expect.poll(async () => (await sample.ask('drafts:open', { name: 'print paper' })).draft?.body).toBe('letter');

  await sample.open(`/trials/${trial}/labels`);
  await expect(page.getByLabel('Print on')).toHaveValue('letter');
  await expect(page.getByLabel('Labels on the sheet')).toHaveValue('2×7');
  // A new sheet is full again.
  await expect(page.getByLabel('Start at label number')).toHaveValue('1');
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/trials/${trial}/report`);
  await expect(page.getByLabel('Paper')).toHaveValue('letter');
  await sample.open(`/tastings/${await openTasting(sample)}/stickers`);
  await expect(page.getByLabel('Print on')).toHaveValue('a4');
});
