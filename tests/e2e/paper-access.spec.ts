import { expectAccessible, expectNoSidewaysScroll } from './looked-over.ts';
import { daysTrial, openTasting } from './paper-kitchen.ts';
import { expect, test, type Workbench } from './workbench.ts';

for (const [name, pathOf] of [
  ['jar labels', async (kitchen) => `/trials/${await daysTrial(kitchen)}/labels`],
  ['the report', async (kitchen) => `/trials/${await daysTrial(kitchen)}/report`],
  ['stickers', async (kitchen) => `/tastings/${await openTasting(kitchen)}/stickers`],
  ['pen sheets', async (kitchen) => `/tastings/${await openTasting(kitchen)}/pen-sheets`],
  [
    'the bottle label',
    async ({ ask }) => `/house-recipes/${(await ask('recipes:list', {})).recipes[0]?.id ?? ''}/label`,
  ],
] as const satisfies readonly (readonly [string, (kitchen: Workbench) => Promise<string>])[]) {
  test(`${name}: accessible in light and dark, and fits a small telephone`, async ({ sample }) => {
    // Every dot of every chart is looked at, twice.
    test.setTimeout(180_000);
    const { page } = sample;
    await sample.open(await pathOf(sample));
    await expect(page.locator('.paper-sheet').first()).toBeVisible({ timeout: 20_000 });
    // One taster's sheet is like the others: looking at every box of all of them takes a minute.
    if (name === 'pen sheets') await page.getByLabel('For whom').selectOption({ index: 1 });
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
  });
}
