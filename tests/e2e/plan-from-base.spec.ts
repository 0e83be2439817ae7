import { tabTo } from './looked-over.ts';
import { expect, test } from './workbench.ts';

test('“Fill jars from it” leads to a plan with that base chosen; what was half made there stays', async ({
  workbench,
}) => {
  const { page, ask } = workbench;
  const first = await ask('bases:start', { name: 'Monday', volume_mL: 2000 });
  const second = await ask('bases:start', { name: 'Tuesday', volume_mL: 3000 });
  await workbench.open(`/bases/${second.base}`);
  await tabTo(page, 'link', 'Fill jars from it');
  await page.keyboard.press('Enter');
  const chosen = page.getByLabel('Base', { exact: true });
  await expect(chosen).toHaveValue(second.base);
  const question = page.getByRole('textbox', { name: 'What do you want to know?' });
  await question.fill('Does ginger carry it?');
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/bases/${first.base}`);
  await page.getByRole('link', { name: 'Fill jars from it' }).click();
  await expect(chosen).toHaveValue(first.base);
  await expect(question).toHaveValue('Does ginger carry it?');
});
