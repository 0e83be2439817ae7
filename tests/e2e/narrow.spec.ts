import type { Locator, Page } from '@playwright/test';
import { goTo } from './every-screen.ts';
import { expect, test, type Workbench } from './workbench.ts';

// How words, buttons and names lie in windows as narrow as telephones.

async function trialOf({ ask }: Workbench, factor: string): Promise<string> {
  const { trials } = await ask('trials:list', {});
  return trials.find((trial) => trial.factor === factor)?.id ?? '';
}

/** Figures whose unit has gone to the next line, with some words around each. */
async function partedFigures(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const unit =
      /\d[ \u00a0](?:%(?:[ \u00a0]vol)?|°\S+|[km]?g|m?L|g\/L|h|bar|psi|oz|qt|cups?|tsp|points?|days?)(?![\p{L}\d])/gu;
    const walker = document.createTreeWalker(document.querySelector('main') ?? document.body, NodeFilter.SHOW_TEXT);
    const parted: string[] = [];
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const text = node.textContent ?? '';
      for (const { index, 0: found } of text.matchAll(unit)) {
        const range = document.createRange();
        range.setStart(node, index);
        range.setEnd(node, index + found.length);
        const tops = new Set([...range.getClientRects()].map(({ bottom }) => Math.round(bottom)));
        if (tops.size > 1) parted.push(text.slice(Math.max(0, index - 20), index + found.length + 10));
      }
    }
    return parted;
  });
}

/** How many lines these stand on, by their lower edges. */
async function linesOf(things: Locator): Promise<number> {
  const bottoms = await things.evaluateAll((all) =>
    all.filter((one) => one.checkVisibility()).map((one) => Math.round(one.getBoundingClientRect().bottom)),
  );
  expect(bottoms.length).toBeGreaterThan(0);
  return new Set(bottoms).size;
}

test('a figure stays on one line with its unit, wherever the window ends', async ({ sample }) => {
  const { page, ask } = sample;
  const { bases, cultures } = { ...(await ask('bases:list', {})), ...(await ask('cultures:list', {})) };
  const { jarsWhole } = await ask('trials:open', { trial: await trialOf(sample, 'state') });
  await sample.open('/');
  const days = await trialOf(sample, 'days');
  for (const measures of ['metric', 'us'] as const) {
    await ask('kitchen:change', { measures });
    for (const screen of [
      `/trials/${days}`,
      `/trials/${days}/findings`,
      `/trials/${days}/wishes`,
      `/jars/${jarsWhole[0]?.id}`,
      `/bases/${bases[0]?.id}`,
      `/bases/${bases[0]?.id}/plan`,
      `/cultures/${cultures[0]?.id}`,
    ]) {
      await goTo(page, screen);
      for (const width of [320, 360, 410]) {
        await page.setViewportSize({ width, height: 800 });
        expect(await partedFigures(page), `${screen} at ${width} px`).toEqual([]);
      }
    }
  }
});

test('what can be done with a standing jar keeps to one line on a telephone', async ({ sample }) => {
  const { page } = sample;
  await sample.open(`/trials/${await trialOf(sample, 'state')}`);
  const row = page.getByRole('listitem').filter({ has: page.getByRole('button', { name: 'Discard jar A1' }) });
  for (const width of [320, 360]) {
    await page.setViewportSize({ width, height: 800 });
    await expect(row.getByRole('button')).toHaveCount(4);
    expect(await linesOf(row.getByRole('button')), `${width} px`).toBe(1);
  }
});

test('words to press begin each line of their row at its edge', async ({ sample }) => {
  const { page } = sample;
  await sample.open(`/trials/${await trialOf(sample, 'days')}/findings`);
  await page.locator('summary', { hasText: 'Save or copy tang' }).click();
  for (const width of [360, 1280]) {
    await page.setViewportSize({ width, height: 800 });
    const acts = page.locator('.chart-acts').filter({ visible: true }).getByRole('button');
    await expect(acts).toHaveCount(5);
    const starts = await acts.evaluateAll((all) => {
      const firsts = new Map<number, number>();
      for (const one of all) {
        const words = document.createRange();
        words.selectNodeContents(one);
        const { left, bottom } = words.getBoundingClientRect();
        firsts.set(Math.round(bottom), Math.min(firsts.get(Math.round(bottom)) ?? left, left));
      }
      return [...firsts.values()].map((left) => Math.round(left));
    });
    expect(starts.length, `${width} px`).toBeGreaterThan(1);
    expect(new Set(starts).size, `${width} px`).toBe(1);
  }
});

