import { expect, test } from './workbench.ts';

test('Ctrl+K finds jars, trials, tasters, recipes, bases and things to do; arrows and Enter go there', async ({
  sample,
}) => {
  const { page } = sample;
  await sample.open();
  const heading = page.getByRole('heading', { level: 1 });
  const find = async (words: string, option: RegExp) => {
    await page.keyboard.press('Control+k');
    const field = page.getByRole('combobox', { name: 'A jar, trial, taster, recipe, or something to do' });
    await expect(field).toBeFocused();
    await page.keyboard.type(words);
    const options = page.getByRole('option');
    await expect(options.filter({ hasText: option }).first()).toBeVisible();
    for (let press = 0; press < 12; press += 1) {
      if (
        await options
          .filter({ hasText: option })
          .first()
          .evaluate((one) => one.ariaSelected === 'true')
      )
        break;
      await page.keyboard.press('ArrowDown');
    }
    await page.keyboard.press('Enter');
    await expect(page.getByRole('dialog')).toHaveCount(0);
  };
  const [trial] = (await sample.ask('trials:list', {})).trials;
  await find(trial?.question.slice(0, 12) ?? '', /Trial/);
  await expect(heading).toHaveText(trial?.question ?? '');
  const [recipe] = (await sample.ask('recipes:list', {})).recipes;
  await find(recipe?.name.slice(0, 6) ?? '', /House recipe/);
  await expect(heading).toHaveText(recipe?.name ?? '');
  const [base] = (await sample.ask('bases:list', {})).bases;
  await find(base?.name ?? '', /Base/);
  await expect(heading).toHaveText(base?.name ?? '');
  const [culture] = (await sample.ask('cultures:list', {})).cultures;
  await find(culture?.name ?? '', /Culture/);
  await expect(heading).toHaveText(culture?.name ?? '');
  await find('plan', /Plan a trial/);
  await expect(heading).toHaveText('Plan a trial');
  await page.keyboard.press('Control+k');
  await page.keyboard.type('zzqx');
  await expect(page.getByText('Nothing answers to these words.')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
});

test('by mouse: what is found is opened; keys and words stand on one sheet, which “?” opens too', async ({
  sample,
}) => {
  const { page } = sample;
  await sample.open();
  await page.getByRole('button', { name: /^Find/ }).first().click();
  await page.getByRole('combobox').fill('pantry');
  await page.getByRole('option', { name: /Look at the pantry/ }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Pantry');
  await page.getByRole('heading', { level: 1 }).focus();
  await page.keyboard.press('?');
  const sheet = page.getByRole('dialog', { name: 'Keys and words' });
  await expect(sheet).toBeVisible();
  await expect(sheet.getByText('The plain fermented drink that all jars of a trial are filled from.')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(sheet).toHaveCount(0);
});

test('this window shows light or dark, 12 or 24 hours, comma or point, and the week from the chosen day, and remembers it', async ({
  sample,
}) => {
  const { page } = sample;
  await sample.open('/data');
  await page.getByRole('combobox', { name: 'Light or dark' }).selectOption({ label: 'dark' });
  const background = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const dark = await background();
  await page.getByRole('combobox', { name: 'Light or dark' }).selectOption({ label: 'light' });
  expect(await background()).not.toBe(dark);
  await page.getByRole('combobox', { name: 'Hours' }).selectOption('12');
  await page.getByRole('combobox', { name: 'Decimals' }).selectOption(',');
  await page.getByRole('combobox', { name: 'A week begins on' }).selectOption('sunday');
  const show = async (screen: string) => {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, screen);
  };
  const { trials } = await sample.ask('trials:list', {});
  const tasted = trials.find(({ question }) => question.includes('pear and ginger'));
  await show(`/trials/${tasted?.id}/findings`);
  await expect(page.getByText(/\d,\d/).first()).toBeVisible({ timeout: 20_000 });
  expect(await page.locator('main').textContent()).not.toMatch(/\d\.\d/);
  await page.reload();
  await show('/data');
  await expect(page.getByRole('combobox', { name: 'Decimals' })).toHaveValue(',');
  await expect(page.getByRole('combobox', { name: 'Hours' })).toHaveValue('12');
  await expect(page.getByRole('combobox', { name: 'A week begins on' })).toHaveValue('sunday');
  await show(`/trials/${tasted?.id}`);
  await expect(
    page
      .locator('main')
      .getByText(/\d{1,2}:\d\d\s?(am|pm)/i)
      .first(),
  ).toBeVisible();
});
