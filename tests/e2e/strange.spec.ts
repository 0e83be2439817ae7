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
  await page.getByRole('textbox', { name: 'Where the file lies' }).fill(join(store, '..', 'nowhere.sidejar'));
  await page.getByRole('button', { name: 'Copy what can be read' }).click();
  await expect(page.getByText(/There is no file at/)).toBeVisible();
  await page.getByRole('textbox', { name: 'Where the file lies' }).fill(strange);
  await page.getByRole('button', { name: 'Copy what can be read' }).click();
  await expect(page.getByText(/2 rows copied, 0 could not stand in a kitchen/)).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Open the new kitchen' }).click();
  await expect(page.getByText('From elsewhere').first()).toBeVisible();
  expect((await ask('tasters:list', {})).tasters.map(({ name }) => name)).toEqual(['<b>Ada</b>']);
  await expectNoSidewaysScroll(page);
});
