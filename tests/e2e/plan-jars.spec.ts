import { fillDaysPlan, onlyTrial } from './days-plan.ts';
import { expect, test } from './workbench.ts';

test('jars are started together, one is pulled, one discarded with its reason; each can be undone', async ({
  workbench,
}) => {
  const { page } = workbench;
  await workbench.open('/trials/new');
  await fillDaysPlan(page);
  await page.getByRole('button', { name: 'Keep this plan' }).click();
  await expect(page.getByText(/Fill the jars in this order/)).toBeVisible();
  await page.getByRole('button', { name: 'Start all 3' }).click();
  await expect(page.getByText('Started A, B and C.')).toBeVisible();
  const states = async () => (await onlyTrial(workbench)).jarsWhole.map(({ state }) => state);
  await expect.poll(states).toEqual(['fermenting', 'fermenting', 'fermenting']);
  await page.getByRole('button', { name: 'Pull jar A' }).click();
  await expect.poll(states).toEqual(['pulled', 'fermenting', 'fermenting']);
  await page.getByRole('button', { name: 'Discard jar C' }).click();
  await page.getByRole('button', { name: 'Discard it' }).click();
  await expect(page.getByRole('dialog').getByRole('alert')).toBeVisible();
  await page.getByLabel('Why?').fill('smells of nail varnish');
  await page.getByRole('button', { name: 'Discard it' }).click();
  await expect(page.getByText(/discarded .*smells of nail varnish/)).toBeVisible();
  await expect.poll(states).toEqual(['pulled', 'fermenting', 'discarded']);
  await page.locator('.toast', { hasText: 'Jar C is discarded' }).getByRole('button', { name: 'Undo' }).click();
  await expect.poll(states).toEqual(['pulled', 'fermenting', 'fermenting']);
});

test('a jar’s page takes a quick reading, a sighting and mould, and lists them', async ({ workbench }) => {
  const { page } = workbench;
  await workbench.open('/trials/new');
  await fillDaysPlan(page);
  await page.getByRole('button', { name: 'Keep this plan' }).click();
  await page.getByRole('button', { name: 'Start all 3' }).click();
  await page.getByRole('link', { name: 'Open jar B' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Jar B: 2 days');
  const reading = page.getByLabel('Reading');
  await reading.fill('4.2');
  await page.getByRole('button', { name: 'Log it' }).click();
  await expect(reading).toHaveAccessibleDescription(/What is 4\.2\?/);
  await reading.fill('4,2 brix, ph 3.4, 21 c');
  await expect(reading).toHaveAccessibleDescription(/^Understood: 4\.2 °Bx, pH 3\.4, 21 °C /);
  await page.getByRole('button', { name: 'Log it' }).click();
  await expect(page.getByRole('list', { name: 'Diary' })).toContainText('4.2 °Bx, pH 3.4, 21 °C');
  await page.getByRole('button', { name: 'first bubbles' }).click();
  await expect(page.getByRole('list', { name: 'Diary' })).toContainText('first bubbles');
  const jar = (await onlyTrial(workbench)).jarsWhole.find(({ label }) => label === 'B');
  if (jar === undefined) throw new Error('jar B is there');
  const kept = await workbench.ask('jars:open', { jar: jar.id });
  expect(kept.readings).toMatchObject([{ brix: 4.2, ph: 3.4, temperature_C: 21 }]);
  expect(kept.sightings).toMatchObject([{ what: 'first-bubbles' }]);
  await page.getByRole('button', { name: 'Mould: discard the jar' }).click();
  await expect(page.getByText('Discarded, the control: mould')).toBeVisible();
  expect((await workbench.ask('jars:open', { jar: jar.id })).jar).toMatchObject({ discardReason: 'mould' });
});
