import AxeBuilder from '@axe-core/playwright';
import { fillDaysPlan } from './days-plan.ts';
import { expect, test } from './workbench.ts';

for (const scheme of ['light', 'dark'] as const) {
  test(`axe finds nothing serious in the plan, the jars and a jar, in the ${scheme}`, async ({ sample }) => {
    const { page } = sample;
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' });
    const grave = async () => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      return violations
        .filter(({ impact }) => impact === 'serious' || impact === 'critical')
        .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`);
    };
    await sample.open('/trials/new');
    await page.getByRole('button', { name: 'Keep this plan' }).click();
    expect(await grave()).toEqual([]);
    await fillDaysPlan(page);
    await page.getByLabel('Base in each jar').fill('990');
    expect(await grave()).toEqual([]);
    const { trials } = await sample.ask('trials:list', {});
    const standing = trials.find(({ state }) => state === 'fermenting');
    if (standing === undefined) throw new Error('the sample has a standing trial');
    await page.evaluate((hash) => {
      location.hash = hash;
    }, `/trials/${standing.id}`);
    await page
      .getByRole('button', { name: /^Write down what jar/ })
      .first()
      .click();
    await page.getByLabel('Reading').fill('ph 4.9');
    expect(await grave()).toEqual([]);
    await page.keyboard.press('Escape');
    await page
      .getByRole('link', { name: /^Open jar/ })
      .first()
      .click();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Jar');
    expect(await grave()).toEqual([]);
  });
}

test('nothing scrolls sideways at 360 px: the plan empty, filled and refused, the jars, a jar', async ({ sample }) => {
  const { page } = sample;
  await page.setViewportSize({ width: 360, height: 740 });
  const over = () => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  await sample.open('/trials/new');
  expect(await over()).toBeLessThanOrEqual(0);
  await fillDaysPlan(page);
  await page.getByLabel('Base in each jar').fill('990');
  expect(await over()).toBeLessThanOrEqual(0);
  await page.getByRole('radio', { name: 'Whole formula' }).check();
  expect(await over()).toBeLessThanOrEqual(0);
  const { trials } = await sample.ask('trials:list', {});
  const standing = trials.find(({ state }) => state === 'fermenting');
  const whole = await sample.ask('trials:open', { trial: standing?.id ?? '' });
  for (const path of [`/trials/${whole.id}`, `/jars/${whole.jarsWhole[0]?.id}`]) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, path);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await page.waitForTimeout(150);
    expect(await over(), path).toBeLessThanOrEqual(0);
  }
});
