import type { Page } from '@playwright/test';
import { expectAccessible, expectNoSidewaysScroll, tabTo } from './looked-over.ts';
import { hoursAgo, pulledTrial, taste } from './tasted-trial.ts';
import { expect, test, type Workbench } from './workbench.ts';

async function pearTrial({ ask }: Workbench): Promise<string> {
  const { trials } = await ask('trials:list', {});
  return trials.find(({ question }) => question.includes('pear and ginger'))?.id ?? '';
}

/** How many pages a PDF has, by its page objects. */
function pagesOf(pdf: Buffer): number {
  return pdf.toString('latin1').match(/\/Type\s*\/Page(?![a-z])/g)?.length ?? 0;
}

async function expectOnePage(page: Page): Promise<void> {
  await page.emulateMedia({ media: 'print' });
  for (const format of ['A4', 'Letter'] as const) expect(pagesOf(await page.pdf({ format })), format).toBe(1);
}

test('by mouse, from the sample: the winner is chosen with its reason, written down, seen, and undone', async ({
  sample,
}) => {
  const { page } = sample;
  const trial = await pearTrial(sample);
  await sample.open(`/trials/${trial}`);
  await page.getByRole('link', { name: 'Promote' }).click();
  await expect(page.getByRole('radio', { name: /3 days/ })).toBeChecked({ timeout: 20_000 });
  await expect(
    page.getByText(
      /“3 days” is chosen for you: the panel liked it best \(7\.4 on the scale from 1 to 9\), and is very sure/,
    ),
  ).toBeVisible();
  await expect(page.getByRole('row', { name: 'pears, fresh 114 g 80 g' })).toBeVisible();
  await expect(page.getByRole('row', { name: /^Liking 7\.4 ± 1\.1 8$/ })).toBeVisible();
  await expect(page.getByText(/gas builds up in anything closed/)).toBeVisible();
  await expect(page.getByText(/Selling is another matter/)).toBeVisible();
  const before = (await sample.ask('recipes:list', {})).recipes.length;

  await page.getByRole('textbox', { name: 'Name of the house recipe' }).fill('Stall pear');
  await page.getByRole('textbox', { name: 'Why this one' }).fill('Guests asked for it.');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Stall pear' })).toBeVisible();
  const { recipes } = await sample.ask('recipes:list', {});
  expect(recipes).toHaveLength(before + 1);
  const recipe = recipes.find(({ name }) => name === 'Stall pear')?.id ?? '';
  const whole = await sample.ask('recipes:open', { recipe });
  expect(whole.versionList).toHaveLength(1);
  expect(whole.versionList[0]).toMatchObject({
    number: 1,
    basis: 'panel',
    why: 'Guests asked for it.',
    base_mL: 700,
    formula: { days: 3, cover: 'cloth', temperature_C: 22 },
    alsoHeld: { stirring: 'once a day' },
    chain: { trial: { id: trial }, level: { name: '3 days' }, jars: [{ label: 'C' }], tastings: [{ scores: 48 }] },
  });
  await page.locator('summary').getByText('The scores behind it').click();
  await expect(page.getByRole('table', { name: 'The scores behind it' }).getByRole('row')).toHaveCount(9);

  await page
    .getByRole('button', { name: /^undo: promote/i })
    .first()
    .click();
  await expect(page.getByRole('heading', { level: 1, name: 'This house recipe is not here' })).toBeVisible();
  expect((await sample.ask('recipes:list', {})).recipes).toHaveLength(before);
  await page.getByRole('link', { name: 'All house recipes' }).click();
  await expect(page.getByRole('link', { name: 'Pear and ginger, three days' })).toBeVisible();
  await expect(page.getByRole('link', { name: 'Stall pear' })).toHaveCount(0);
});

