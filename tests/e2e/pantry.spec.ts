import { expectAccessible, expectNoSidewaysScroll, tabTo } from './looked-over.ts';
import { hoursAgo } from './tasted-trial.ts';
import { expect, test, type Workbench } from './workbench.ts';

async function ingredient({ ask }: Workbench, name: string) {
  const { ingredients } = await ask('pantry:list', {});
  return ingredients.find((row) => row.name === name);
}

test('by keyboard alone: blackcurrants are found by another name, their sugar is asked for and filled in from the label', async ({
  workbench,
}) => {
  const { page } = workbench;
  await workbench.open('/pantry');
  await page.getByRole('searchbox', { name: 'Search the pantry' }).focus();
  await page.keyboard.type('european black');
  await expect(page.getByRole('status').filter({ hasText: '1 ingredient' })).toBeVisible();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByText(/the food table \(USDA SR28\) has no sugar value/)).toBeVisible();
  await expect(page.getByText('FoodData Central id 173963')).toBeVisible();
  await tabTo(page, 'button', 'Fill in your own value');
  await page.keyboard.press('Enter');
  await tabTo(page, 'textbox', 'Sugars');
  await page.keyboard.type('6.6');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Say where they come from, such as: label of the bag.')).toBeVisible();
  expect(await ingredient(workbench, 'blackcurrants')).toMatchObject({ sugars_g: null });
  await tabTo(page, 'textbox', 'Where the figures come from');
  await page.keyboard.type('label of the bag');
  await page.keyboard.press('Enter');
  await expect(page.getByText('sugars: your own, label of the bag')).toBeVisible();
  expect(await ingredient(workbench, 'blackcurrants')).toMatchObject({ sugars_g: 6.6, ownSource: 'label of the bag' });
});

test('by mouse: stock is asked about when kilograms look like grams; a started jar takes from it and says when it was short', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { trial, jars } = await workbench.ask('trials:save', {
    question: 'How long?',
    factor: 'days',
    levels: [
      { name: '1 day', value: 1 },
      { name: '2 days', value: 2 },
    ],
    control: '1 day',
    held: { additions: [{ ingredient: 'strawberries', mass_g: 80, state: 'fresh' }] },
    calendar: 'staggered-pull',
    baseAvailable_mL: 5000,
    baseEach_mL: 700,
    vessel: { kind: 'lidded-jar', capacity_mL: 1000 },
    start: hoursAgo(1),
    seed: 1,
  });
  await workbench.open('/pantry');
  await page.getByRole('searchbox').fill('strawberries');
  await page.locator('summary', { hasText: /^strawberries 4\.9 g/ }).click();
  await expect(page.getByText('1 cup, sliced')).toBeVisible();
  await page.getByRole('button', { name: 'On hand and price: strawberries', exact: true }).click();
  const amount = page.getByRole('textbox', { name: 'How much is there' });
  await amount.fill('1 cup');
  await amount.blur();
  await expect(page.getByText(/Say which: strawberries are measured .*sliced \(166\sg a cup\)/)).toBeVisible();
  await amount.fill('-3 kg');
  await page.getByRole('button', { name: 'Keep' }).click();
  await expect(page.getByText('-3 kg is negative; permitted: zero or more.')).toBeVisible();
  await amount.fill('75 kg');
  await expect(page.getByText('That is 75 kg. Did you mean 75 g?')).toBeVisible();
  await page.getByRole('button', { name: 'Keep' }).click();
  expect(await ingredient(workbench, 'strawberries')).toMatchObject({ onHand_g: null });
  await page.getByRole('button', { name: 'Make it 75 g' }).click();
  await expect(page.getByText('Understood: 75 g')).toBeVisible();
  // USDA SR28: a cup of sliced strawberries weighs 166 g.
  await amount.fill('1/2 cup sliced');
  await expect(page.getByText('Understood: 83 g')).toBeVisible();
  await page.getByRole('textbox', { name: 'What it costs' }).fill('4.50 per lb');
  await page.getByRole('textbox', { name: 'Currency of this kitchen' }).fill('€');
  await page.getByRole('button', { name: 'Keep' }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByText('€9.92 per kg')).toBeVisible();
  expect(await ingredient(workbench, 'strawberries')).toMatchObject({ onHand_g: expect.closeTo(83, 6) });
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/jars/${jars[0]?.id}`);
  await page.getByRole('button', { name: /^Start jar A/ }).click();
  await expect(page.getByText('Started A. On hand now: 3 g strawberries.')).toBeVisible();
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/jars/${jars[1]?.id}`);
  await page.getByRole('button', { name: /^Start jar B/ }).click();
  await expect(page.getByText(/More was used than noted of strawberries \(77 g\): count again/)).toBeVisible();
  await workbench.ask('trials:open', { trial });
  await page.evaluate(() => {
    location.hash = '/pantry';
  });
  await page.getByRole('combobox', { name: 'Show' }).selectOption('onHand');
  await expect(page.locator('summary', { hasText: '0 g on hand used more than noted' })).toBeVisible();
});

