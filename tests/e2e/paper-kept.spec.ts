import { sixPulled } from './paper-kitchen.ts';
import { expect, test } from './workbench.ts';

test('the order of cup stickers is as it was chosen last, also after a reload and for another tasting', async ({
  workbench,
}) => {
  const { page, ask } = workbench;
  const six = await sixPulled(workbench);
  const build = async (name: string) =>
    ask('tastings:build', {
      trial: six.trial,
      name,
      samples: six.jars.slice(0, 3).map(({ id }) => ({ jar: id })),
      tasters: [...six.tasters],
      replicates: 1,
    });
  const { tasting } = await build('Saturday round');
  const other = await build('Sunday round');
  await workbench.open(`/tastings/${tasting}/stickers`);
  const order = page.getByLabel('In which order');
  await expect(order).toHaveValue('taster');
  await order.selectOption('code');
  await page.waitForTimeout(600);
  await page.reload();
  await expect(order).toHaveValue('code');
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/tastings/${other.tasting}/stickers`);
  await expect(page.getByRole('link', { name: 'Sunday round' }).first()).toBeVisible();
  await expect(order).toHaveValue('code');
});

test('what was typed on a bottle label stands there after a reload; the maker on every label, a lot on its own alone', async ({
  sample,
}) => {
  const { page, ask } = sample;
  const [recipe] = (await ask('recipes:list', {})).recipes;
  await sample.open(`/house-recipes/${recipe?.id}/label`);
  const typed = {
    'Name of the drink': 'Pear, three days',
    'What the base is made of': 'kombucha (water, sugar, tea, culture)',
    'In the bottle, mL': '330',
    'Best before': '2026-05-04',
    Lot: 'L-7',
    'Made by': 'The Corner Kitchen',
  };
  for (const [label, text] of Object.entries(typed)) await page.getByLabel(label, { exact: true }).fill(text);
  await page.waitForTimeout(600);
  await page.reload();
  for (const [label, text] of Object.entries(typed)) {
    await expect(page.getByLabel(label, { exact: true }), label).toHaveValue(text);
  }
  // A new batch has its own lot and its own day; the rest stays.
  const latest = await ask('recipes:open', { recipe: recipe?.id ?? '' });
  await ask('batches:log', {
    recipe: latest.id,
    version: latest.latest,
    madeAt: '2026-11-20T10:00:00Z',
    volume_mL: 4000,
    lot: 'L-8',
  });
  await page.reload();
  await expect(page.getByLabel('Lot', { exact: true })).toHaveValue('L-8');
  await expect(page.getByLabel('Best before')).toHaveValue('');
  await expect(page.getByLabel('In the bottle, mL')).toHaveValue('330');
  await expect(page.getByLabel('Made by')).toHaveValue('The Corner Kitchen');
});
