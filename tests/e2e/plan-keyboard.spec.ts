import type { Locator, Page } from '@playwright/test';
import { onlyTrial } from './days-plan.ts';
import { expect, test } from './workbench.ts';

/** Presses Tab until the field has the focus: it fails where a field can't be reached. */
async function tabTo(page: Page, field: Locator): Promise<void> {
  for (let press = 0; press < 60; press += 1) {
    if (await field.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  await expect(field).toBeFocused();
}

async function typeAt(page: Page, field: Locator, text: string): Promise<void> {
  await tabTo(page, field);
  await page.keyboard.type(text);
}

test('a trial is planned, started and noted by keyboard alone', async ({ workbench }) => {
  const { page } = workbench;
  await workbench.open('/trials');
  await tabTo(page, page.getByRole('link', { name: 'Plan your first trial' }));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Plan a trial');
  await typeAt(page, page.getByLabel('What do you want to know?'), 'Does it need two days or four?');
  // "How many days" is the factor already; an arrow moves it away and back.
  await tabTo(page, page.getByRole('radio', { name: 'How many days' }));
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: 'Fresh or frozen' })).toBeChecked();
  await page.keyboard.press('ArrowLeft');
  const card = (letter: string) => page.getByRole('group', { name: `Jar ${letter}`, exact: true });
  await typeAt(page, card('A').getByRole('textbox', { name: 'Days' }), '2');
  await tabTo(page, card('A').getByRole('radio'));
  await page.keyboard.press('Space');
  await expect(card('A').getByRole('radio')).toBeChecked();
  await typeAt(page, card('B').getByRole('textbox', { name: 'Days' }), '4');
  await typeAt(page, page.getByLabel('How much is at hand'), '1500');
  await typeAt(page, page.getByLabel('Base in each jar'), '800');
  // Not enough: the way out comes next in the order of the keys.
  await page.keyboard.press('Shift+Tab');
  await tabTo(page, page.getByRole('button', { name: 'Pour 750 mL into each', exact: true }));
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('Base in each jar')).toHaveValue('750');
  await page.getByLabel('Base in each jar').focus();
  const cover = page.getByLabel('Cover', { exact: true });
  await tabTo(page, cover);
  await page.keyboard.type('airlock');
  await expect(cover).toHaveValue('airlock');
  await tabTo(page, page.getByRole('button', { name: 'Keep this plan' }));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Does it need two days or four?');
  await expect(page.getByRole('heading', { level: 1 })).toBeFocused();
  const trial = await onlyTrial(workbench);
  expect(trial).toMatchObject({ levels: ['2 days', '4 days'], baseEach_mL: 750, held: { cover: 'airlock' } });

  await tabTo(page, page.getByRole('button', { name: 'Start all 2' }));
  await page.keyboard.press('Enter');
  await tabTo(page, page.getByRole('button', { name: 'Write down what jar A shows' }));
  await page.keyboard.press('Enter');
  await typeAt(page, page.getByLabel('Reading'), 'pH 3.6');
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('Reading')).toHaveValue('');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: 'Write down what jar A shows' })).toBeFocused();
  const [jar] = trial.jarsWhole;
  expect((await workbench.ask('jars:open', { jar: jar?.id ?? '' })).readings).toMatchObject([{ ph: 3.6 }]);
  await page.keyboard.press('Control+z');
  await expect.poll(async () => (await workbench.ask('jars:open', { jar: jar?.id ?? '' })).readings).toEqual([]);
});
