import { expectAccessible, expectNoSidewaysScroll, tabTo } from './looked-over.ts';
import { todaysKitchen } from './todays-kitchen.ts';
import { expect, test } from './workbench.ts';

test('by keyboard: a jar’s reading is logged from Today in three actions, and its look is done with it', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { jars } = await todaysKitchen(workbench);
  await workbench.open('/');
  const overdue = page.getByRole('list', { name: 'Overdue' });
  await expect(overdue.getByRole('link', { name: 'Pull A' })).toBeVisible();
  await expect(overdue.getByRole('link', { name: 'Look at B and C' })).toBeVisible();
  // One: the jar. Two: the line. Three: Enter.
  await overdue.getByRole('button', { name: 'Reading of jar B' }).focus();
  await page.keyboard.press('Enter');
  await page.keyboard.type('4.2 brix, ph 3.4, 21c');
  await expect(page.getByText('Understood: 4.2 °Bx, pH 3.4, 21 °C')).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(page.getByText('Logged a reading of jar B.')).toBeVisible();
  await expect(overdue.getByRole('link', { name: 'Look at C' })).toBeVisible();
  const { readings } = await workbench.ask('jars:open', { jar: jars[1]?.id ?? '' });
  expect(readings).toMatchObject([{ brix: 4.2, ph: 3.4, temperature_C: 21 }]);
  await tabTo(page, 'button', 'Looked: nothing new: C');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Looked at C: nothing new.')).toBeVisible();
  await expect(page.getByRole('link', { name: /^Look at/ })).toHaveCount(0);
});

test('by mouse: pull, strain and feed in one touch each, with undo; put off with a reason and back again', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { base, culture, jars } = await todaysKitchen(workbench);
  await workbench.open('/');
  await page.getByRole('button', { name: 'Pulled it: A' }).click();
  await expect(page.getByText('Pulled A.')).toBeVisible();
  await page.getByRole('button', { name: 'Undo', exact: true }).last().click();
  await expect(page.getByText(/^Undone: Pull jar A/)).toBeVisible();
  expect((await workbench.ask('jars:open', { jar: jars[0]?.id ?? '' })).jar.state).toBe('fermenting');
  await page.getByRole('button', { name: 'Strained it: Ginger base 3' }).click();
  await expect(page.getByText('Strained Ginger base 3.')).toBeVisible();
  expect((await workbench.ask('bases:open', { base })).strainedAt).not.toBeNull();
  await page.getByRole('button', { name: 'Later… Feed Grandmother’s grains' }).click();
  await page.getByRole('textbox', { name: 'Why (may stay empty)' }).fill('no sugar in the house');
  await page.getByRole('button', { name: 'Tomorrow' }).click();
  const off = page.getByRole('list', { name: 'Put off' });
  await expect(off.getByText('no sugar in the house')).toBeVisible();
  await off.getByRole('button', { name: /^Bring back now/ }).click();
  await page.getByRole('button', { name: 'Fed it: Grandmother’s grains' }).click();
  await expect(page.getByText('Fed Grandmother’s grains.')).toBeVisible();
  expect((await workbench.ask('cultures:open', { culture })).log.at(-1)).toMatchObject({ what: 'refreshed' });
});

