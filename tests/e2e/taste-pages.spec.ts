import { seriousFaults } from './taste-kitchen.ts';
import { expect, test } from './workbench.ts';

type Places = {
  readonly open: string;
  readonly closed: string;
  readonly trial: string;
  readonly tasters: readonly string[];
};

const pages: Readonly<Record<string, (places: Places) => string>> = {
  'the Taste step': ({ trial }) => `/trials/${trial}/taste`,
  'building a tasting': ({ trial }) => `/trials/${trial}/taste/new`,
  'building one for oneself': ({ trial }) => `/trials/${trial}/taste/alone`,
  'an open tasting': ({ open }) => `/tastings/${open}`,
  'a closed tasting': ({ closed }) => `/tastings/${closed}`,
  'the pouring list': ({ open }) => `/tastings/${open}/pour`,
  'pasting scores': ({ open }) => `/tastings/${open}/import`,
  'a full sheet': ({ open, tasters }) => `/tastings/${open}/sheet/${tasters[0]}`,
  'an empty sheet': ({ open, tasters }) => `/tastings/${open}/sheet/${tasters.at(-1)}`,
  'the round of sips': () => '/sips',
};

for (const [name, path] of Object.entries(pages)) {
  test(`${name} is free of serious faults, in light and wide, dark and narrow, and never scrolls sideways`, async ({
    sample,
  }) => {
    const { page } = sample;
    const { tastings } = await sample.ask('tastings:list', {});
    const open = tastings.find(({ closedAt }) => closedAt === null);
    const closed = tastings.find(({ closedAt }) => closedAt !== null);
    const { orders } = await sample.ask('tastings:open', { tasting: open?.id ?? '' });
    const places = {
      open: open?.id ?? '',
      closed: closed?.id ?? '',
      trial: open?.trial ?? '',
      tasters: orders.map(({ taster }) => taster),
    };
    await sample.open(path(places));
    await page.waitForTimeout(300);
    await expect(page.locator('main').getByRole('heading').or(page.locator('main textarea')).first()).toBeVisible();
    for (const width of [800, 360, 1440]) {
      await page.setViewportSize({ width, height: 900 });
      const over = () =>
        page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      // The page may need a moment to lay itself out anew.
      await expect.poll(over, { message: `at ${width}` }).toBeLessThanOrEqual(0);
    }
    expect(await seriousFaults(page, 'light')).toEqual([]);
    await page.setViewportSize({ width: 360, height: 900 });
    expect(await seriousFaults(page, 'dark')).toEqual([]);
  });
}
