import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sqliteDriver } from '#store/sqlite-driver.ts';
import { expectAccessible, expectNoSidewaysScroll } from './looked-over.ts';
import { expect, test } from './workbench.ts';

test('a kitchen from elsewhere that does not open is copied row by row, and the copy is opened', async ({
  workbench,
}) => {
  const { page, ask, store } = workbench;
  await ask('kitchen:change', { name: 'From elsewhere' });
  await ask('tasters:save', { name: '<b>Ada</b>' });
  const strange = join(store, '..', 'strange.sidejar');
  await ask('store:backup', { to: strange });
  const Database = sqliteDriver();
  const db = new Database(strange);
  db.exec('CREATE TRIGGER t AFTER INSERT ON tasters BEGIN DELETE FROM jars; END');
  db.close();
  await ask('kitchen:change', { name: 'My own' });
  await workbench.open('/data');
  await page.getByRole('textbox', { name: 'Or say where the file lies' }).fill(join(store, '..', 'nowhere.sidejar'));
  await page.getByRole('button', { name: 'Copy what can be read' }).click();
  await expect(page.getByText(/There is no file at/)).toBeVisible();
  await page.getByRole('textbox', { name: 'Or say where the file lies' }).fill(strange);
  await page.getByRole('button', { name: 'Copy what can be read' }).click();
  await expect(page.getByText(/2 rows copied, 0 could not stand in a kitchen/)).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Open the new kitchen' }).click();
  await expect(page.getByText('From elsewhere').first()).toBeVisible();
  expect((await ask('tasters:list', {})).tasters.map(({ name }) => name)).toEqual(['<b>Ada</b>']);
  await expectNoSidewaysScroll(page);
});

test('a kitchen near at hand is opened or copied by one touch; its name is shown as it is written', async ({
  workbench,
}) => {
  const { page, ask, store } = workbench;
  const desktop = join(store, '..', 'Desktop');
  mkdirSync(desktop);
  await ask('kitchen:change', { name: 'From the desktop' });
  await ask('store:backup', { to: join(desktop, 'cellar.sidejar') });
  await ask('kitchen:change', { name: 'My own' });
  writeFileSync(join(desktop, '<img src=x onerror=alert(1)>.sidejar'), 'no kitchen');
  writeFileSync(join(desktop, 'a\u202erajedis.exe.sidejar'), 'no kitchen either');
  await workbench.open('/data');
  const list = page.getByRole('list', { name: /^Kitchens in .*Desktop$/ });
  await expect(list.getByRole('listitem')).toHaveCount(3);
  await expect(list).toContainText('<img src=x onerror=alert(1)>.sidejar');
  await expect(list).toContainText('a⟨U+202E⟩rajedis.exe.sidejar');
  await expect(page.locator('img[src="x"]')).toHaveCount(0);
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await list.getByRole('button', { name: 'Open <img' }).click();
  await expect(page.getByRole('alert')).toContainText('can be copied into a new kitchen');
  await list.getByRole('button', { name: 'Copy its rows: cellar.sidejar' }).click();
  await expect(page.getByText(/1 row copied, 0 could not stand in a kitchen/)).toBeVisible();
  await list.getByRole('button', { name: 'Open cellar.sidejar' }).click();
  await expect(page.getByRole('textbox', { name: 'Name of the kitchen' })).toHaveValue('From the desktop');
});
