import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** Nothing that the accessibility rules call serious or critical, in light and in dark. */
export async function expectAccessible(page: Page): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    // Colours that are still on their way from light to dark would be measured half way.
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const { violations } = await new AxeBuilder({ page }).analyze();
    const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    expect(
      grave.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`),
      colorScheme,
    ).toEqual([]);
  }
}

/** The page itself does not scroll sideways on a small telephone. */
export async function expectNoSidewaysScroll(page: Page): Promise<void> {
  await page.setViewportSize({ width: 360, height: 800 });
  await page.waitForTimeout(300);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(over).toBeLessThanOrEqual(0);
}

/** Presses Tab until something of this name has the focus; nothing but the keyboard is used. */
export async function tabTo(
  page: Page,
  role: 'button' | 'link' | 'radio' | 'textbox',
  name: string | RegExp,
): Promise<void> {
  const wanted = page.getByRole(role, { name }).first();
  for (let press = 0; press < 120; press += 1) {
    await page.keyboard.press('Tab');
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
  }
  throw new Error(`Tab never came to the ${role} ${String(name)}.`);
}
