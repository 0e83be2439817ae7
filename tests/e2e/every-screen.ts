import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, type Workbench } from './workbench.ts';

const withHistory: readonly string[] = [
  'jars',
  'trials',
  'tasters',
  'house_recipes',
  'bases',
  'cultures',
  'tastings',
  'scores',
];

/** Every route that the page knows, by its own list, filled with rows that there are; `most` of each kind. */
export async function everyScreen({ ask }: Workbench, most = 2): Promise<string[]> {
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
  const tasters = (await ask('tasters:list', {})).tasters.map(({ id }) => id);
  const { steps } = await ask('history:read', {});
  const scores = (
    await Promise.all(
      tastings
        .slice(0, most)
        .map(({ id }) => ask('history:parts', { table: 'tastings', id, part: 'scores', limit: 1 })),
    )
  ).flatMap(({ rows }) => rows.map(({ id }) => id));
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
    if (path.startsWith('/history/step/')) return steps.slice(0, most).map(({ step }) => `/history/step/${step}`);
    if (path.startsWith('/history/')) {
      const recorded = Object.entries({ ...ids, house_recipes: ids['house-recipes'] ?? [], tasters, scores });
      return recorded
        .filter(([table]) => withHistory.includes(table))
        .flatMap(([table, all]) => all.slice(0, most).map((id) => `/history/${table}/${id}`));
    }
    const known = ids[path.split('/')[1] ?? ''];
    if (known === undefined) throw new Error(`No row is known for the route ${path}.`);
    return known.slice(0, most).map((id) => path.replace(':id', id).replace(':taster', pouredFor.get(id) ?? ''));
  });
}

/** Goes to a screen without loading the page anew, and waits until its heading stands there. */
export async function goTo(page: Page, screen: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, screen);
  // The heading of the screen before may stand there still, and some screens lead on to another.
  for (let look = 0; look < 2; look += 1) {
    await page.waitForTimeout(150);
    await expect(page.locator('h1').first(), screen).toBeVisible();
  }
}
