import type { Page } from '@playwright/test';
import { readQr } from '../renderer/parts/qr-code/read-qr.ts';
import {
  daysTrial,
  expectNothingCutOff,
  openTasting,
  printed,
  readOnPaper,
  sixLevels,
  sixPulled,
} from './paper-kitchen.ts';
import { expect, test } from './workbench.ts';

const a4 = [210, 297];
const letter = [216, 279.5];
/** The modules of a drawn code, without its margin. */
async function drawnModules(page: Page, name: string): Promise<boolean[][]> {
  const code = page.getByRole('img', { name });
  const size = Number((await code.getAttribute('viewBox'))?.split(' ')[2]) - 8;
  const path = (await code.locator('path').getAttribute('d')) ?? '';
  const dark = new Set([...path.matchAll(/M(\d+) (\d+)/g)].map(([, x, y]) => `${Number(x) - 4} ${Number(y) - 4}`));
  return Array.from({ length: size }, (_, y) => Array.from({ length: size }, (_unused, x) => dark.has(`${x} ${y}`)));
}

/** Where a label lies on its sheet, mm. */
async function placeOf(page: Page, number: number): Promise<number[]> {
  await page.emulateMedia({ media: 'print' });
  const sheet = await page.locator('.paper-sheet').first().boundingBox();
  const label = await page.locator('.label-cell').nth(number).boundingBox();
  await page.emulateMedia({ media: null });
  if (sheet === null || label === null) throw new Error('no label');
  return [label.x - sheet.x, label.y - sheet.y, label.width, label.height].map(
    (pixels) => Math.round((pixels / 96) * 25.4 * 10) / 10,
  );
}

test('jar labels: found from the jars, each with its letter, question, level, times, caution and code', async ({
  workbench,
}) => {
  const { page } = workbench;
  const six = await sixLevels(workbench);
  await workbench.open(`/trials/${six.trial}`);
  await page.getByRole('link', { name: 'Print labels' }).click();
  await expect(page.getByText('6 labels on 1 sheet.')).toBeVisible();
  const words = await readOnPaper(page);
  for (const { label } of six.jars) expect(words).toMatch(new RegExp(`^${label}$`, 'm'));
  for (const needed of [
    'How many days should raspberry and vanilla stand before it turns?',
    '2 days (control)',
    'Start Mon 2 Mar, 09:00',
    'Pull Sun 8 Mar, 09:00',
    'Closed: gas builds up. Keep it away from faces, open with care.',
  ]) {
    expect(words).toContain(needed);
  }
  expect(words).not.toContain('Start at label number');
  expect(words).not.toContain('Undo');
  for (const { id, label } of six.jars) {
    expect(readQr(await drawnModules(page, `Code of jar ${label}`)).text).toBe(id);
  }
  await expectNothingCutOff(page, '.jar-label');
  expect(await printed(page)).toEqual({ pages: 1, sizes_mm: [a4] });
  expect(await placeOf(page, 0)).toEqual([9, 14.5, 64, 33.5]);
  expect(await placeOf(page, 4)).toEqual([73, 48, 64, 33.5]);
  // One picture, of the system that the stored one was made on; the id changes with every kitchen.
  if (process.platform === 'linux') {
    await expect(page.locator('.label-cell').nth(1)).toHaveScreenshot('jar-label.png', {
      mask: [page.locator('.qr-code')],
      maxDiffPixelRatio: 0.03,
    });
  }

  await page.getByLabel('Print on').selectOption('letter');
  await page.getByLabel('Labels on the sheet').selectOption('2×7');
  await page.getByLabel('Start at label number').fill('11');
  await expect(page.getByText('6 labels on 2 sheets.')).toBeVisible();
  // The eleventh of two columns is the first of the sixth row: 0.25 in from the left, 0.6 + 5 · 1.4 in from the top.
  expect(await placeOf(page, 0)).toEqual([6.4, 193, 101.6, 35.6]);
  expect(await printed(page)).toEqual({ pages: 2, sizes_mm: [letter, letter] });

  await page.getByLabel('Print on').selectOption('strip');
  await page.getByLabel('Measured in').selectOption('mm');
  await page.getByLabel('Width of a label, mm').fill('70');
  await page.getByLabel('Height of a label, mm').fill('30');
  await page.getByRole('checkbox', { name: 'A: 1 day' }).uncheck();
  await expectNothingCutOff(page, '.jar-label');
  expect(await printed(page)).toEqual({ pages: 5, sizes_mm: Array.from({ length: 5 }, () => [70, 30]) });
});

