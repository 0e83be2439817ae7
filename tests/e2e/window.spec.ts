import { expect, test } from './workbench.ts';

const screens = ['Today', 'Trials', 'House recipes', 'Bases', 'Pantry', 'Tasters', 'Data'];

test('the frame has the seven screens in its navigation, and each opens by mouse and by keyboard', async ({
  sample,
}) => {
  const { page } = sample;
  await sample.open();
  const navigation = page.getByRole('navigation').first();
  await expect(navigation.getByRole('link')).toHaveText(screens);
  for (const screen of screens) {
    await navigation.getByRole('link', { name: screen, exact: true }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(screen);
  }
  await navigation.getByRole('link', { name: 'Trials', exact: true }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Trials');
});

test('the address works once: its ticket leaves the address, a reload keeps the window, a second opening is refused', async ({
  workbench,
  context,
}) => {
  const { page } = workbench;
  const address = workbench.address();
  await page.goto(address);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Today');
  expect(page.url()).not.toContain('ticket');
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Today');
  const other = await context.newPage();
  await other.goto(address);
  await expect(other.getByText(/press Enter/i)).toBeVisible();
  await other.close();
});

test('an empty kitchen offers the sample, fills it with one touch and takes it away again', async ({ workbench }) => {
  const { page } = workbench;
  await workbench.open('/');
  await page
    .getByRole('button', { name: /sample/i })
    .first()
    .click();
  await expect(page.getByText('Do frozen plums keep up with fresh ones?').first()).toBeVisible();
  expect((await workbench.ask('trials:list', {})).trials).toHaveLength(4);
  await page.getByRole('button', { name: /^undo/i }).first().click();
  await expect.poll(async () => (await workbench.ask('trials:list', {})).trials.length).toBe(0);
});

test('in a narrow window what was done is said above the navigation, not over it', async ({ workbench }) => {
  const { page } = workbench;
  await page.setViewportSize({ width: 360, height: 740 });
  await workbench.open('/');
  await page
    .getByRole('button', { name: /sample/i })
    .first()
    .click();
  const said = page.locator('.toast').first();
  await expect(said.getByRole('button', { name: 'Undo' })).toBeVisible();
  const toast = await said.boundingBox();
  const navigation = await page.locator('.nav').boundingBox();
  expect(navigation?.y).toBeGreaterThan(600);
  expect((toast?.y ?? 0) + (toast?.height ?? 0)).toBeLessThanOrEqual(navigation?.y ?? 0);
});

test('a trial opens with its jars and its factor chart, and the chart has a table twin', async ({ sample }) => {
  const { page } = sample;
  await sample.open('/trials');
  await page.getByRole('link', { name: 'How many days should pear and ginger stand?' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('How many days should pear and ginger stand?');
  for (const label of ['A', 'B', 'C', 'D']) await expect(page.getByText(label, { exact: true }).first()).toBeVisible();
  await page.getByRole('link', { name: 'Findings' }).click();
  await expect(page.getByText(/Tang rises by about \d\.\d\spoints a day/).first()).toBeVisible();
  await expect(page.locator('svg .recharts-surface, svg.recharts-surface').first()).toBeVisible();
});

test('what another window changes is shown without asking', async ({ workbench }) => {
  const { page } = workbench;
  await workbench.open('/tasters');
  await workbench.ask('tasters:save', { name: 'Taster from elsewhere' });
  await expect(page.getByText('Taster from elsewhere').first()).toBeVisible();
});

for (const width of [360, 800, 1280]) {
  test(`no screen scrolls sideways at ${width} px`, async ({ sample }) => {
    const { page } = sample;
    await page.setViewportSize({ width, height: 800 });
    await sample.open('/');
    const { trials } = await sample.ask('trials:list', {});
    const { recipes } = await sample.ask('recipes:list', {});
    const paths = [
      '/',
      '/trials',
      '/house-recipes',
      '/bases',
      '/pantry',
      '/tasters',
      '/data',
      ...trials.flatMap(({ id }) => [`/trials/${id}`, `/trials/${id}/taste`, `/trials/${id}/findings`]),
    ];
    expect(recipes).toHaveLength(1);
    for (const path of paths) {
      await page.evaluate((hash) => {
        location.hash = hash;
      }, path);
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
      await page.waitForTimeout(150);
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over, path).toBeLessThanOrEqual(0);
    }
  });
}
