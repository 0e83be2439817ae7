import { readFileSync } from 'node:fs';
import type { Download, Page } from '@playwright/test';
import Papa from 'papaparse';
import { expectAccessible, expectNoSidewaysScroll, tabTo } from './looked-over.ts';
import { pulledTrial, taste } from './tasted-trial.ts';
import { expect, test, type Workbench } from './workbench.ts';

async function trialOf({ ask }: Workbench, words: string): Promise<string> {
  const { trials } = await ask('trials:list', {});
  return trials.find(({ question }) => question.includes(words))?.id ?? '';
}

async function contentOf(download: Download): Promise<Buffer> {
  return readFileSync(await download.path());
}

async function downloadBy(page: Page, act: () => Promise<void>): Promise<Download> {
  const [download] = await Promise.all([page.waitForEvent('download'), act()]);
  return download;
}

function readCsv(content: Buffer): Record<string, string>[] {
  const text = content.toString('utf8');
  expect(text.startsWith('\uFEFF')).toBe(true);
  return Papa.parse<Record<string, string>>(text.slice(1), { header: true, skipEmptyLines: true }).data;
}

test('the answer comes first, then liking with its best level, then the rest, each with its table', async ({
  sample,
}) => {
  const { page } = sample;
  const trial = await trialOf(sample, 'pear and ginger');
  await sample.open(`/trials/${trial}/findings`);
  const found = await sample.ask('findings:read', { trial });
  const answer = page.getByRole('region', { name: 'The answer' });
  await expect(answer.getByText(found.headline?.sentence ?? 'nothing', { exact: true })).toBeVisible();
  expect(found.headline?.sentence).toMatch(/^“3 days” was liked best/);
  await expect(answer.getByText(/One jar for each level: this speaks of these jars/)).toBeVisible();
  const size = await answer.locator('.headline-sentence').evaluate((element) => getComputedStyle(element).fontSize);
  expect(Number.parseFloat(size)).toBeGreaterThanOrEqual(32);

  const figures = page.getByRole('figure');
  await expect(figures.first().getByRole('heading')).toContainText('Liking');
  await expect(figures.first().getByText(/^highest near \d\.\d$/)).toBeVisible();
  const liking = found.analysis?.attributes.find(({ attribute }) => attribute === 'liking');
  const best = liking?.means.find(({ sample: level }) => level === '3 days');
  const interval = `${best?.low?.toFixed(1)} to ${best?.high?.toFixed(1)}`;
  await expect(
    page.getByRole('row', { name: `3 days (best) ${best?.n} ${best?.mean?.toFixed(1)} ${interval} ${best?.letters}` }),
  ).toBeVisible();
  await expect(page.getByText('Very sure', { exact: false })).toBeVisible();
});

test('the maker’s sips stand apart: crosses of their own, a line of the key, a table, and no part in any mean', async ({
  sample,
}) => {
  const { page } = sample;
  const trial = await trialOf(sample, 'pear and ginger');
  const before = await sample.ask('findings:read', { trial });
  const { sips } = await sample.ask('sips:byTrial', { trial });
  const { jarsWhole } = await sample.ask('trials:open', { trial });
  await sample.open(`/trials/${trial}/findings`);
  const tang = page.getByRole('figure').filter({ has: page.getByRole('heading', { name: /^Tang/ }) });
  await expect(tang.locator('.chart-sip')).toHaveCount(sips.length);
  await expect(page.getByText('your own sips, not blind and never counted in the means')).toBeVisible();
  await tang.getByText('Tang as a table').click();
  await expect(tang.getByRole('table', { name: 'tang: your own sips' }).getByRole('row')).toHaveCount(sips.length + 1);

  await sample.ask('sips:log', { jar: jarsWhole[0]?.id ?? '', tang: 10 });
  await expect(tang.locator('.chart-sip')).toHaveCount(sips.length + 1);
  const after = await sample.ask('findings:read', { trial });
  expect(after.analysis).toEqual(before.analysis);
  expect(after.scores).toEqual(before.scores);
});

