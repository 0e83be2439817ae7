import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** What the accessibility rules complain of on the page as it stands, from moderate up, in one theme. */
export async function complaintsOf(page: Page, colorScheme: 'light' | 'dark'): Promise<string[]> {
  // Colours that are still on their way from light to dark would be measured half way.
  await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact !== 'minor')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
}

/** Nothing that the accessibility rules call moderate or worse, in light and in dark. */
export async function expectAccessible(page: Page): Promise<void> {
  for (const theme of ['light', 'dark'] as const) expect(await complaintsOf(page, theme), theme).toEqual([]);
}

/** How far the page scrolls sideways in a window of this width, in px. */
export async function sidewaysScroll(page: Page, width: number): Promise<number> {
  await page.setViewportSize({ width, height: 800 });
  await page.waitForTimeout(200);
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

/** The page itself does not scroll sideways on a small telephone. */
export async function expectNoSidewaysScroll(page: Page): Promise<void> {
  expect(await sidewaysScroll(page, 360)).toBeLessThanOrEqual(0);
}

/**
 * What can be pressed or pointed at and is smaller than 24 px either way (WCAG 2.2, 2.5.8), links within sentences and what lies folded
 * included; a box or a ring counts with the words that are pressed with it.
 */
export async function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    for (const folded of document.querySelectorAll('details')) folded.open = true;
    const kinds = 'button, a[href], input, select, textarea, summary, [tabindex="0"], [role="button"], [role="option"]';
    return [...document.querySelectorAll<HTMLElement>(kinds)].flatMap((element) => {
      const isBox = element instanceof HTMLInputElement && ['checkbox', 'radio', 'file'].includes(element.type);
      const pressed = (isBox ? element.labels?.[0] : null) ?? element;
      const { width, height } = pressed.getBoundingClientRect();
      const isSeen = pressed.checkVisibility({ visibilityProperty: true, opacityProperty: true }) && width > 1;
      if (!isSeen || (width >= 23.5 && height >= 23.5)) return [];
      const said = element.textContent.trim().slice(0, 40);
      return [`${element.tagName} “${said}” ${width.toFixed(0)} × ${height.toFixed(0)}`];
    });
  });
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