test('an ingredient of one’s own, in cups and grams, with a slip asked about at its line', async ({ workbench }) => {
  const { page } = workbench;
  await workbench.open('/pantry');
  await page.getByRole('searchbox').fill('Quince');
  await expect(page.getByRole('heading', { name: 'Nothing in the pantry is called that.' })).toBeVisible();
  await page.getByRole('button', { name: 'Add an ingredient' }).last().click();
  await expect(page.getByRole('textbox', { name: 'Name' })).toHaveValue('Quince');
  await page.getByRole('textbox', { name: 'Water' }).fill('84');
  await page.getByRole('textbox', { name: 'Sugars' }).fill('120');
  const weighs = page.getByRole('textbox', { name: 'What a kitchen measure weighs' });
  await weighs.fill('1 piece = 120 g\n1/2 cup = 75 kg');
  await page.getByRole('button', { name: 'Keep' }).click();
  await expect(page.getByText('120 g cannot be in 100 g; permitted: 0 to 100.')).toBeVisible();
  await expect(page.getByText(/^Line 2: .*Did you mean 75\sg\? Permitted: 1\.18 to 237\sg\./)).toBeVisible();
  expect((await workbench.ask('pantry:list', {})).ingredients.some(({ isBuiltIn }) => !isBuiltIn)).toBe(false);
  await page.getByRole('textbox', { name: 'Sugars' }).fill('8,9');
  await weighs.fill('1 piece = 120 g\n1/2 cup = 75 g');
  await page.getByRole('textbox', { name: 'Where the figures come from' }).fill('label');
  await page.getByRole('checkbox', { name: 'Sulphites' }).check();
  await page.getByRole('button', { name: 'Keep' }).click();
  await expect(page.locator('summary', { hasText: 'Quince 8.9 g sugars' })).toBeVisible();
  expect(await ingredient(workbench, 'Quince')).toMatchObject({
    sugars_g: 8.9,
    allergens: ['sulphites'],
    measures: [
      { unit: 'each', form: null, mass_g: 120 },
      { unit: 'cup', form: null, mass_g: 150 },
    ],
  });
});

test('a house recipe is made from what is on hand, and a serving says what is unknown', async ({ sample }) => {
  const { page } = sample;
  const { recipes } = await sample.ask('recipes:list', {});
  await sample.ask('pantry:stock', { name: 'pears', onHand_g: 160, price_per_kg: 4 });
  await sample.open(`/house-recipes/${recipes[0]?.id}`);
  await expect(page.getByText(/unknown: no price of the base and ginger/i)).toBeVisible();
  await page.getByRole('textbox', { name: 'Base', exact: true }).fill('10 L');
  await expect(page.getByText(/You can make 1\.5\d L: pears runs out first\./)).toBeVisible();
  await page.getByRole('button', { name: /^Make 1\.5\d L$/ }).click();
  await expect(page.getByText('160 g pears, fresh').first()).toBeVisible();
  await page.getByRole('textbox', { name: 'What the base costs' }).fill('0.80 per L');
  await sample.ask('pantry:stock', { name: 'ginger', price_per_kg: 10 });
  await expect(page.getByText(/unknown: no price/)).toHaveCount(0);
  await page.goto('about:blank');
  await sample.open(`/house-recipes/${recipes[0]?.id}`);
  // What the base costs is remembered with the recipe, in the kitchen.
  await expect(page.getByRole('textbox', { name: 'What the base costs' })).toHaveValue('0.80 per L');
  await page.locator('summary', { hasText: 'Sweeten to a target' }).click();
  const sweeten = page.locator('.adjust details').first();
  await sweeten.getByRole('textbox', { name: 'How much of it there is' }).fill('1 L');
  await sweeten.getByRole('textbox', { name: 'Its sugar now' }).fill('10 g/L');
  await sweeten.getByRole('textbox', { name: 'Sugar wanted' }).fill('30 g/L');
  await expect(sweeten.getByText('Stir in 20 g of sugar; it then makes 1.01 L.')).toBeVisible();
  await sweeten.getByRole('textbox', { name: 'Sugar wanted' }).fill('5 g/L');
  await expect(sweeten.getByText('It already holds 10 g/L; to go down to 5 g/L, dilute it.')).toBeVisible();
});

