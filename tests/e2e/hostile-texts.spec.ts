import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { hostileKitchen } from './hostile-kitchen.ts';
import { expect, test, type Workbench } from './workbench.ts';

/** Every route that the page knows, by its own list, filled with rows that there are. */
async function everyScreen({ ask }: Workbench): Promise<string[]> {
  const routes = readFileSync(join(import.meta.dirname, '..', '..', 'renderer', 'app', 'routes.tsx'), 'utf8');
  const { trials } = await ask('trials:list', {});
  const { tastings } = await ask('tastings:list', {});
  const { recipes } = await ask('recipes:list', {});
  const { discriminations } = await ask('discriminations:list', {});
  const { bases } = await ask('bases:list', {});
  const { cultures } = await ask('cultures:list', {});
  const orders = await Promise.all(tastings.map(({ id }) => ask('tastings:open', { tasting: id })));
  const pouredFor = new Map(orders.map((tasting) => [tasting.id, tasting.orders[0]?.taster]));
  const wholes = await Promise.all(trials.map(({ id }) => ask('trials:open', { trial: id })));
  const ids: Readonly<Record<string, readonly string[]>> = {
    trials: trials.map(({ id }) => id),
    tastings: tastings.map(({ id }) => id),
    'telling-apart': discriminations.map(({ id }) => id),
    jars: wholes.flatMap(({ jarsWhole }) => jarsWhole.slice(0, 1).map(({ id }) => id)),
    bases: bases.map(({ id }) => id),
    cultures: cultures.map(({ id }) => id),
    'house-recipes': recipes.map(({ id }) => id),
  };
  return [...routes.matchAll(/path="([^"]+)"/g)].flatMap(([, path = '']) => {
    if (!path.includes(':')) return [path];
    const known = ids[path.split('/')[1] ?? ''];
    if (known === undefined) throw new Error(`No row is known for the route ${path}.`);
    return known.slice(0, 2).map((id) => path.replace(':id', id).replace(':taster', pouredFor.get(id) ?? ''));
  });
}

test('markup in every text is shown as text on every screen', async ({ workbench }) => {
  test.setTimeout(240_000);
  const { page } = workbench;
  const { text, replaced } = await hostileKitchen();
  expect(replaced).toBeGreaterThan(100);
  const { taken } = await workbench.ask('data:takeIn', { text });
  expect(taken).toBe(true);
  const dialogs: string[] = [];
  page.on('dialog', (dialog) => {
    dialogs.push(dialog.message());
    void dialog.dismiss();
  });
  await page.addInitScript(() => {
    const refused: string[] = [];
    Object.assign(window, { refused });
    document.addEventListener('securitypolicyviolation', (event) => refused.push(event.violatedDirective));
  });
  await workbench.open('/');
  const screens = await everyScreen(workbench);
  expect(screens.length).toBeGreaterThan(20);
  let shownOn = 0;
  for (const screen of screens) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, screen);
    await expect(page.locator('h1').first(), screen).toBeVisible();
    await page.waitForTimeout(150);
    const seen = await page.evaluate(() => ({
      made: document.querySelectorAll('img[src="x"], [onerror], main script, h1 b, td > b').length,
      hit: (window as { hit?: number }).hit,
      refused: (window as { refused?: string[] }).refused ?? [],
      title: document.title,
      shown: document.body.textContent.includes('onerror="window.hit=1"'),
    }));
    expect({ screen, ...seen, shown: 0, title: '' }).toEqual({
      screen,
      made: 0,
      hit: undefined,
      refused: [],
      shown: 0,
      title: '',
    });
    if (seen.shown) shownOn += 1;
  }
  // The words were there to be taken for markup.
  expect(shownOn).toBeGreaterThan(screens.length / 2);
  expect(dialogs).toEqual([]);
});