test('what can’t be printed is said at its field: no columns, a label larger than the paper, no jars', async ({
  sample,
}) => {
  const { page } = sample;
  await sample.open(`/trials/${await daysTrial(sample)}/labels`);
  const print = page.getByRole('button', { name: 'Print labels' });
  await expect(print).toBeEnabled();
  await page.getByLabel('Labels on the sheet').selectOption('own');
  const columns = page.getByRole('textbox', { name: 'Labels beside each other' });
  await columns.fill('0');
  await expect(columns).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText('Write a whole number from 1 to 20.')).toBeVisible();
  await expect(print).toBeDisabled();
  await expect(page.locator('.paper-sheet')).toHaveCount(0);
  await columns.fill('1');
  const width = page.getByRole('textbox', { name: 'Width of a label' });
  await width.fill('250');
  await expect(width).toHaveAccessibleDescription(
    'A label 250 mm wide needs 259 mm with its margin; the paper is 210 mm wide.',
  );
  await width.fill('20');
  await expect(width).toHaveAccessibleDescription(/at least 44\smm wide and 24\smm high/);
  await width.fill('64');
  await expect(print).toBeEnabled();
  await page.getByRole('button', { name: 'None' }).click();
  await expect(page.getByRole('group', { name: 'Which jars' })).toHaveAccessibleDescription('Tick at least one jar.');
  await expect(print).toBeDisabled();
  await page.getByRole('button', { name: 'All' }).click();
  await expect(print).toBeEnabled();
});

test('stickers: as many as cups, in serving order or by code, and no jar is named', async ({ workbench }) => {
  const { page, ask } = workbench;
  const six = await sixPulled(workbench);
  const { tasting } = await ask('tastings:build', {
    trial: six.trial,
    name: 'Saturday round',
    samples: six.jars.slice(0, 3).map(({ id }) => ({ jar: id })),
    tasters: [...six.tasters],
    replicates: 2,
  });
  const { orders } = await ask('tastings:open', { tasting });
  const served = orders.flatMap(({ sittings }) => sittings.flatMap(({ codes }) => codes));
  expect(served).toHaveLength(6 * 3 * 2);
  await workbench.open(`/tastings/${tasting}`);
  await page.getByRole('link', { name: 'Print stickers' }).click();
  await expect(page.getByText('6 tasters × 3 samples × 2 servings: 36 cups.')).toBeVisible();
  const onPaper = async () => (await readOnPaper(page)).split(/\s+/).filter((word) => word !== '');
  expect(await onPaper()).toEqual(served);
  await page.getByLabel('In which order').selectOption('code');
  expect(await onPaper()).toEqual(served.toSorted());
  await page.getByLabel('For whom').selectOption({ label: 'Ben' });
  expect(await onPaper()).toHaveLength(6);
  await expectNothingCutOff(page, '.label-cell');
  expect(await printed(page)).toEqual({ pages: 1, sizes_mm: [a4] });
});

test('pen sheets: a page for each taster in their order, every scale with its end words, no jar named', async ({
  sample,
}) => {
  const { page, ask } = sample;
  const tasting = await openTasting(sample);
  const whole = await ask('tastings:open', { tasting });
  await sample.open(`/tastings/${tasting}`);
  await page.getByRole('link', { name: 'Print sheets' }).click();
  await expect(page.getByText(`${whole.tasters} tasters, one page each.`)).toBeVisible();
  for (const { name, sittings } of whole.orders) {
    const sheet = page.getByRole('article', { name: `Sheet of ${name}`, exact: true });
    await expect(sheet.locator('h3')).toHaveText(sittings.flatMap(({ codes }) => codes));
    for (const { lowWord, highWord } of whole.attributes) {
      await expect(sheet.getByText(lowWord ?? '', { exact: true }).first()).toBeVisible();
      await expect(sheet.getByText(highWord ?? '', { exact: true }).first()).toBeVisible();
    }
  }
  const words = await readOnPaper(page);
  expect(words).toContain('In each line cross the box that fits');
  const { sampleList } = await ask('tastings:pour', { tasting });
  for (const { jar } of sampleList) expect(words).not.toContain(jar?.level ?? '–');
  const pages = whole.tasters;
  expect(await printed(page)).toEqual({ pages, sizes_mm: Array.from({ length: pages }, () => a4) });
  await page.getByLabel('Paper').selectOption('letter');
  expect(await printed(page)).toEqual({ pages, sizes_mm: Array.from({ length: pages }, () => letter) });
});

