import type { Page } from '@playwright/test';
import { fillDaysPlan, jarCard, onlyTrial, question } from './days-plan.ts';
import { expect, test } from './workbench.ts';

function openLine(page: Page, words: RegExp | string) {
  return page.locator('.plan-open').getByRole('button', { name: words });
}

test('an empty kitchen leads to its first plan, and the plan is saved as it was typed', async ({ workbench }) => {
  const { page } = workbench;
  await workbench.open('/trials');
  await page.getByRole('link', { name: 'Plan your first trial' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Plan a trial');
  await fillDaysPlan(page);
  await expect(page.getByText('Everything is said, and it can work.')).toBeVisible();
  await page.getByRole('button', { name: 'Keep this plan' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(question);
  await expect(page.getByText('The trial is planned: 3 jars.')).toBeVisible();
  const trial = await onlyTrial(workbench);
  expect(trial).toMatchObject({
    question,
    factor: 'days',
    baseEach_mL: 800,
    replicates: 1,
    levels: ['1 day', '2 days', '3.5 days'],
    held: { cover: 'cloth', also: { stirring: 'once a day' } },
  });
  expect(trial.held.temperature_C).toBeCloseTo((72 - 32) / 1.8, 6);
  // A cup of raspberries weighs 123 g. Source: USDA SR28, NDB 09302.
  expect(trial.held.additions).toMatchObject([
    { ingredient: 'raspberries', mass_g: 61.5, asWritten: '1/2 cup', state: 'fresh' },
    { ingredient: 'mint', mass_g: 4.5, asWritten: 'a handful', leftIn: false },
  ]);
  expect(trial.jarsWhole.map(({ label, levelName, isControl }) => [label, levelName, isControl])).toEqual([
    ['A', '1 day', false],
    ['B', '2 days', true],
    ['C', '3.5 days', false],
  ]);
  expect(trial.jarsWhole.map(({ plannedPull }) => plannedPull.slice(0, 16))).toEqual([
    '2026-05-02T09:00',
    '2026-05-03T09:00',
    '2026-05-04T21:00',
  ]);
});

test('undo in the toast takes the saved trial back and brings the plan back as it was', async ({ workbench }) => {
  const { page } = workbench;
  await workbench.open('/trials/new');
  await fillDaysPlan(page);
  await page.getByRole('button', { name: 'Keep this plan' }).click();
  await page.getByRole('status').getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Plan a trial');
  await expect(page.getByLabel('What do you want to know?')).toHaveValue(question);
  expect((await workbench.ask('trials:list', {})).trials).toEqual([]);
});

test('a half-made plan waits as it was left, also over a reload; starting over forgets it', async ({ workbench }) => {
  const { page } = workbench;
  await workbench.open('/trials/new');
  await page.getByLabel('What do you want to know?').fill('Half a question');
  await jarCard(page, 'A').getByRole('textbox', { name: 'Days' }).fill('two');
  await page.getByRole('link', { name: 'Trials' }).first().click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Trials');
  await page.goBack();
  await expect(page.getByLabel('What do you want to know?')).toHaveValue('Half a question');
  await expect(jarCard(page, 'A').getByRole('textbox', { name: 'Days' })).toHaveValue('two');
  await expect
    .poll(async () => (await workbench.ask('drafts:open', { name: 'plan' })).draft?.body)
    .toMatchObject({ question: 'Half a question' });
  await page.reload();
  await expect(jarCard(page, 'A').getByRole('textbox', { name: 'Days' })).toHaveValue('two');
  await page.getByRole('button', { name: 'Start over' }).click();
  await page.getByRole('button', { name: 'Forget it' }).click();
  await expect(page.getByLabel('What do you want to know?')).toHaveValue('');
  await expect.poll(async () => (await workbench.ask('drafts:open', { name: 'plan' })).draft).toBeNull();
  expect((await workbench.ask('undo:state', {})).undo ?? '').not.toContain('Half a question');
});

test('each thing that can’t work is a sentence at its field, and one tap leads out where it can', async ({
  workbench,
}) => {
  const { page } = workbench;
  await workbench.open('/trials/new');
  await fillDaysPlan(page);

  const available = page.getByLabel('How much is at hand');
  await available.fill('2 L');
  await expect(available).toHaveAccessibleDescription(/3 jars with 800\smL of base each need 2\.4\sL; there are 2\sL/);
  await page.getByRole('button', { name: 'Pour 666 mL into each', exact: true }).click();
  await expect(page.getByLabel('Base in each jar')).toHaveValue('666');
  await expect(available).not.toHaveAttribute('aria-invalid', 'true');

  await available.fill('5000');
  const each = page.getByLabel('Base in each jar');
  await each.fill('980');
  await expect(each).toHaveAccessibleDescription(/would hold 1\.0\d\sL in a jar of 1\sL/);
  await page.getByRole('button', { name: /^Pour \d+ mL into each$/ }).click();
  await expect(each).not.toHaveAttribute('aria-invalid', 'true');

  const days = jarCard(page, 'A').getByRole('textbox', { name: 'Days' });
  await days.fill('-1');
  await expect(days).toHaveAccessibleDescription(/would be pulled before it starts/);
  await days.fill('one');
  await expect(days).toHaveAccessibleDescription(/Write days as a number/);
  await days.fill('2');
  await expect(jarCard(page, 'B')).toHaveAccessibleDescription(/are the same|Two levels are called/);
  await days.fill('36 h');
  await jarCard(page, 'A').getByLabel('Called').fill('2 days');
  await expect(jarCard(page, 'B').getByLabel('Called')).toHaveAccessibleDescription(/Two levels are called/);
  await jarCard(page, 'A').getByLabel('Called').fill('');

  const weight = page.getByRole('group', { name: 'Put into every jar' }).getByLabel('How much').first();
  await weight.fill('1,500');
  await expect(weight).toHaveAccessibleDescription(/does not begin with one clear number/);
  await weight.fill('75');

  const warmth = page.getByLabel('Temperature');
  await warmth.fill('60');
  await expect(warmth).toHaveAccessibleDescription(/At 60\s°C these cultures do not work/);
  await warmth.fill('22');
  await expect(page.getByText('Everything is said, and it can work.')).toBeVisible();
});

test('a plan without its control, and one with two factors moved, say so; the way out is a tap', async ({
  workbench,
}) => {
  const { page } = workbench;
  await workbench.open('/trials/new');
  await page.getByLabel('What do you want to know?').fill('Which fruit?');
  await page.getByRole('radio', { name: 'Which fruit' }).check();
  for (const [letter, name, amount] of [
    ['A', 'raspberries', '75 g'],
    ['B', 'pears', '95 g'],
  ] as const) {
    await jarCard(page, letter).getByLabel('Ingredient').fill(name);
    await jarCard(page, letter).getByLabel('How much').fill(amount);
  }
  await page.getByRole('textbox', { name: 'Days' }).fill('3');
  await page.getByLabel('How much is at hand').fill('3000');
  await page.getByLabel('Base in each jar').fill('800');
  const inB = jarCard(page, 'B').getByRole('group', { name: 'Put into this jar' });
  await expect(inB).toHaveAccessibleDescription(/the amount moves too/);
  await inB.getByRole('button', { name: 'Weigh 75 g here too' }).click();
  await expect(inB.getByLabel('How much')).toHaveValue('75 g');
  await page.getByRole('button', { name: 'Keep this plan' }).click();
  await expect(jarCard(page, 'A').getByRole('radio')).toHaveAccessibleDescription(/No jar is the control yet/);
  expect((await workbench.ask('trials:list', {})).trials).toEqual([]);
  await jarCard(page, 'A').getByRole('radio').check();
  await page.getByRole('button', { name: 'Keep this plan' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Which fruit?');
  expect((await onlyTrial(workbench)).levels).toEqual(['raspberries', 'pears']);
});

test('what is missing is named when saving is tried, and each line leads to its field', async ({ workbench }) => {
  const { page } = workbench;
  await workbench.open('/trials/new');
  await expect(page.locator('.field-fault')).toHaveCount(0);
  await page.getByRole('button', { name: 'Keep this plan' }).click();
  await expect(page.getByLabel('What do you want to know?')).toBeFocused();
  await expect(page.getByLabel('What do you want to know?')).toHaveAccessibleDescription(/Ask the question/);
  await openLine(page, /Jar B: Say how many days/).click();
  await expect(jarCard(page, 'B').getByRole('textbox', { name: 'Days' })).toBeFocused();
});

test('the shelf follows the numbers while they are typed, and both calendars are told in words', async ({
  workbench,
}) => {
  const { page } = workbench;
  await workbench.open('/trials/new');
  await fillDaysPlan(page);
  const shelf = page.getByRole('list', { name: 'The jars as planned' });
  await expect(shelf.getByRole('img')).toHaveCount(3);
  await expect(shelf.getByRole('img', { name: /Jar B, 2 days, the control: .*raspberries.*mint/ })).toBeVisible();
  await page.getByLabel('Jars of each').selectOption('2');
  await expect(shelf.getByRole('img')).toHaveCount(6);
  await page.getByLabel('Jars of each').selectOption('1');
  await page.getByLabel('Base in each jar').fill('990');
  await expect(shelf.getByText('runs over').first()).toBeVisible();
  await page.getByLabel('Base in each jar').fill('800');
  const lines = page.locator('.time-line');
  await expect(lines).toHaveCount(2);
  await expect(lines.first()).toContainText('A: starts Fri 1 May, 09:00, pulled Sat 2 May, 09:00');
  await expect(lines.nth(1)).toContainText('A: starts Sun 3 May, 21:00, pulled Mon 4 May, 21:00');
  await page.getByRole('radio', { name: /Start one after the other/ }).check();
  await page.getByRole('button', { name: 'Keep this plan' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(question);
  expect((await onlyTrial(workbench)).calendar).toBe('staggered-start');
});

test('from the sample kitchen: a base is chosen by what is left, and a past trial is planned again', async ({
  sample,
}) => {
  const { page } = sample;
  await sample.open('/trials/new');
  const { bases } = await sample.ask('bases:list', {});
  const base = bases.find(({ left_mL }) => left_mL >= 1000);
  if (base === undefined) throw new Error('the sample kitchen has a base with a litre left');
  await page.getByLabel('What do you want to know?').fill('Does the airlock matter?');
  await page.getByRole('radio', { name: 'Which cover' }).check();
  await jarCard(page, 'A').getByLabel('Cover').selectOption('cloth');
  await jarCard(page, 'B').getByLabel('Cover').selectOption('airlock');
  await jarCard(page, 'A').getByRole('radio').check();
  await page.getByLabel('Base', { exact: true }).selectOption(base.id);
  await page.getByLabel('Base in each jar').fill('900');
  await expect(page.getByLabel('Base', { exact: true })).toHaveAccessibleDescription(/2 jars with 900\smL/);
  await page.getByRole('button', { name: /^Pour \d+ mL into each$/ }).click();
  await page.getByRole('textbox', { name: 'Days' }).fill('3');
  await page.getByRole('button', { name: 'Keep this plan' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Does the airlock matter?');
  const after = await sample.ask('bases:open', { base: base.id });
  expect(after.left_mL).toBeLessThan(base.left_mL);

  await sample.open('/trials');
  await page.getByRole('link', { name: 'Do frozen plums keep up with fresh ones?' }).click();
  await page.getByRole('link', { name: 'Plan again like this' }).click();
  await expect(page.getByLabel('What do you want to know?')).toHaveValue('Do frozen plums keep up with fresh ones?');
  await expect(jarCard(page, 'B').getByLabel('State')).toHaveValue('frozen');
  await expect(jarCard(page, 'A').getByRole('radio')).toBeChecked();
  await expect(page.getByLabel('Jars of each')).toHaveValue('2');
});
