import { CountedKeys } from './counted-keys.ts';
import { expect, test } from './workbench.ts';

// From an empty kitchen to a house recipe, as a newcomer goes: only what the screens lead to, by keyboard alone.

test('by keyboard alone, from an empty kitchen: base, question, jars, readings, blind tasting, findings, house recipe', async ({
  workbench,
}) => {
  test.setTimeout(240_000);
  const { page } = workbench;
  const keys = new CountedKeys(page);
  const heading = page.getByRole('heading', { level: 1 });
  await workbench.open('/bases');

  await keys.enter(page.getByRole('button', { name: 'Start a base' }).first());
  const form = page.getByRole('dialog');
  await keys.typeAt(form.getByRole('textbox', { name: 'Name' }), 'Green tea base');
  await keys.typeAt(form.getByRole('textbox', { name: 'How much of it' }), '3 L');
  await keys.press('Enter');
  await keys.enter(page.getByRole('link', { name: 'Green tea base' }));
  await expect(heading).toHaveText('Green tea base');
  keys.done('a base is started');

  await keys.enter(page.getByRole('link', { name: 'Fill jars from it' }));
  await expect(heading).toHaveText('Plan a trial');
  await keys.typeAt(page.getByLabel('What do you want to know?'), 'Two days or four with pears?');
  const card = (letter: string) => page.getByRole('group', { name: `Jar ${letter}`, exact: true });
  await keys.typeAt(card('A').getByRole('textbox', { name: 'Days' }), '2');
  await keys.tabTo(card('A').getByRole('radio'));
  await keys.press('Space');
  await keys.typeAt(card('B').getByRole('textbox', { name: 'Days' }), '4');
  await keys.typeAt(page.getByLabel('Base in each jar'), '750');
  await keys.enter(page.getByRole('button', { name: 'Keep this plan' }));
  await expect(heading).toHaveText('Two days or four with pears?');
  keys.done('a trial is planned and kept');

  await keys.enter(page.getByRole('button', { name: 'Start all 2' }));
  await expect(page.getByText('Started A and B.')).toBeVisible();
  keys.done('its jars are started');

  for (const [letter, reading] of [
    ['A', '6.1 brix, ph 3.6'],
    ['B', '4.2 brix, ph 3.3'],
  ] as const) {
    await keys.enter(page.getByRole('button', { name: `Write down what jar ${letter} shows` }));
    await keys.typeAt(page.getByRole('textbox', { name: 'Reading' }), reading);
    await keys.press('Enter');
    await expect(page.getByRole('textbox', { name: 'Reading' })).toHaveValue('');
    await keys.press('Escape');
  }
  keys.done('a reading of each jar is logged');

  for (const letter of ['A', 'B']) {
    await keys.enter(page.getByRole('button', { name: `Pull jar ${letter}`, exact: true }));
    await expect(page.getByRole('button', { name: `Pull jar ${letter}`, exact: true })).toHaveCount(0);
  }
  keys.done('the jars are pulled');

  await keys.enter(page.getByRole('link', { name: 'Taste', exact: true }));
  await keys.enter(page.getByRole('link', { name: 'Build a tasting' }));
  await expect(heading).toHaveText('Build a tasting');
  const panel = ['Ada', 'Bo', 'Cy', 'Di', 'Eve', 'Fay'];
  for (const name of panel) {
    await keys.enter(page.getByRole('button', { name: 'Add a taster' }));
    await keys.typeAt(page.getByRole('dialog').getByLabel('Name'), name);
    await keys.press('Enter');
    await expect(page.getByRole('checkbox', { name })).toBeChecked();
  }
  await keys.typeAt(page.getByLabel('Of each jar, in mL'), '40');
  await keys.enter(page.getByRole('button', { name: 'Draw codes and orders' }));
  await expect(page.getByRole('heading', { name: 'Before pouring' })).toBeVisible();
  keys.done('a blind tasting is built for six tasters');

  // The tasters see codes alone; which code is the jar that they will like better, the test has from the list for whoever pours.
  const [tasting] = (await workbench.ask('tastings:list', {})).tastings;
  const { sampleList } = await workbench.ask('tastings:pour', { tasting: tasting?.id ?? '' });
  const liked = sampleList.find(({ jar }) => jar?.label === 'B')?.code ?? '';
  for (const [place, name] of panel.entries()) {
    await keys.enter(page.getByRole('link', { name, exact: true }));
    await expect(heading).toHaveText(name);
    const cells = page.locator('table input[data-attribute]');
    const total = await cells.count();
    await keys.tabTo(cells.first());
    const before = keys.total;
    for (let cell = 0; cell < total; cell += 1) {
      const about = await page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
      await keys.press(String(about.includes(liked) ? 8 - (place % 2) : 3 + ((place + cell) % 3)));
      await keys.press('Enter');
    }
    expect(keys.total - before, 'a digit and a move for each score').toBe(2 * total);
    await expect(page.getByText(`${total} of ${total} kept`)).toBeVisible();
    await keys.enter(page.getByRole('link', { name: 'Back to the tasting' }));
  }
  keys.done('six sheets are filled');

  await keys.enter(page.getByRole('button', { name: 'Close and reveal…' }));
  await keys.enter(page.getByRole('button', { name: /^Close and reveal/ }).last());
  await expect(page).toHaveURL(/\/findings$/);
  await expect(page.getByRole('figure').first()).toBeVisible({ timeout: 20_000 });
  keys.done('the tasting is closed and its answer read');

  await keys.enter(page.getByRole('link', { name: 'Make it a house recipe' }));
  await expect(page.getByRole('radio', { name: /4 days/ })).toBeChecked({ timeout: 20_000 });
  await keys.typeAt(page.getByRole('textbox', { name: 'Name of the house recipe' }), 'Four-day green');
  await keys.press('Enter');
  await expect(heading).toHaveText('Four-day green');
  keys.done('the house recipe is written down');

  const [recipe] = (await workbench.ask('recipes:list', {})).recipes;
  const { versionList } = await workbench.ask('recipes:open', { recipe: recipe?.id ?? '' });
  expect(versionList).toMatchObject([
    { basis: 'panel', formula: { days: 4 }, chain: { level: { name: '4 days' }, jars: [{ label: 'B' }] } },
  ]);
  // For reading, not asserted: how much each step asks of a hand, and of this machine.
  const lines = keys.steps.map(({ step, keys: count, took_ms }) => `  ${step}: ${count} keys, ${took_ms} ms`);
  process.stdout.write(`${['the main job by keyboard, in steps:', ...lines].join('\n')}\n`);
});
