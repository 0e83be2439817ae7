import { everyScreen, goTo } from './every-screen.ts';
import { hostileKitchen } from './hostile-kitchen.ts';
import { expect, test } from './workbench.ts';

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
    await goTo(page, screen);
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
