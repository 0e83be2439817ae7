import { join } from 'node:path';
import { licenceList } from '#scripts/dependencies/licence-list.ts';
import { expectAccessible } from './looked-over.ts';
import { expect, test } from './workbench.ts';

test('a backup is restored in two clicks, and the new kitchen is opened in place of the old one', async ({
  workbench,
}) => {
  const { page, ask } = workbench;
  await ask('kitchen:change', { name: 'Monday kitchen' });
  await ask('store:backup', {});
  await ask('kitchen:change', { name: 'Spoilt kitchen' });
  await workbench.open('/data');
  await expect(page.getByText('Spoilt kitchen').first()).toBeVisible();
  await page.getByRole('button', { name: /^Restore: / }).click();
  await page.getByRole('button', { name: /^Restore into a new file/ }).click();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Open the new kitchen' }).click();
  await expect(page.getByText('Monday kitchen').first()).toBeVisible();
  await expect(page.getByText('The new kitchen is open.')).toBeVisible();
  await expect(page.getByText('Spoilt kitchen')).toHaveCount(0);
  expect(await ask('kitchen:open', {})).toMatchObject({ name: 'Monday kitchen' });
});

test('what the program is made of stands on Data: every package that comes along, by its licence', async ({
  workbench,
}) => {
  const { page } = workbench;
  await workbench.open('/data');
  const shipped = licenceList(join(import.meta.dirname, '..', '..')).lines.filter(({ isShipped }) => isShipped);
  expect(shipped.length).toBeGreaterThan(20);
  await page.getByText(`Show all ${shipped.length} packages`).click();
  for (const licence of new Set(shipped.map((line) => line.licence))) {
    await expect(page.getByRole('heading', { name: licence, exact: true })).toBeVisible();
  }
  const { name, version } = shipped.at(-1) ?? { name: '', version: '' };
  await expect(page.getByText(`${name} ${version}`, { exact: true })).toBeVisible();
  await expectAccessible(page);
});