test('by keyboard alone, from an empty kitchen, on the maker’s own sips: the recipe says so plainly', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { trial, jars } = await pulledTrial(workbench);
  await workbench.ask('sips:log', { jar: jars[1]?.id ?? '', at: hoursAgo(30), tang: 5, liking: 7 });
  await workbench.open(`/trials/${trial}/promote`);
  await expect(page.getByText(/No panel has tasted this trial/)).toBeVisible();
  await expect(page.getByRole('radio', { checked: true })).toHaveCount(0);

  await tabTo(page, 'radio', /1 day/);
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('radio', { name: /2 days/ })).toBeChecked();
  await tabTo(page, 'textbox', 'Name of the house recipe');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('Raspberry two-day');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: 'Raspberry two-day' })).toBeVisible();
  await expect(page.getByText(/Decided by the maker’s own sips, without a panel/).first()).toBeVisible();
  const [recipe] = (await workbench.ask('recipes:list', {})).recipes;
  const { versionList } = await workbench.ask('recipes:open', { recipe: recipe?.id ?? '' });
  expect(versionList[0]).toMatchObject({
    basis: 'sips',
    target: [
      { attribute: 'tang', mean: 5, spread: null, n: 1 },
      { attribute: 'liking', mean: 7, spread: null, n: 1 },
    ],
  });

  await tabTo(page, 'button', 'Log a batch');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog')).toBeVisible();
  await tabTo(page, 'textbox', 'Lot');
  await page.keyboard.type('L-7');
  await page.keyboard.press('Enter');
  await expect(page.getByText('L-7', { exact: true })).toBeVisible();
  expect((await workbench.ask('recipes:open', { recipe: recipe?.id ?? '' })).batches).toMatchObject([
    { version: 1, lot: 'L-7' },
  ]);
});

test('without anybody’s taste it is written down as that, and a jar that was never started can’t be chosen', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { trial, jars } = await pulledTrial(workbench);
  await workbench.ask('jars:discard', { jars: [jars[2]?.id ?? ''], reason: 'broke' });
  await workbench.open(`/trials/${trial}/promote`);
  await expect(page.getByRole('radio', { name: /3 days/ })).toBeDisabled();
  await page.getByRole('radio', { name: /1 day/ }).check();
  await expect(page.getByText(/Written down without any tasting/).first()).toBeVisible();
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Raspberries, 1 day' })).toBeVisible();
  const [recipe] = (await workbench.ask('recipes:list', {})).recipes;
  expect(recipe).toMatchObject({ name: 'Raspberries, 1 day', basis: 'none', latest: 1 });
});

test('the same name makes the next version, and says what it changes before and after', async ({ workbench }) => {
  const { page } = workbench;
  const prepared = await pulledTrial(workbench);
  await taste(workbench, prepared, ['Ana', 'Ben', 'Cleo', 'Dora', 'Emil', 'Fay']);
  await workbench.ask('recipes:promote', { trial: prepared.trial, level: '3 days', name: 'House raspberry' });
  await workbench.open(`/trials/${prepared.trial}/promote`);
  await expect(page.getByRole('radio', { name: /2 days/ })).toBeChecked({ timeout: 20_000 });
  await page.getByRole('textbox', { name: 'Name of the house recipe' }).fill('house RASPBERRY');
  await expect(page.getByText('“House raspberry” exists: this becomes its version 2.')).toBeVisible();
  await expect(page.getByText('Days: 3 became 2.')).toBeVisible();
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByRole('heading', { name: /^Version 2/ })).toBeVisible();
  await expect(page.getByText('Days: 3 became 2.')).toBeVisible();
  await page.getByRole('button', { name: 'Show version 1' }).click();
  await expect(page.getByRole('listitem').filter({ hasText: /^3 days$/ })).toBeVisible();
});

test('a house recipe is scaled to any volume, and rounding to the kitchen’s scale says what it did', async ({
  sample,
}) => {
  const { page } = sample;
  const [recipe] = (await sample.ask('recipes:list', {})).recipes;
  await sample.open(`/house-recipes/${recipe?.id}`);
  await page.getByRole('textbox', { name: 'How much to make' }).fill('4000');
  const scaled = await sample.ask('recipes:scale', { recipe: recipe?.id ?? '', volume_mL: 4000 });
  const pears = scaled.additions[0]?.mass_g ?? 0;
  await expect(page.getByText(`${Math.round(pears)} g pears, fresh`).first()).toBeVisible();
  await page.getByRole('combobox', { name: 'Weigh to' }).selectOption({ label: '5 g' });
  const ginger = scaled.additions[1]?.mass_g ?? 0;
  const rounded = Math.round(ginger / 5) * 5;
  const change = ((rounded - ginger) / ginger) * 100;
  await expect(
    page.getByText(`rounded from ${ginger.toFixed(1)} g (${change < 0 ? '−' : '+'}${Math.abs(change).toFixed(1)} %)`),
  ).toBeVisible();
  await page.getByRole('textbox', { name: 'How much to make' }).fill('much');
  await expect(page.getByText('"much" does not begin with one clear number')).toBeVisible();
});

