import { everyScreen, goTo } from './every-screen.ts';
import { complaintsOf, sidewaysScroll, smallTargets } from './looked-over.ts';
import { expect, test, type Workbench } from './workbench.ts';

/** Screens are shared out between tests, so that they are looked at side by side. */
const shares = 3;

interface Walked {
  readonly workbench: Workbench;
  readonly screens: readonly string[];
}

/** Looks at each screen in both themes, at 320 px, and at 200 % of a small window; lists all that is wrong at once. */
async function wrongOn({ workbench, screens }: Walked): Promise<string[]> {
  const { page } = workbench;
  const wrong: string[] = [];
  for (const screen of screens) {
    await page.setViewportSize({ width: 1280, height: 860 });
    await goTo(page, screen);
    for (const theme of ['light', 'dark'] as const) {
      for (const complaint of await complaintsOf(page, theme)) wrong.push(`${screen} (${theme}): ${complaint}`);
    }
    // 200 % of a window of 1280 px leaves 640 px to lay out; WCAG 2.2, 1.4.10 asks for 320.
    for (const width of [640, 320]) {
      const over = await sidewaysScroll(page, width);
      if (over > 0) wrong.push(`${screen}: scrolls ${over} px sideways at ${width} px`);
    }
    for (const width of [320, 1280]) {
      await page.setViewportSize({ width, height: 860 });
      for (const small of await smallTargets(page))
        wrong.push(`${screen} at ${width} px: smaller than 24 px: ${small}`);
    }
  }
  return wrong;
}

for (let share = 0; share < shares; share += 1) {
  test(`every screen is accessible in both themes, at 320 px and at 200 %: part ${share + 1} of ${shares}`, async ({
    sample,
  }) => {
    test.setTimeout(300_000);
    await sample.open('/');
    const screens = (await everyScreen(sample)).filter((_, place) => place % shares === share);
    expect(screens.length).toBeGreaterThan(10);
    expect(await wrongOn({ workbench: sample, screens })).toEqual([]);
  });
}

test('every screen of an empty kitchen is accessible too', async ({ workbench }) => {
  test.setTimeout(180_000);
  await workbench.open('/');
  const screens = (await everyScreen(workbench)).filter((screen) => screen !== '/trials/new');
  expect(screens.length).toBeGreaterThan(6);
  expect(await wrongOn({ workbench, screens })).toEqual([]);
});