test('the ends of a wish stand side by side, from a telephone to a wide window', async ({ sample }) => {
  const { page } = sample;
  await sample.open(`/trials/${await trialOf(sample, 'days')}/wishes`);
  const tang = page.getByRole('group', { name: /^Tang/ });
  await tang.getByRole('combobox').first().selectOption({ label: 'the more, the better' });
  await expect(tang.getByRole('textbox')).toHaveCount(2);
  for (const width of [360, 720, 1280]) {
    await page.setViewportSize({ width, height: 800 });
    expect(await linesOf(tang.getByRole('textbox')), `${width} px`).toBe(1);
  }
});

test('the head of the page is one line high while there is something to undo', async ({ sample }) => {
  const { page } = sample;
  await sample.open('/');
  await expect(page.getByRole('button', { name: /^Undo:/ })).toBeVisible();
  for (const width of [320, 360, 720]) {
    await page.setViewportSize({ width, height: 800 });
    const head = await page.getByRole('banner').boundingBox();
    expect(head?.height, `${width} px`).toBeLessThan(80);
  }
});

test('what Tab comes to stands above the bar of places, with its ring', async ({ sample }) => {
  test.setTimeout(120_000);
  const { page } = sample;
  await page.setViewportSize({ width: 360, height: 800 });
  await sample.open('/');
  const covered: string[] = [];
  let presses = 0;
  for (const screen of ['/', `/trials/${await trialOf(sample, 'state')}`, '/trials/new', '/data']) {
    await goTo(page, screen);
    for (let press = 0; press < 60; press += 1) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate(() => {
        const here = document.activeElement;
        if (here === null || here.closest('main') === null) return null;
        const { bottom, height } = here.getBoundingClientRect();
        const bar = document.querySelector('nav.nav')?.getBoundingClientRect().top ?? 0;
        const ring = getComputedStyle(here);
        const isRinged = ring.outlineStyle !== 'none' && Number.parseFloat(ring.outlineWidth) >= 2;
        return { name: here.textContent.trim().slice(0, 30), isCovered: height < 400 && bottom > bar + 1, isRinged };
      });
      if (at === null) continue;
      presses += 1;
      if (at.isCovered) covered.push(`${screen}: ${at.name} stands below the bar`);
      if (!at.isRinged) covered.push(`${screen}: ${at.name} has no ring`);
    }
  }
  expect(covered).toEqual([]);
  expect(presses).toBeGreaterThan(100);
});

test('a notice stands above the bar of places, never over it', async ({ sample }) => {
  const { page } = sample;
  await page.setViewportSize({ width: 360, height: 800 });
  await sample.open(`/trials/${await trialOf(sample, 'state')}`);
  await page.getByRole('button', { name: 'Pull jar A1' }).click();
  const notice = page.locator('.toast').first();
  await expect(notice).toBeVisible();
  const bar = await page.getByRole('navigation', { name: 'Screens' }).boundingBox();
  await expect
    .poll(async () => {
      const box = await notice.boundingBox();
      return box === null || bar === null ? null : box.y + box.height <= bar.y;
    })
    .toBe(true);
});

test('the names of formulas do not run into each other below their chart', async ({ sample }) => {
  const { page, ask } = sample;
  const { tastings } = await ask('tastings:list', {});
  const trial = await trialOf(sample, 'formula');
  await ask('tastings:close', { tasting: tastings.find((one) => one.trial === trial)?.id ?? '' });
  await page.setViewportSize({ width: 360, height: 800 });
  await sample.open(`/trials/${trial}/findings`);
  const names = page.getByRole('figure').first().locator('.recharts-xAxis-tick-labels text');
  await expect(names).toHaveCount(3);
  await expect(names.first()).toContainText('Pear and');
  const boxes = await names.evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON()));
  const overlaps = boxes.slice(1).map(({ left }, place) => left < (boxes[place]?.right ?? 0));
  expect(overlaps).toEqual([false, false]);
});

test('what the history of an open tasting keeps back is said in one sentence', async ({ sample }) => {
  const { page, ask } = sample;
  const { tastings } = await ask('tastings:list', {});
  const open = tastings.find(({ closedAt }) => closedAt === null);
  await sample.open(`/history/tastings/${open?.id}`);
  const said = page.getByText(/^Its history tells which jar is behind which code\. It can be read here/);
  await expect(said).toBeVisible();
  // Words that are told in it stand within its lines.
  const height = await said.evaluate((one) => one.clientHeight / Number.parseFloat(getComputedStyle(one).lineHeight));
  expect(height).toBeLessThan(2.5);
});
