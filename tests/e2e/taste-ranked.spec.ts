import { expectAccessible, expectNoSidewaysScroll } from './looked-over.ts';
import { tabTo, tasteKitchen } from './taste-kitchen.ts';
import { expect, test, type Workbench } from './workbench.ts';

async function newestTasting({ ask }: Workbench) {
  const { tastings } = await ask('tastings:list', {});
  return ask('tastings:open', { tasting: tastings[0]?.id ?? '' });
}

/** A ranking of four jars by request, and the codes in Ann's order. */
async function builtRanking(workbench: Workbench, names?: readonly string[]) {
  const kitchen = await tasteKitchen(workbench, names);
  const { tasting, codes } = await workbench.ask('tastings:build', {
    trial: kitchen.trial,
    name: 'In order',
    samples: kitchen.jars.map(({ id }) => ({ jar: id })),
    tasters: kitchen.tasters.map(({ id }) => id),
    ranked: true,
    seed: 5,
  });
  const { orders } = await workbench.ask('tastings:open', { tasting });
  const ann = orders.find(({ name }) => name === 'Ann');
  return { ...kitchen, tasting, codes, ann: ann?.taster ?? '', row: ann?.sittings[0]?.codes ?? [] };
}

async function stored({ ask }: Workbench, tasting: string): Promise<Record<string, number>> {
  const { scores } = await ask('scores:list', { tasting });
  return Object.fromEntries(scores.map(({ taster, sample, score }) => [`${taster} ${sample}`, score]));
}

