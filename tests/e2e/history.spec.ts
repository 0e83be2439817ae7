import { expectAccessible, expectNoSidewaysScroll } from './looked-over.ts';
import { expect, test } from './workbench.ts';

test('the history of a base is reached from its page, tells before and after, and marks what was undone', async ({
  workbench,
}) => {
  const { page, ask } = workbench;
  const { base } = await ask('bases:start', { name: 'Saturday base', volume_mL: 3000, sugarStart_g_per_L: 60 });
  const first = await ask('bases:open', { base });
  await ask('bases:change', { base, revision: first.revision, name: 'Sunday base' });
  await ask('undo:last', {});
  await ask('bases:strain', { base });
  await workbench.open(`/bases/${base}`);
  await page.getByRole('link', { name: 'What changed, and when' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('What changed, and when');
  const steps = page.getByRole('list', { name: /What changed, and when/ }).getByRole('listitem');
  await expect(steps).toHaveCount(4);
  await expect(steps.nth(0)).toContainText('Strained');
  await expect(steps.nth(1)).toContainText(/Undo.*Sunday base.*Saturday base/s);
  await expect(steps.nth(2)).toContainText(/later undone.*Saturday base.*Sunday base/s);
  await expect(steps.nth(3)).toContainText(/Volume\s*3\sL/);
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await page.getByRole('link', { name: 'The base “Saturday base”' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Saturday base');
});

test('each step on Data opens into its rows, and each row leads to its whole history, a removed one too', async ({
  workbench,
}) => {
  const { page, ask } = workbench;
  const { base } = await ask('bases:start', { name: 'Saturday base', volume_mL: 3000 });
  const { reading } = await ask('readings:log', { base, ph: 3.4 });
  await ask('entries:remove', { kind: 'reading', id: reading });
  await workbench.open('/data');
  await page.getByRole('link', { name: /^Log a reading of/i }).click();
  await expect(page.getByText(/1 row\. Each leads to its whole history/)).toBeVisible();
  const row = page.getByRole('list', { name: 'What this step changed' }).getByRole('listitem');
  await expect(row).toContainText(/Reading of .*removed since.*The base “Saturday base”.*pH\s*3\.4/s);
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await row.getByRole('link', { name: /^Reading of/ }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('What changed, and when');
  await expect(page.getByText('It was removed. What can come back lies in the bin, on Data.')).toBeVisible();
  const steps = page.getByRole('list', { name: /What changed, and when/ }).getByRole('listitem');
  await expect(steps).toHaveCount(2);
  await expect(steps.first()).toContainText('It lay in the bin from here on');
  await expectAccessible(page);
  await page.getByRole('link', { name: 'The base “Saturday base”' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Saturday base');
  await page.evaluate(() => {
    location.hash = '/data';
  });
  await page.getByRole('list', { name: 'Bin' }).getByRole('link').click();
  await expect(page.getByRole('list', { name: 'What this step changed' })).toContainText('It lay in the bin');
});

test('what belongs to a thing is shown with it: a recipe’s versions, a tasting’s scores; an open one tells no codes', async ({
  sample,
}) => {
  const { page, ask } = sample;
  const recipe = (await ask('recipes:list', {})).recipes[0]?.id ?? '';
  await sample.open(`/house-recipes/${recipe}`);
  await page.getByRole('link', { name: 'What changed, and when' }).click();
  await page.getByRole('link', { name: 'Version 1' }).click();
  await expect(page.getByRole('list', { name: /What changed, and when: version 1/ })).toContainText('Formula');
  await expectAccessible(page);
  const { tastings } = await ask('tastings:list', {});
  const [open, closed] = [tastings.find((one) => one.closedAt === null), tastings.find((one) => one.closedAt !== null)];
  const go = (hash: string) =>
    page.evaluate((to) => {
      location.hash = to;
    }, hash);
  await go(`/tastings/${closed?.id}`);
  await page.getByRole('link', { name: 'What changed, and when' }).click();
  await page.getByText(/^Scores \(\d+\)$/).click();
  await page
    .getByRole('link', { name: /^A score for tang \(.+, \d{3}\)$/ })
    .first()
    .click();
  await expect(page.getByRole('list', { name: /What changed, and when/ })).toContainText(/Score\s*\d/);
  await go(`/tastings/${open?.id}`);
  await page.getByRole('link', { name: 'What changed, and when' }).click();
  await expect(page.getByText(/can be read here once the cups are revealed/)).toBeVisible();
  await expect(page.getByText(/^Samples/)).toHaveCount(0);
  await expectAccessible(page);
  await go('/history/step/0x1');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('This step is not known here');
});

test('the history of a jar, a trial, a taster and a house recipe opens from each of them', async ({ sample }) => {
  const { page, ask } = sample;
  const { trials } = await ask('trials:list', { limit: 1 });
  const trial = trials[0]?.id ?? '';
  const jar = (await ask('trials:open', { trial })).jarsWhole[0]?.id ?? '';
  const recipe = (await ask('recipes:list', {})).recipes[0]?.id ?? '';
  await sample.open(`/jars/${jar}`);
  for (const from of [`/jars/${jar}`, `/trials/${trial}`, `/house-recipes/${recipe}`]) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, from);
    await page.getByRole('link', { name: 'What changed, and when' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('What changed, and when');
    await expect(
      page
        .getByRole('listitem')
        .filter({ has: page.locator('time') })
        .first(),
    ).toBeVisible();
  }
  await page.evaluate(() => {
    location.hash = '/tasters';
  });
  await page
    .getByRole('button', { name: /^Change / })
    .first()
    .click();
  await page.getByRole('link', { name: 'What changed, and when' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('What changed, and when');
  await expectAccessible(page);
});