test('pen sheets: places for a ranked tasting, five steps for just-about-right, a table where boxes find no room', async ({
  workbench,
}) => {
  const { page, ask } = workbench;
  const { trial, jars, tasters } = await sixPulled(workbench);
  const samples = jars.map(({ id }) => ({ jar: id }));
  const two = tasters.slice(0, 2);
  const ranked = await ask('tastings:build', { trial, name: 'Order', samples, tasters: two, ranked: true });
  await workbench.open(`/tastings/${ranked.tasting}/pen-sheets`);
  const first = page.getByRole('article', { name: 'Sheet of Ana' });
  await expect(first.getByText('1st, the best')).toBeVisible();
  await expect(first.getByText('6th')).toBeVisible();
  expect((await printed(page)).pages).toBe(2);

  const steps = await ask('tastings:build', {
    trial,
    name: 'Steps',
    samples,
    tasters: two,
    attributes: [{ name: 'sweetness', kind: 'just-about-right', low: -2, high: 2 }],
  });
  await workbench.open(`/tastings/${steps.tasting}/pen-sheets`);
  await expect(first.locator('.pen-boxes').first().locator('span')).toHaveText(['−−', '−', 'right', '+', '++']);
  await expect(first.getByText('much too little')).toHaveCount(6);
  await expect(first.getByText('much too much')).toHaveCount(6);
  expect((await printed(page)).pages).toBe(2);

  const twice = await ask('tastings:build', { trial, name: 'Twice', samples, tasters: two, replicates: 2 });
  await workbench.open(`/tastings/${twice.tasting}/pen-sheets`);
  await expect(first.getByText('0 flat, 10 very fizzy')).toBeVisible();
  await expect(first.getByText('Sitting 2. Take a break before it.')).toBeVisible();
  await expect(first.locator('tbody tr')).toHaveCount(12);
  for (const paper of ['a4', 'letter']) {
    await page.getByLabel('Paper').selectOption(paper);
    expect((await printed(page)).pages, paper).toBe(2);
  }
});

test('a bottle label: ingredients by weight with allergens marked, copied as text, printed as labels', async ({
  sample,
}) => {
  const { page, ask } = sample;
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  const [recipe] = (await ask('recipes:list', {})).recipes;
  await sample.open(`/house-recipes/${recipe?.id}`);
  await page.getByRole('link', { name: 'Bottle label' }).click();
  await expect(page.getByText(/what a label must say is local. Ask your local authority/)).toBeVisible();
  await page.getByLabel('What the base is made of').fill('green tea kombucha (water, sugar, tea, culture, BARLEY)');
  await page.getByLabel('In the bottle, mL').fill('330');
  await page.getByLabel('Best before').fill('2026-05-04');
  await page.getByLabel('Lot').fill('L-7');
  await page.getByRole('button', { name: 'Copy as text' }).click();
  await expect(page.getByText('The label’s words are on the clipboard.')).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(
    [
      'Pear and ginger, three days',
      'Ingredients: green tea kombucha (water, sugar, tea, culture, BARLEY), pears, ginger root.',
      'Contains: BARLEY.',
      'Keep cold.',
      'Live drink: pressure builds up. Open with care, slowly, away from your face.',
      'May hold more than 0.5 % vol alcohol.',
      'Best before: 4 May 2026',
      'Lot: L-7',
      '330 mL',
    ].join('\n'),
  );
  await expect(page.locator('.bottle-label').first().locator('b')).toHaveText(['BARLEY', 'barley']);
  await expectNothingCutOff(page, '.bottle-label');
  await page.getByLabel('How many labels').fill('9');
  expect(await printed(page)).toEqual({ pages: 2, sizes_mm: [a4, a4] });
  await page.getByLabel('How many labels').fill('0');
  await expect(page.getByText('Write a whole number from 1 to 500.')).toBeVisible();
  await page.getByLabel('How many labels').fill('1');
  await page.getByLabel('What the base is made of').fill('');
  await expect(page.getByText(/it is most of what is in the bottle/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Print bottle labels' })).toBeDisabled();
  await page.getByLabel('What the base is made of').fill('many things, '.repeat(30));
  await page.getByLabel('Name of the drink').fill('A wide and wordy name '.repeat(9));
  await page.getByLabel('Labels on the sheet').selectOption('own');
  await page.getByLabel('Width of a label, mm').fill('70');
  await page.getByLabel('Height of a label, mm').fill('38');
  await expect(page.getByText('These words do not fit this label readably')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Print bottle labels' })).toBeDisabled();
});