test('a bottle is opened to try, from Today on, and says how it poured; a jar is bottled with its cautions', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { jars } = await todaysKitchen(workbench);
  await workbench.open('/');
  await page.getByRole('link', { name: 'Open one to try' }).click();
  await expect(page.getByRole('heading', { name: 'Bottles', level: 1 })).toBeVisible();
  await expect(page.getByText(/Nobody says what pressure this vessel is made for/)).toBeVisible();
  await page.getByRole('button', { name: /^Chilled: R-12/ }).click();
  await expect(page.getByText(/^R-12: .*: chilled\.$/)).toBeVisible();
  await page.getByRole('button', { name: /^Open one: R-12/ }).click();
  await page.getByRole('button', { name: 'gushed' }).click();
  await expect(page.getByText('2 of 3 left')).toBeVisible();
  await expect(page.getByText(/^It gushed: chill the rest well/)).toBeVisible();
  await page.getByRole('link', { name: 'What changed, and when: R-12' }).click();
  await expect(
    page.getByRole('list', { name: /^What changed, and when: bottles R-12/ }).getByRole('listitem'),
  ).toHaveCount(2);
  await page.goBack();
  await expect(page.getByText('2 of 3 left')).toBeVisible();
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/jars/${jars[2]?.id}`);
  await page.getByRole('button', { name: 'Bottle it: jar C' }).click();
  const form = page.getByRole('dialog');
  await form.getByRole('textbox', { name: 'How many bottles' }).fill('2.5');
  await form.getByRole('textbox', { name: 'Size of a bottle' }).fill('½ pt');
  await form.getByRole('textbox', { name: 'Pressure it is made for' }).fill('60 psi');
  await form.getByRole('textbox', { name: 'Sugar at closing' }).fill('20 g/L');
  await expect(form.getByText(/from 3\sbar \(44\spsi\) on it is the pressure of sparkling wine/)).toBeVisible();
  await form.getByRole('button', { name: 'Keep' }).click();
  await expect(form.getByText('Write a whole number, from 1 to 10,000.')).toBeVisible();
  await form.getByRole('textbox', { name: 'How many bottles' }).fill('2');
  await form.getByRole('button', { name: 'Keep' }).click();
  await expect(form).toHaveCount(0);
  const { bottlings } = await workbench.ask('bottles:list', { jar: jars[2]?.id ?? '' });
  // Half a US pint is 236.588 mL, 60 psi are 4.137 bar (NIST SP 811).
  expect(bottlings).toMatchObject([
    { count: 2, size_mL: expect.closeTo(236.588, 2), ratedGauge_bar: expect.closeTo(4.137, 2), sugar_g_per_L: 20 },
  ]);
});

test('a culture is weighed, split and woken; the line of its weights has its table', async ({ workbench }) => {
  const { page } = workbench;
  const { culture } = await todaysKitchen(workbench);
  await workbench.open('/bases');
  await page.getByRole('link', { name: 'Grandmother’s grains' }).click();
  await expect(page.getByText('From 150 g to 180 g in 90 days.')).toBeVisible();
  await page.getByRole('button', { name: 'Weighed it' }).click();
  await expect(page.getByText('Say what it weighs.')).toBeVisible();
  await page.getByRole('textbox', { name: 'What it weighs now' }).fill('½ lb');
  await page.getByRole('button', { name: 'Refreshed it' }).click();
  await expect(page.getByText('Grandmother’s grains is refreshed.')).toBeVisible();
  await page.locator('summary', { hasText: 'Weight as a table' }).click();
  // Half a pound is 226.796 g (NIST SP 811).
  await expect(page.getByRole('cell', { name: '227 g' })).toBeVisible();
  await page.getByRole('button', { name: 'Split it…' }).click();
  const form = page.getByRole('dialog');
  await form.getByRole('textbox', { name: 'Name of the part' }).fill('For Ann');
  await form.getByRole('textbox', { name: 'What the part weighs' }).fill('80 g');
  await form.getByRole('button', { name: 'Split it' }).click();
  await page.getByRole('link', { name: 'For Ann' }).click();
  await expect(page.getByRole('link', { name: 'Grandmother’s grains' })).toBeVisible();
  await page.getByRole('button', { name: 'Fed it, to wake it' }).click();
  await expect(page.getByText('water kefir, is being woken: 1 feed so far')).toBeVisible();
  const part = (await workbench.ask('cultures:open', { culture })).children[0];
  expect(await workbench.ask('cultures:open', { culture: part?.id ?? '' })).toMatchObject({
    weight_g: 80,
    isReviving: true,
  });
});

test('a base is started with what went in and how long it is planned, and the trial’s days are saved as a calendar', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { trial } = await todaysKitchen(workbench);
  await workbench.open('/bases');
  await page.getByRole('button', { name: 'Start a base' }).first().click();
  const form = page.getByRole('dialog');
  await form.getByRole('textbox', { name: 'Name' }).fill('Hibiscus base');
  await form.getByRole('textbox', { name: 'How much of it' }).fill('3 L');
  await form.getByRole('textbox', { name: 'How long it ferments' }).fill('36 h');
  await form.getByRole('textbox', { name: 'What went in' }).fill('180 g sugar\na pinch of minerals');
  await form.getByRole('button', { name: 'Start a base' }).click();
  await page.getByRole('link', { name: 'Hibiscus base' }).click();
  await expect(page.getByText('a pinch of minerals')).toBeVisible();
  await expect(page.getByText('36 hours')).toBeVisible();
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/trials/${trial}`);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save calendar' }).click();
  expect((await download).suggestedFilename()).toBe('how-many-days-with-raspberries.ics');
  await expect(page.getByText(/\.ics with 3 entries was handed to your downloads\./)).toBeVisible();
});

for (const screen of ['/', '/bases', '/bottles'] as const) {
  test(`${screen} is whole in light and dark, full and empty, and on a small telephone`, async ({ workbench }) => {
    const { page } = workbench;
    await workbench.open(screen);
    await expectAccessible(page);
    await todaysKitchen(workbench);
    await page.goto('about:blank');
    await workbench.open(screen);
    if (screen === '/') {
      await page.getByRole('button', { name: 'Reading of jar C' }).click();
      await page.getByRole('button', { name: /^Later… Feed/ }).click();
    }
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
  });
}

test('a culture’s page is whole in light and dark and on a small telephone', async ({ workbench }) => {
  const { page } = workbench;
  const { culture } = await todaysKitchen(workbench);
  await workbench.open(`/cultures/${culture}`);
  await expect(page.getByRole('img').first().or(page.locator('.chart svg').first())).toBeVisible();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
});