test('a ranking is built, entered and closed with the keyboard alone', async ({ workbench }) => {
  const { page } = workbench;
  const { trial, jars } = await tasteKitchen(workbench);
  await workbench.open(`/trials/${trial}/taste/new`);
  for (const name of ['Ann', 'Ben']) {
    await tabTo(page, page.getByRole('checkbox', { name }));
    await page.keyboard.press('Space');
  }
  await tabTo(page, page.getByRole('radio', { name: /^Score each sample/ }));
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('radio', { name: /^Put the samples in order/ })).toBeChecked();
  const aside = page.getByRole('complementary', { name: 'What this panel can see' });
  await expect(aside).toContainText('If both tasters put the 4 samples in one and the same order');
  await expect(page.getByRole('heading', { name: 'What is scored' })).toHaveCount(0);
  await tabTo(page, page.getByRole('button', { name: 'Draw codes and orders' }));
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/tastings\/[^/]+$/);
  const built = await newestTasting(workbench);
  expect(built).toMatchObject({ isRanked: true, samples: 4, replicates: 1 });
  await tabTo(page, page.getByRole('link', { name: 'Ann' }));
  await page.keyboard.press('Enter');
  await tabTo(page, page.getByRole('textbox', { name: /^place of/ }).first());
  // A digit each; the habit of pressing Enter after it does no harm.
  await page.keyboard.press('3');
  await page.keyboard.press('Enter');
  for (const digit of '142') await page.keyboard.press(digit);
  await expect(page.getByText('4 of 4 kept')).toBeVisible();
  await expect(page.getByText('Every cup has its place. Thank you.')).toBeVisible();
  const row = built.orders.find(({ name }) => name === 'Ann')?.sittings[0]?.codes ?? [];
  const expected = Object.fromEntries(row.map((code, at) => [`Ann ${code}`, [3, 1, 4, 2][at]]));
  expect(await stored(workbench, built.id)).toEqual(expected);
  await tabTo(page, page.getByRole('link', { name: 'Back to the tasting' }));
  await page.keyboard.press('Enter');
  await expect(page.getByText('Waiting for Ben.')).toBeVisible();
  await tabTo(page, page.getByRole('button', { name: 'Close and reveal…' }));
  await page.keyboard.press('Enter');
  await tabTo(page, page.getByRole('button', { name: 'Close and reveal now' }));
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/findings$/);
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/tastings/${built.id}`);
  const places = page.getByRole('table', { name: 'Which place each taster gave' });
  await expect(places.getByRole('columnheader').nth(1)).toHaveText(`${jars[0]?.label}, 5 g`);
  await expect(places.getByRole('row', { name: /^Ben/ })).toContainText('–');
  const open = await workbench.ask('tastings:open', { tasting: built.id });
  const codeOfA = open.sampleList.find(({ jar }) => jar?.label === jars[0]?.label)?.code ?? '';
  await expect(places.getByRole('row', { name: /^Ann/ }).getByRole('cell').first()).toHaveText(
    String(expected[`Ann ${codeOfA}`]),
  );
  await expectAccessible(page);
});

test('a place given twice is named at both cups and not stored; the other cup’s new place mends it', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { tasting, ann, row } = await builtRanking(workbench);
  const [a = '', b = '', c = '', d = ''] = row;
  await workbench.open(`/tastings/${tasting}/sheet/${ann}`);
  const cell = (code: string) => page.getByRole('textbox', { name: `place of ${code}` });
  await cell(a).focus();
  for (const digit of '122') await page.keyboard.press(digit);
  await expect(page.getByText(`Place 2 stands at ${c} too. Give each cup a place of its own.`)).toBeVisible();
  await expect(page.getByText(`Place 2 stands at ${b} too. Give each cup a place of its own.`)).toBeVisible();
  await expectAccessible(page);
  await page.emulateMedia({ colorScheme: 'light' });
  await expect.poll(() => stored(workbench, tasting)).toEqual({ [`Ann ${a}`]: 1, [`Ann ${b}`]: 2 });
  await cell(b).focus();
  await page.keyboard.press('3');
  await expect.poll(() => stored(workbench, tasting)).toEqual({ [`Ann ${a}`]: 1, [`Ann ${b}`]: 3, [`Ann ${c}`]: 2 });
  // Half a sheet is kept, and says which cup still waits.
  await page.reload();
  await expect(cell(b)).toHaveValue('3');
  await expect(page.getByText('No place yet. Still free: 4.')).toBeVisible();
  // Two cups change places.
  await cell(a).focus();
  await page.keyboard.press('3');
  await page.keyboard.press('1');
  await expect.poll(() => stored(workbench, tasting)).toEqual({ [`Ann ${a}`]: 3, [`Ann ${b}`]: 1, [`Ann ${c}`]: 2 });
  await page.getByRole('button', { name: `Missed it: ${d}` }).click();
  await expect(page.getByText('Every cup has its place. Thank you.')).toBeVisible();
});

test('a ranking is built and entered by mouse, and cups share a place only on purpose', async ({ workbench }) => {
  const { page } = workbench;
  const { trial } = await tasteKitchen(workbench);
  await workbench.open(`/trials/${trial}/taste/new`);
  for (const name of ['Ann', 'Ben']) await page.getByRole('checkbox', { name }).check();
  await page.getByText('Put the samples in order, best first').click();
  await page.getByText('How evenly the serving orders are spread').click();
  await expect(page.getByRole('table', { name: 'How often each sample stands in each place' })).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Draw codes and orders' }).click();
  await expect(page).toHaveURL(/\/tastings\/[^/]+$/);
  await page.getByRole('link', { name: 'Ben' }).click();
  const built = await newestTasting(workbench);
  const [a = '', b = '', c = '', d = ''] = built.orders.find(({ name }) => name === 'Ben')?.sittings[0]?.codes ?? [];
  const press = (code: string, place: number) =>
    page.getByRole('button', { name: `${code}: place ${place}`, exact: true }).click();
  await press(a, 2);
  await press(b, 1);
  await press(c, 2);
  await press(d, 4);
  await expect(page.getByText(/^Place 2 stands at/)).toHaveCount(2);
  await page.getByRole('checkbox', { name: /^Cups may share a place/ }).check();
  await expect(page.getByText(/^Place 2 stands at/)).toHaveCount(0);
  await expect
    .poll(() => stored(workbench, built.id))
    .toEqual({ [`Ben ${a}`]: 2, [`Ben ${b}`]: 1, [`Ben ${c}`]: 2, [`Ben ${d}`]: 4 });
  await expect(page.getByRole('region', { name: 'Your order so far' })).toContainText(`${a} and ${c}`);
  await page.reload();
  await expect(page.getByRole('checkbox', { name: /^Cups may share a place/ })).toBeChecked();
  expect(await page.locator('main').textContent()).not.toMatch(/(5|10|15|20)\sg/);
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
});

test('a just-about-right attribute is chosen and answered with the keys 1 to 5, at the sheet’s usual speed', async ({
  workbench,
}) => {
  // Looked over wide and narrow, in both themes.
  test.slow();
  const { page } = workbench;
  const { trial } = await tasteKitchen(workbench, ['Ann', 'Ben']);
  await workbench.open(`/trials/${trial}/taste/new`);
  await tabTo(page, page.getByRole('checkbox', { name: 'Ann' }));
  await page.keyboard.press('Space');
  await tabTo(page, page.getByRole('combobox', { name: 'How sweetness is asked' }));
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('checkbox', { name: /^sweetness five steps/ })).toBeVisible();
  await tabTo(page, page.getByRole('button', { name: 'Draw codes and orders' }));
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/tastings\/[^/]+$/);
  const built = await newestTasting(workbench);
  expect(built.attributes.find(({ name }) => name === 'sweetness')).toMatchObject({
    kind: 'just-about-right',
    low: -2,
    high: 2,
  });
  await tabTo(page, page.getByRole('link', { name: 'Ann' }));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('region', { name: 'The five steps for sweetness' })).toContainText('1 much too little');
  await tabTo(page, page.getByRole('textbox', { name: /^tang of/ }).first());
  let presses = 0;
  for (const sweet of '1345') {
    for (const digit of `57${sweet}628`) {
      await page.keyboard.press(digit);
      await page.keyboard.press('Enter');
      presses += 2;
    }
  }
  expect(presses).toBe(48);
  await expect(page.getByText('24 of 24 kept')).toBeVisible();
  const row = built.orders[0]?.sittings[0]?.codes ?? [];
  const sweetness = async () => {
    const { scores } = await workbench.ask('scores:list', { tasting: built.id });
    return row.map((code) => scores.find((one) => one.sample === code && one.attribute === 'sweetness')?.score);
  };
  expect(await sweetness()).toEqual([-2, 0, 1, 2]);
  // A key that is none of the five is said at the cell; by mouse the step is pressed.
  const first = page.getByRole('textbox', { name: `sweetness of ${row[0]}` });
  await first.focus();
  await page.keyboard.press('7');
  await expect(page.getByText(/sweetness takes the keys 1 to 5/)).toBeVisible();
  await page.getByRole('button', { name: `2 too little: sweetness of ${row[0]}`, exact: true }).click();
  await expect(first).toHaveValue('2');
  await expect.poll(sweetness).toEqual([-1, 0, 1, 2]);
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await expectAccessible(page);
  await workbench.ask('tastings:close', { tasting: built.id });
  await workbench.open(`/tastings/${built.id}`);
  await expect(page.getByRole('table', { name: 'Just about right: sweetness' })).toContainText('too much');
});

test('a half-built tasting is found again after leaving, and is forgotten when told to, or once it is built', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { trial } = await tasteKitchen(workbench, ['Ann', 'Ben']);
  await workbench.open(`/trials/${trial}/taste/new`);
  await page.getByRole('checkbox', { name: 'Ben' }).check();
  await page.getByRole('button', { name: 'Add your own attribute' }).click();
  await page.getByLabel('Its name').fill('bite');
  await page.getByRole('combobox', { name: 'How tang is asked' }).selectOption({ label: 'just about right' });
  await page.getByRole('link', { name: 'Tastings', exact: true }).click();
  await page.getByRole('link', { name: 'Build a tasting' }).click();
  await expect(page.getByLabel('Its name')).toHaveValue('bite');
  await expect(page.getByRole('checkbox', { name: 'Ben' })).toBeChecked();
  await expect(page.getByRole('combobox', { name: 'How tang is asked' })).toHaveValue('just-about-right');
  await page.getByRole('button', { name: 'Start over' }).click();
  await page.getByRole('button', { name: 'Forget it' }).click();
  await expect(page.getByRole('checkbox', { name: 'Ben' })).not.toBeChecked();
  await expect(page.getByLabel('Its name')).toHaveCount(0);
  await page.getByRole('checkbox', { name: 'Ann' }).check();
  await page.getByRole('button', { name: 'Draw codes and orders' }).click();
  await expect(page).toHaveURL(/\/tastings\/[^/]+$/);
  await workbench.open(`/trials/${trial}/taste/new`);
  await expect(page.getByRole('checkbox', { name: 'Ann' })).not.toBeChecked();
});

test('one person alone ranks cups by their place; two cups at one place hold them back', async ({ workbench }) => {
  const { page } = workbench;
  const { tasting } = await builtRanking(workbench, ['Ann']);
  await workbench.open(`/tastings/${tasting}/alone`);
  for (let step = 0; step < 2; step += 1) await page.getByRole('button', { name: 'Go on' }).click();
  const cells = page.getByRole('textbox', { name: /^place of Cup/ });
  await cells.first().focus();
  for (const digit of '1134') await page.keyboard.press(digit);
  await expect(page.getByText('Two cups have the same place. Give each its own before you go on.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Go on' })).toBeDisabled();
  await cells.nth(1).focus();
  await page.keyboard.press('2');
  const names = await cells.evaluateAll((all) => all.map((one) => one.getAttribute('aria-label') ?? ''));
  await page.getByRole('button', { name: 'Go on' }).click();
  const { sampleList } = await workbench.ask('tastings:open', { tasting });
  const codes = sampleList.map(({ code }) => code);
  for (const [at, code] of codes.entries()) await page.getByLabel(`Code under cup ${at + 1}`).fill(code);
  await page.getByRole('button', { name: 'Put the scores under their codes' }).click();
  await expect(page.getByRole('heading', { name: 'Reveal', exact: true })).toBeVisible();
  const cupOf = (name: string) => Number(name.match(/Cup (\d)/)?.[1]);
  const expected = Object.fromEntries(names.map((name, at) => [`Ann ${codes[cupOf(name) - 1]}`, at + 1]));
  expect(await stored(workbench, tasting)).toEqual(expected);
});

test('eight samples are split into two sittings, with a caution and the split shown', async ({ workbench }) => {
  const { page } = workbench;
  const { tasters } = await tasteKitchen(workbench);
  const saved = await workbench.ask('trials:save', {
    question: 'Which of eight?',
    factor: 'amount',
    levels: [1, 2, 3, 4, 5, 6, 7, 8].map((grams) => ({ name: `${grams} g`, value: grams })),
    control: '1 g',
    held: { additions: [{ ingredient: 'ginger root, raw', mass_g: 5, state: 'fresh' }], days: 2 },
    calendar: 'staggered-pull',
    baseAvailable_mL: 8000,
    baseEach_mL: 700,
    vessel: { kind: 'open-jar', capacity_mL: 1000 },
    start: new Date(Date.now() - 3_600_000).toISOString(),
    seed: 1,
  });
  await workbench.ask('jars:start', { jars: saved.jars.map(({ id }) => id) });
  await workbench.open(`/trials/${saved.trial}/taste/new`);
  for (const name of ['Ann', 'Ben']) await page.getByRole('checkbox', { name }).check();
  const aside = page.getByRole('complementary', { name: 'What this panel can see' });
  await expect(aside).toContainText('These 8 are split into 2 sittings');
  await expect(aside).toContainText('Sitting 2: 4 samples');
  await page.getByRole('checkbox', { name: /^H/ }).uncheck();
  await expect(aside).toContainText('7 samples in one sitting.');
  await expect(aside.getByText(/tire the palate/)).toHaveCount(0);
  expect(tasters).toHaveLength(2);
});