test('a base’s reading is corrected and cautioned before it is logged, a titration worked out', async ({ sample }) => {
  const { page } = sample;
  const { bases } = await sample.ask('bases:list', {});
  const base = bases[0];
  await sample.open(`/bases/${base?.id}`);
  const line = page.getByRole('textbox', { name: 'Reading', exact: true });
  await line.fill('1.038, pH 4.7, 60 c');
  await expect(page.getByText(/can be corrected between 5 and 35\s°C/)).toBeVisible();
  await page.getByRole('button', { name: 'Log it' }).click();
  expect((await sample.ask('bases:open', { base: base?.id ?? '' })).readings).toEqual([]);
  await line.fill('1.038, pH 4.7, 30 c');
  await expect(page.getByText('Corrected to 20 °C: SG 1.041 (read 1.038 at 30 °C, made for 20 °C).')).toBeVisible();
  await expect(page.getByText(/pH 4\.7 is above 4\.6, the line of acid foods/)).toBeVisible();
  await expect(page.getByText(/guidance for kombucha is between 2\.5 and 4\.2/)).toBeVisible();
  await line.press('Enter');
  await expect(page.getByText('SG 1.041, pH 4.7, 30 °C')).toBeVisible();
  // The hydrometer is the kitchen's: its choice is found again.
  await line.fill('1.038, 30 c');
  await page.getByRole('combobox', { name: 'The hydrometer is made for' }).selectOption('fahrenheit60');
  await page.waitForTimeout(600);
  await page.goto('about:blank');
  await sample.open(`/bases/${base?.id}`);
  await line.fill('1.038, 30 c');
  await expect(page.getByRole('combobox', { name: 'The hydrometer is made for' })).toHaveValue('fahrenheit60');
  await line.fill('6 brix');
  await expect(page.getByText(/alcohol bends light too/)).toBeVisible();
  await page.locator('summary', { hasText: 'Acidity from a titration' }).click();
  await page.getByRole('textbox', { name: 'Sample, in mL' }).fill('0');
  await page.getByRole('textbox', { name: 'Titrant used, in mL' }).fill('12');
  await page.getByRole('button', { name: 'Log the acidity' }).click();
  await expect(page.getByText('0 is out of range; permitted: more than 0 to 1000 mL.')).toBeVisible();
  // 12 mL of 0.1 N on 15 mL are 80 meq/L: 6.0 g/L of tartaric acid at 0.075 g a milliequivalent (AOAC 942.15).
  await page.getByRole('textbox', { name: 'Sample, in mL' }).fill('15');
  await page.getByRole('combobox', { name: 'Given as' }).selectOption('tartaric');
  await expect(page.getByText(/^6 g\/L as tartaric acid \(80 meq\/L\), to pH 8\.1 \(AOAC 942\.15/)).toBeVisible();
  await page.getByRole('button', { name: 'Log the acidity' }).click();
  await expect(page.getByText(/Titrated 15\smL with 12\smL of 0\.1 N/)).toBeVisible();
  const { readings } = await sample.ask('bases:open', { base: base?.id ?? '' });
  expect(readings).toMatchObject([
    { sg: expect.closeTo(1.0407, 4), ph: 4.7, temperature_C: 30 },
    { acidity_g_per_L: expect.closeTo(6.0, 2), acidityAs: 'tartaric' },
  ]);
});

test('a US kitchen reads and shows its own measures', async ({ workbench }) => {
  const { page } = workbench;
  await workbench.ask('kitchen:change', { measures: 'us' });
  await workbench.open('/bases');
  await page.getByRole('button', { name: 'Start a base' }).first().click();
  const form = page.getByRole('dialog');
  await form.getByRole('textbox', { name: 'Name' }).fill('Gallon');
  await form.getByRole('textbox', { name: 'How much of it' }).fill('½ gal');
  await form.getByRole('textbox', { name: 'Sugar at the start' }).fill('8 oz/gal');
  await form.getByRole('textbox', { name: 'How warm it stands' }).fill('72 °F');
  await form.getByRole('button', { name: 'Start a base' }).click();
  await page.getByRole('link', { name: 'Gallon' }).click();
  await expect(page.getByText('2 qt left of 2 qt')).toBeVisible();
  await page.getByRole('button', { name: 'Change' }).click();
  await form.getByRole('textbox', { name: 'Sugar now' }).fill('6 oz/gal');
  await form.getByRole('button', { name: 'Keep' }).click();
  await expect(page.getByText('6 oz/gal')).toBeVisible();
  const [base] = (await workbench.ask('bases:list', {})).bases;
  // Only what was changed went: the half gallon is still 1892.705892 mL (NIST SP 811).
  expect(base).toMatchObject({
    volume_mL: expect.closeTo(1892.705892, 6),
    temperature_C: expect.closeTo(22.222, 3),
    sugarStart_g_per_L: expect.closeTo(59.913, 2),
  });
});

test('pantry, bases and the recipe’s tools are accessible in light and dark, and fit a small telephone', async ({
  sample,
}) => {
  test.slow();
  const { page } = sample;
  await sample.ask('pantry:stock', { name: 'ginger', onHand_g: 100, price_per_kg: 10 });
  const [recipe] = (await sample.ask('recipes:list', {})).recipes;
  const [base] = (await sample.ask('bases:list', {})).bases;
  for (const path of ['/pantry', `/bases/${base?.id}`, `/house-recipes/${recipe?.id}`]) {
    await sample.open(path);
    await page.setViewportSize({ width: 1280, height: 860 });
    await page.waitForTimeout(300);
    if (path === '/pantry') await page.getByRole('searchbox').fill('currants');
    for (const summary of await page.locator('summary').all()) await summary.click();
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
  }
  await sample.open('/pantry');
  await page.getByRole('searchbox').fill('blackcurrants');
  await page.locator('summary').click();
  for (const name of ['On hand and price: blackcurrants', 'Your own figures: blackcurrants']) {
    await page.getByRole('button', { name }).click();
    await expectAccessible(page);
    await page.keyboard.press('Escape');
  }
});
