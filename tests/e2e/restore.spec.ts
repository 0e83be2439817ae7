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
