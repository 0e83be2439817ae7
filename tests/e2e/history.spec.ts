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
  await expect(steps.nth(3)).toContainText(/Volume\s*3 L/);
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await page.getByRole('link', { name: 'The base “Saturday base”' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Saturday base');
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
