import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { expect, type Workbench } from './workbench.ts';

// A kitchen with four started jars and some people, made by requests.

export interface TasteKitchen {
  readonly trial: string;
  readonly jars: readonly { readonly id: string; readonly label: string; readonly level: string }[];
  readonly tasters: readonly { readonly id: string; readonly name: string }[];
}

export async function tasteKitchen(
  workbench: Workbench,
  names: readonly string[] = ['Ann', 'Ben'],
): Promise<TasteKitchen> {
  const saved = await workbench.ask('trials:save', {
    question: 'How much ginger?',
    factor: 'amount',
    levels: ['5 g', '10 g', '15 g', '20 g'].map((name) => ({ name, value: Number.parseInt(name, 10) })),
    control: '5 g',
    held: { additions: [{ ingredient: 'ginger root, raw', mass_g: 5, state: 'fresh' }], days: 2 },
    calendar: 'staggered-pull',
    baseAvailable_mL: 4000,
    baseEach_mL: 700,
    vessel: { kind: 'open-jar', capacity_mL: 1000 },
    start: new Date(Date.now() - 3_600_000).toISOString(),
    seed: 1,
  });
  await workbench.ask('jars:start', { jars: saved.jars.map(({ id }) => id) });
  const tasters = [];
  for (const name of names) tasters.push({ name, id: (await workbench.ask('tasters:save', { name })).taster });
  return { trial: saved.trial, jars: saved.jars, tasters };
}

/** Builds a tasting by request, with the six usual attributes. */
export async function builtTasting(workbench: Workbench, names?: readonly string[]) {
  const kitchen = await tasteKitchen(workbench, names);
  const { tasting, codes } = await workbench.ask('tastings:build', {
    trial: kitchen.trial,
    name: 'First round',
    samples: kitchen.jars.map(({ id }) => ({ jar: id, served_mL: 30 })),
    tasters: kitchen.tasters.map(({ id }) => id),
    seed: 5,
  });
  const { orders, attributes } = await workbench.ask('tastings:open', { tasting });
  return { ...kitchen, tasting, codes, orders, attributes };
}

/** Presses Tab until the thing has the focus. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  await expect(target).toBeVisible();
  for (let press = 0; press < 120; press += 1) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('Tab never came there.');
}

/** What axe finds serious or critical in the colours of one scheme. */
export async function seriousFaults(page: Page, colorScheme: 'light' | 'dark'): Promise<string[]> {
  await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
}