test('a chart is saved as CSV, as SVG and as PNG, and each holds what is seen', async ({ sample }) => {
  const { page } = sample;
  const trial = await trialOf(sample, 'pear and ginger');
  const found = await sample.ask('findings:read', { trial });
  const sentence = found.sentences.find(({ attribute }) => attribute === 'tang')?.sentence ?? 'nothing';
  await sample.open(`/trials/${trial}/findings`);
  await page.getByText('Save or copy tang').click();

  const csv = await downloadBy(page, () => page.getByRole('button', { name: 'Save CSV: Tang' }).click());
  expect(csv.suggestedFilename()).toBe('tang.csv');
  const rows = readCsv(await contentOf(csv));
  const tang = found.scores.filter(({ attribute }) => attribute === 'tang');
  const scored = rows.filter(({ kind }) => kind === 'score');
  expect(scored.map((row) => [row.level, row.taster, row.jar, Number(row.value)])).toEqual(
    tang.map(({ sample: level, taster, jar, score }) => [level, taster, jar, score]),
  );
  const means = found.analysis?.attributes.find(({ attribute }) => attribute === 'tang')?.means ?? [];
  for (const { sample: level, mean } of means) {
    const row = rows.find((one) => one.kind === 'mean' && one.level === level);
    expect(Number(row?.value)).toBeCloseTo(mean ?? 0, 8);
  }

  const svg = (
    await contentOf(await downloadBy(page, () => page.getByRole('button', { name: 'Save SVG: Tang' }).click()))
  ).toString();
  const drawn = await page.evaluate((text) => {
    const parsed = new DOMParser().parseFromString(text, 'image/svg+xml');
    return {
      faults: parsed.querySelectorAll('parsererror').length,
      words: [...parsed.querySelectorAll('text')].map((element) => element.textContent ?? '').join(' '),
      crosses: parsed.querySelectorAll('.chart-sip').length,
      variables: /var\(--/.test(
        [...parsed.querySelectorAll('[style]')].map((one) => one.getAttribute('style')).join(';'),
      ),
    };
  }, svg);
  expect(drawn.faults).toBe(0);
  expect(drawn.variables).toBe(false);
  expect(drawn.words).toContain(sentence);
  expect(drawn.words).toContain('Crosses: your own sips');
  expect(drawn.crosses).toBe((await sample.ask('sips:byTrial', { trial })).sips.length);

  const png = await contentOf(
    await downloadBy(page, () => page.getByRole('button', { name: 'Save PNG: Tang' }).click()),
  );
  expect(png.subarray(1, 4).toString()).toBe('PNG');
  expect(png.readUInt32BE(16)).toBeGreaterThan(600);
  // More than one colour: something was drawn.
  const colours = await page.evaluate(
    async (bytes) => {
      const picture = await createImageBitmap(new Blob([new Uint8Array(bytes)], { type: 'image/png' }));
      const pen = new OffscreenCanvas(picture.width, picture.height).getContext('2d');
      pen?.drawImage(picture, 0, 0);
      return new Set(
        new Uint32Array(pen?.getImageData(0, 0, picture.width, picture.height).data.buffer ?? new ArrayBuffer(0)),
      ).size;
    },
    [...png],
  );
  expect(colours).toBeGreaterThan(20);
});

test('by keyboard alone: the figures behind the answer, every figure as CSV, and on to the house recipe', async ({
  sample,
}) => {
  const { page } = sample;
  const trial = await trialOf(sample, 'pear and ginger');
  await sample.open(`/trials/${trial}/findings`);
  await expect(page.getByRole('figure').first()).toBeVisible({ timeout: 20_000 });
  await tabTo(page, 'button', 'Save every figure (CSV)');
  const csv = await downloadBy(page, () => page.keyboard.press('Enter'));
  expect(csv.suggestedFilename()).toBe('how-many-days-should-pear-and-ginger-stand.csv');
  const rows = readCsv(await contentOf(csv));
  const found = await sample.ask('findings:read', { trial });
  expect(rows.filter(({ kind }) => kind === 'score')).toHaveLength(found.scores.length);

  const details = page.locator('summary').filter({ hasText: 'For those who want the figures' });
  for (let press = 0; press < 80; press += 1) {
    await page.keyboard.press('Tab');
    if (await details.evaluate((element) => element === document.activeElement)) break;
  }
  await page.keyboard.press('Enter');
  const tests = page.getByRole('table', { name: 'The tests behind the sentences' });
  await expect(tests).toBeVisible();
  const tang = found.analysis?.attributes.find(({ attribute }) => attribute === 'tang');
  await expect(tests.getByRole('row', { name: /^Tang/ })).toContainText(tang?.test?.f.toFixed(2) ?? 'nothing');
  await expect(page.getByRole('table', { name: 'Liking: each level against “2 days”' }).getByRole('row')).toHaveCount(
    4,
  );

  await page.getByRole('heading', { level: 1 }).focus();
  await tabTo(page, 'link', 'Make it a house recipe');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Which level becomes the house recipe?' })).toBeVisible();
});

test('an empty kitchen: no tasting, then sips, then a closed one whose words can’t run in a spreadsheet', async ({
  workbench,
}) => {
  const { page } = workbench;
  const prepared = await pulledTrial(workbench, ['=1+1', '2 days', '3 days']);
  await workbench.open(`/trials/${prepared.trial}/findings`);
  await expect(page.getByText('No tasting of this trial is closed yet')).toBeVisible();
  await expect(page.getByRole('link', { name: 'Go to the tasting' })).toHaveAttribute(
    'href',
    `#/trials/${prepared.trial}/taste`,
  );
  await expect(page.getByRole('figure')).toHaveCount(0);

  await workbench.ask('sips:log', {
    jar: prepared.jars[1]?.id ?? '',
    at: new Date(Date.now() - 30 * 3_600_000).toISOString(),
    tang: 5,
    liking: 7,
  });
  await expect(page.getByRole('heading', { name: 'Your own sips so far' })).toBeVisible();
  await expect(page.locator('.chart-sip')).toHaveCount(2);

  await taste(workbench, prepared, ['@SUM(A1)', 'Ben', 'Cleo', 'Dora', 'Emil', 'Fay']);
  await expect(page.locator('.headline-sentence')).toHaveText(
    /^“2\sdays”, the control, was liked best: 7\.\d on the scale from 1 to 9/,
  );
  const csv = await downloadBy(page, () => page.getByRole('button', { name: 'Save every figure (CSV)' }).click());
  const rows = readCsv(await contentOf(csv));
  for (const row of rows) for (const cell of Object.values(row)) expect(cell).not.toMatch(/^\s*[=+@]|^-(?!\d)/);
  expect(rows.some(({ level }) => level === "'=1+1")).toBe(true);
  expect(rows.some(({ taster }) => taster === "'@SUM(A1)")).toBe(true);
});

test('one taster and two tasters: it says what they can and can’t tell', async ({ workbench }) => {
  const { page } = workbench;
  const prepared = await pulledTrial(workbench);
  await taste(workbench, prepared, ['Ana']);
  await workbench.open(`/trials/${prepared.trial}/findings`);
  await expect(page.getByText(/was liked best by the one taster/)).toBeVisible();
  await expect(page.getByText(/One taster tells what one person found/)).toBeVisible();
  await expect(page.getByRole('link', { name: 'Make it a house recipe' })).toHaveCount(0);
});

test('findings are accessible in light and dark, open and closed, and fit a small telephone', async ({ sample }) => {
  test.slow();
  const { page } = sample;
  for (const words of ['pear and ginger', 'apricot', 'summer stall', 'plums']) {
    await sample.open(`/trials/${await trialOf(sample, words)}/findings`);
    await page.setViewportSize({ width: 1280, height: 860 });
    await expect(page.locator('.headline-sentence, .empty').first()).toBeVisible({ timeout: 20_000 });
    for (const summary of await page.locator('summary').all()) await summary.click();
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
  }
});
