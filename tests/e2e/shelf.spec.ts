import { expectAccessible, expectNoSidewaysScroll, tabTo } from './looked-over.ts';
import { builtTasting } from './taste-kitchen.ts';
import { expect, test } from './workbench.ts';

test('while a tasting is open the jars stand in paper under their codes; labels and codes are never shown together', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { trial, jars, codes, tasting } = await builtTasting(workbench);
  const inOrder = Object.values(codes).toSorted();
  await workbench.open(`/trials/${trial}`);
  const wrapped = page.getByRole('list', { name: 'Wrapped for “First round”' });
  await expect(wrapped.getByRole('img')).toHaveCount(4);
  expect(await wrapped.locator('text').allTextContents()).toEqual(inOrder);
  // Nothing but the code differs from jar to jar: no label, no level, no fruit, no day.
  const drawn = await wrapped
    .locator('svg')
    .evaluateAll((all) => all.map((svg) => svg.outerHTML.replaceAll(/\d{3}(?=<\/text>|, wrapped)/g, '')));
  expect(new Set(drawn).size).toBe(1);
  for (const { label, level } of jars) {
    await expect(wrapped).not.toContainText(level);
    await expect(wrapped.getByText(label, { exact: true })).toHaveCount(0);
  }
  await expect(page.getByRole('list', { name: 'The jars' })).toHaveCount(0);
  await expectAccessible(page);

  await tabTo(page, 'button', 'Show the labelled jars');
  await page.keyboard.press('Enter');
  const labelled = page.getByRole('list', { name: 'The jars' });
  await expect(labelled.getByRole('img')).toHaveCount(4);
  await expect(wrapped).toHaveCount(0);
  for (const code of inOrder) await expect(labelled).not.toContainText(code);
  await page.getByRole('button', { name: 'Wrap them again' }).click();
  await wrapped.getByRole('link', { name: `Open the tasting of sample ${inOrder[0]}` }).click();
  await expect(page.getByRole('heading', { name: 'First round' })).toBeVisible();
  await expect(page.getByRole('list', { name: 'Wrapped for “First round”' }).getByRole('img')).toHaveCount(4);

  await workbench.ask('tastings:close', { tasting });
  await expect(page.getByRole('list', { name: 'Wrapped for “First round”' })).toHaveCount(0);
});

test('froth that was seen stands on the jar, its day in a ring, both said in words; nothing moves where motion is unwanted', async ({
  workbench,
}) => {
  const { page } = workbench;
  const start = new Date(Date.now() - 60 * 3_600_000).toISOString();
  const { trial, jars } = await workbench.ask('trials:save', {
    question: 'How much ginger?',
    factor: 'amount',
    levels: ['5 g', '10 g'].map((name) => ({ name, value: Number.parseInt(name, 10) })),
    control: '5 g',
    held: { additions: [{ ingredient: 'ginger root, raw', mass_g: 5, state: 'fresh' }], days: 4 },
    replicates: 12,
    calendar: 'staggered-pull',
    baseAvailable_mL: 40_000,
    baseEach_mL: 700,
    vessel: { kind: 'open-jar', capacity_mL: 1000 },
    start,
    seed: 1,
  });
  await workbench.ask('jars:start', { jars: jars.map(({ id }) => id), at: start });
  await workbench.open(`/trials/${trial}`);
  const shelf = page.getByRole('list', { name: 'The jars' });
  await expect(shelf.getByRole('img')).toHaveCount(24);
  await expect(shelf.locator('.jar-froth')).toHaveCount(0);
  await workbench.ask('sightings:log', { jar: jars[0]?.id ?? '', what: 'froth' });
  await expect(shelf.locator('.jar-froth')).toHaveCount(1);
  await expect(
    shelf.getByRole('img', { name: /^Jar A1, 5 g, the control: day 2 of 4 days.*froth on top/ }),
  ).toBeVisible();
  await expect(shelf.locator('.day-ring').first()).toHaveText('2');
  // Two dozen lanes are shown on a press.
  await page.getByText('Show the lanes of 24 jars').click();
  await expect(page.locator('.timeline-stood')).toHaveCount(24);
  const moving = () =>
    shelf
      .locator('.jar-bubbles')
      .first()
      .evaluate((drawn) => getComputedStyle(drawn).animationName);
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  expect(await moving()).toBe('jar-drift');
  await page.emulateMedia({ reducedMotion: 'reduce' });
  expect(await moving()).toBe('none');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
});
