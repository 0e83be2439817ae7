import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expectAccessible, expectNoSidewaysScroll } from './looked-over.ts';
import { pulledTrial, taste } from './tasted-trial.ts';
import { expect, test, type Workbench } from './workbench.ts';

/** A trial with everything that is ever drawn: readings, sightings, scores, a ranking, five steps; and a culture with its weights. */
async function everythingDrawn(workbench: Workbench) {
  const { ask } = workbench;
  const tasted = await pulledTrial(workbench);
  await taste(workbench, tasted, ['Ann', 'Ben', 'Cleo', 'Dora']);
  const { trial, jars } = tasted;
  const first = jars[0]?.id ?? '';
  const at = (hours: number) => new Date(Date.now() - hours * 3_600_000).toISOString();
  for (const [place, hours] of [90, 70, 50, 30].entries()) {
    await ask('readings:log', {
      jar: first,
      at: at(hours),
      brix: 6 - place,
      ph: 3.8 - place / 10,
      temperature_C: 21 + place,
    });
  }
  await ask('sightings:log', { jar: first, at: at(80), what: 'first-bubbles' });
  const tasters = (await ask('tasters:list', {})).tasters.map(({ id }) => id);
  const samples = jars.map(({ id }) => ({ jar: id }));
  const ranked = await ask('tastings:build', { trial, name: 'In order', samples, tasters, ranked: true });
  const steps = await ask('tastings:build', {
    trial,
    name: 'Right or not',
    samples,
    tasters,
    attributes: [{ name: 'ginger', kind: 'just-about-right', low: -2, high: 2 }],
  });
  for (const taster of tasters) {
    for (const [place, { id }] of jars.entries()) {
      await ask('scores:enter', {
        tasting: ranked.tasting,
        scores: [{ taster, sample: ranked.codes[id] ?? '', attribute: 'place', score: place + 1 }],
      });
      await ask('scores:enter', {
        tasting: steps.tasting,
        scores: [{ taster, sample: steps.codes[id] ?? '', attribute: 'ginger', score: place - 1 }],
      });
    }
  }
  await ask('tastings:close', { tasting: ranked.tasting });
  await ask('tastings:close', { tasting: steps.tasting });
  const { culture } = await ask('cultures:save', { name: 'Old mother', kind: 'kombucha mother', weight_g: 200 });
  await ask('cultures:log', { culture, what: 'weighed', weight_g: 230 });
  return { trial, jar: first, culture };
}

/** Every drawing of the page that is no part of a paper, by the heading of its figure. */
async function chartsOf(page: Page): Promise<string[]> {
  await expect(page.locator('main .recharts-surface').first()).toBeVisible();
  await page.waitForTimeout(600);
  await page.locator('main').evaluate((main) => {
    for (const folded of main.querySelectorAll('details')) folded.open = true;
  });
  const found: string[] = [];
  for (const drawing of await page.locator('main .recharts-responsive-container').all()) {
    const figure = drawing.locator('xpath=ancestor::figure[1]');
    await expect(figure, 'a chart stands in a figure').toHaveCount(1);
    const name = (await figure.locator('summary').last().textContent()) ?? '';
    expect(await figure.getByRole('table').count(), `${name}: its table`).toBeGreaterThan(0);
    for (const way of ['Copy picture', 'Save SVG', 'Save PNG', 'Save CSV']) {
      await expect(figure.getByRole('button', { name: new RegExp(`^${way}`) }), `${name}: ${way}`).toHaveCount(1);
    }
    expect(await drawing.locator('svg title').first().textContent(), `${name}: said in words`).not.toBe('');
    found.push(name);
  }
  return found;
}

test('every chart of every page has its table, can be copied and saved, and says what it is', async ({ workbench }) => {
  test.slow();
  const { page } = workbench;
  const { trial, jar, culture } = await everythingDrawn(workbench);
  await workbench.open('/');
  const found = new Map<string, string[]>();
  for (const screen of [
    `/trials/${trial}`,
    `/jars/${jar}`,
    `/trials/${trial}/findings`,
    `/trials/${trial}/taste/new`,
    `/cultures/${culture}`,
  ]) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, screen);
    await expect(page.locator('h1')).toBeVisible();
    if (screen.endsWith('/taste/new')) {
      for (const name of ['Ann', 'Ben', 'Cleo']) await page.getByRole('checkbox', { name }).check();
    }
    found.set(screen, await chartsOf(page));
  }
  const all = [...found.values()].flat().join('\n');
  for (const kind of [
    'from start to tasting',
    'seen and done',
    'liking',
    'tang',
    'in order',
    'ginger',
    'liking: who goes with the others',
    'liking: how the scale was used',
    'what the panel will see',
  ]) {
    expect(all).toContain(`Save or copy ${kind}`);
  }
  expect(found.get(`/cultures/${culture}`)).toHaveLength(1);
  // Three readings, and what was seen.
  expect(found.get(`/jars/${jar}`)).toHaveLength(4);
});

test('the tasters’ charts follow the chosen attribute, and are saved as SVG and CSV by keyboard', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { trial } = await everythingDrawn(workbench);
  await workbench.open(`/trials/${trial}/findings`);
  await page.getByLabel('By attribute').selectOption('tang');
  const figure = page
    .getByRole('figure')
    .filter({ has: page.getByRole('heading', { name: /^Tang: who goes with the others/ }) });
  await expect(figure.getByText(/^On tang /)).toBeVisible();
  const { attributes } = await workbench.ask('findings:tasters', { trial });
  const ann = attributes.find(({ attribute }) => attribute === 'tang')?.tasters[0];
  await expect(figure.locator('svg text', { hasText: ann?.agreement?.toFixed(2) ?? 'nothing' }).first()).toBeVisible();
  await figure.locator('summary').last().focus();
  await page.keyboard.press('Enter');
  const csvButton = figure.getByRole('button', { name: /^Save CSV/ });
  await csvButton.focus();
  const [csv] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  const text = readFileSync(await csv.path(), 'utf8');
  expect(text).toContain('taster,samples shared,agreement,low,high,note');
  expect(text).toContain(`Ann,3,${String(ann?.agreement).slice(0, 10)}`);
  await figure.getByRole('button', { name: /^Save SVG/ }).focus();
  const [svg] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  expect(readFileSync(await svg.path(), 'utf8')).toContain('agreement with the others (correlation)');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
});

test('the trial’s timeline goes from start to pull to tasting, with what was written down', async ({ workbench }) => {
  const { page } = workbench;
  const { trial } = await everythingDrawn(workbench);
  await workbench.open(`/trials/${trial}`);
  const figure = page
    .getByRole('figure')
    .filter({ has: page.getByRole('heading', { name: /^From start to tasting/ }) });
  await expect(figure.locator('.timeline-stood')).toHaveCount(3);
  await expect(figure.locator('.timeline-mark.is-reading')).toHaveCount(4);
  await expect(figure.locator('.timeline-mark.is-sighting')).toHaveCount(1);
  await expect(figure.locator('.timeline-tasting')).toHaveCount(3);
  await figure.getByText('From start to tasting as a table').click();
  const rows = figure.getByRole('row');
  await expect(rows.nth(1)).toContainText('started');
  await expect(rows.filter({ hasText: 'first bubbles' })).toHaveCount(1);
  await expect(rows.last()).toContainText('tasting “');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
});