test('the printed card is one page of A4 and of US letter, in light colours, with everything a cook needs', async ({
  sample,
}) => {
  const { page } = sample;
  const [recipe] = (await sample.ask('recipes:list', {})).recipes;
  await sample.open(`/house-recipes/${recipe?.id}`);
  await page.getByRole('textbox', { name: 'How much to make' }).fill('4000');
  await expect(page.getByText('3.58 L base').first()).toBeVisible();
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  const card = page.getByRole('article');
  await expect(card).toBeVisible();
  // What is seen, not what is in the page: the rest is hidden on paper.
  // biome-ignore lint/performance/useDomNodeTextContent: only innerText leaves out what is not shown
  const words = await page.locator('body').innerText();
  for (const needed of [
    'Pear and ginger, three days',
    'Version 1',
    'Makes 4 L',
    '3.58 L base',
    'pears, fresh',
    'ginger root, fresh',
    '3 days',
    '22 °C',
    'under cloth',
    'once a day',
    'Liking 7.4 ± 1.1',
    'gas builds up in anything closed',
    'Could pass 0.5 % vol',
    'Selling is another matter',
    'How many days should pear and ginger stand?',
    'jar C',
    '48 scores',
    'Decided by a panel',
  ]) {
    expect(words).toContain(needed);
  }
  expect(words).not.toContain('Log a batch');
  const [ink, paper] = await card.evaluate((element) => [
    getComputedStyle(element).color,
    getComputedStyle(document.documentElement).backgroundColor,
  ]);
  expect(ink).toBe('rgb(0, 0, 0)');
  expect(paper).toBe('rgb(255, 255, 255)');
  await expectOnePage(page);
});

test('a card with as many additions as a formula may have, and long words, still is one page', async ({
  workbench,
}) => {
  const { page } = workbench;
  const long = 'A drink with a name as long as a name may be on a narrow label';
  const additions = Array.from({ length: 40 }, (_, place) => ({
    ingredient: { name: `Own herb number ${place + 1}`, water_g: 80, sugars_g: 5 },
    mass_g: 2 + place / 10,
    state: 'fresh' as const,
  }));
  const { trial, jars } = await workbench.ask('trials:save', {
    question: 'Is it worth forty herbs?',
    factor: 'days',
    levels: [
      { name: '1 day', value: 1 },
      { name: '2 days', value: 2 },
    ],
    control: '1 day',
    held: { additions, cover: 'lid', temperature_C: 22, stirring: 'daily', water: 'filtered', music: 'none' },
    calendar: 'staggered-pull',
    baseAvailable_mL: 5000,
    baseEach_mL: 700,
    vessel: { kind: 'swing-top', capacity_mL: 1000 },
    start: hoursAgo(60),
    seed: 1,
  });
  await workbench.ask('jars:start', { jars: jars.map(({ id }) => id), at: hoursAgo(60) });
  const { recipe } = await workbench.ask('recipes:promote', { trial, level: '2 days', name: long, why: long });
  await workbench.open(`/house-recipes/${recipe}`);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('article')).toContainText('Own herb number 40');
  await expect(page.getByRole('article')).toContainText('How much alcohol it can reach is unknown');
  await expectOnePage(page);
});

test('promoting and the house recipe are accessible in light and dark, and fit a small telephone', async ({
  sample,
}) => {
  const { page } = sample;
  const trial = await pearTrial(sample);
  const [recipe] = (await sample.ask('recipes:list', {})).recipes;
  for (const path of [`/trials/${trial}/promote`, `/house-recipes/${recipe?.id}`, '/house-recipes']) {
    await sample.open(path);
    await page.setViewportSize({ width: 1280, height: 860 });
    await page.waitForTimeout(300);
    for (const summary of await page.locator('summary').all()) await summary.click();
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
  }
});
