import type { Page } from '@playwright/test';
import type { Workbench } from './workbench.ts';

export const question = 'How many days should raspberry stand?';

/** The card of one jar in the plan’s form. */
export function jarCard(page: Page, letter: string) {
  return page.getByRole('group', { name: `Jar ${letter}`, exact: true });
}

/** A days trial that works, by mouse. */
export async function fillDaysPlan(page: Page): Promise<void> {
  await page.getByLabel('What do you want to know?').fill(question);
  await page.getByRole('radio', { name: 'How many days' }).check();
  await page.getByRole('button', { name: 'Add a jar' }).click();
  for (const [letter, days] of [
    ['A', '1'],
    ['B', '2'],
    ['C', '3,5'],
  ] as const) {
    await jarCard(page, letter).getByRole('textbox', { name: 'Days' }).fill(days);
  }
  await jarCard(page, 'B').getByRole('radio').check();
  await page.getByLabel('How much is at hand').fill('3 L');
  await page.getByLabel('Base in each jar').fill('800');
  const held = page.getByRole('group', { name: 'Put into every jar' });
  await held.getByLabel('Ingredient').fill('raspberries');
  await held.getByLabel('How much').fill('1/2 cup');
  await held.getByRole('button', { name: 'Add an ingredient' }).click();
  await held.getByLabel('Ingredient').nth(1).fill('mint');
  await held.getByLabel('How much').nth(1).fill('a handful');
  await held.getByLabel('On the scale').fill('4,5');
  await held.getByLabel('At the end').nth(1).selectOption('strained out');
  await page.getByLabel('Cover', { exact: true }).selectOption('cloth');
  await page.getByLabel('Temperature').fill('72 F');
  await page.getByRole('button', { name: 'Add a line' }).click();
  await page.getByLabel('What', { exact: true }).fill('stirring');
  await page.getByLabel('How', { exact: true }).fill('once a day');
  await page.getByLabel('The first jar starts').fill('2026-05-01T09:00');
}

/** The one trial of a kitchen, as stored. */
export async function onlyTrial(workbench: Workbench) {
  const { trials } = await workbench.ask('trials:list', {});
  const [first] = trials;
  if (first === undefined) throw new Error('no trial was saved');
  return workbench.ask('trials:open', { trial: first.id });
}
