import { builtTasting, tabTo, tasteKitchen } from './taste-kitchen.ts';
import { expect, test } from './workbench.ts';

/** Four samples by six attributes, as a taster would score them: a digit each, liking from 1 to 9. */
const digits = ['562471', '073826', '914057', '348269'];

test('a sheet of four samples and six attributes takes 24 digits and 24 moves, and each is stored under its code', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { tasting, orders, attributes } = await builtTasting(workbench);
  const order = orders[0];
  await workbench.open(`/tastings/${tasting}/sheet/${order?.taster}`);
  await page
    .getByRole('textbox', { name: /^tang of/ })
    .first()
    .focus();
  let presses = 0;
  for (const row of digits) {
    for (const digit of row) {
      await page.keyboard.press(digit);
      await page.keyboard.press('Enter');
      presses += 2;
    }
  }
  expect(presses).toBe(48);
  await expect(page.getByText('24 of 24 kept')).toBeVisible();
  await expect(page.getByText('Every sample has its scores.')).toBeVisible();
  const codes = order?.sittings[0]?.codes ?? [];
  const { scores } = await workbench.ask('scores:list', { tasting });
  const expected = codes.flatMap((sample, place) =>
    attributes.map(({ name }, column) => ({
      taster: order?.name,
      sample,
      attribute: name,
      replicate: 1,
      score: Number(digits[place]?.[column]),
    })),
  );
  const inOrder = (list: readonly { sample: string; attribute: string }[]) =>
    list.toSorted((a, b) => `${a.sample}${a.attribute}`.localeCompare(`${b.sample}${b.attribute}`));
  expect(inOrder(scores)).toEqual(inOrder(expected));
});

test('arrows move, 1 then 0 is ten, halves take a comma, a digit beyond the scale begins anew, Backspace takes back', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { tasting, orders } = await builtTasting(workbench);
  const [first = '', second = ''] = orders[0]?.sittings[0]?.codes ?? [];
  await workbench.open(`/tastings/${tasting}/sheet/${orders[0]?.taster}`);
  const cell = (attribute: string, code: string) => page.getByRole('textbox', { name: `${attribute} of ${code}` });
  await cell('tang', first).focus();
  for (const key of ['1', '0', 'ArrowRight', '7', ',', '5', 'ArrowDown', '8', '3', 'ArrowLeft', '6']) {
    await page.keyboard.press(key);
  }
  await expect(cell('tang', first)).toHaveValue('10');
  await expect(cell('fizz', second)).toHaveValue('3');
  await page.keyboard.press('ArrowUp');
  await expect(cell('tang', first)).toBeFocused();
  await expect.poll(async () => (await workbench.ask('scores:list', { tasting })).scores.length).toBe(4);
  await page.keyboard.press('Backspace');
  await expect.poll(async () => (await workbench.ask('scores:list', { tasting })).scores.length).toBe(3);
  const { scores } = await workbench.ask('scores:list', { tasting });
  const of = (sample: string, attribute: string) =>
    scores.find((one) => one.sample === sample && one.attribute === attribute)?.score;
  expect([of(first, 'tang'), of(first, 'fizz'), of(second, 'fizz'), of(second, 'tang')]).toEqual([
    undefined,
    7.5,
    3,
    6,
  ]);
  // Off the scale: said at the cell, and nothing is stored.
  await cell('liking', first).focus();
  await page.keyboard.press('0');
  await page.keyboard.press('Enter');
  await expect(page.getByText('liking goes from 1 to 9; 0 is outside.')).toBeVisible();
  expect((await workbench.ask('scores:list', { tasting })).scores).toHaveLength(3);
});

test('a score is taken back by undo, from the sheet and without the mouse', async ({ workbench }) => {
  const { page } = workbench;
  const { tasting, orders } = await builtTasting(workbench);
  await workbench.open(`/tastings/${tasting}/sheet/${orders[0]?.taster}`);
  const cells = page.getByRole('textbox', { name: /^(tang|fizz) of/ });
  await cells.first().focus();
  await page.keyboard.press('4');
  await page.keyboard.press('Enter');
  await expect(page.getByText('1 of 24 kept')).toBeVisible();
  await page.keyboard.press('6');
  await page.keyboard.press('Enter');
  await expect(page.getByText('2 of 24 kept')).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(page.getByText('1 of 24 kept')).toBeVisible();
  await expect(cells.nth(1)).toHaveValue('');
  const { scores } = await workbench.ask('scores:list', { tasting });
  expect(scores.map(({ score }) => score)).toEqual([4]);
});

test('what is typed just before the window is reloaded is kept: a score, and a half-made plan', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { tasting, tasters } = await builtTasting(workbench);
  await workbench.open(`/tastings/${tasting}/sheet/${tasters[0]?.id}`);
  await page.locator('table input[data-attribute]').first().focus();
  await page.keyboard.press('7');
  await page.reload();
  await expect
    .poll(async () => (await workbench.ask('scores:list', { tasting })).scores.map(({ score }) => score))
    .toEqual([7]);
  await page.evaluate(() => {
    location.hash = '/trials/new';
  });
  const question = page.getByLabel('What do you want to know?');
  await question.fill('Is it kept?');
  await page.reload();
  await expect(question).toHaveValue('Is it kept?');
});

test('a tasting is built, scored and closed with the keyboard alone', async ({ workbench }) => {
  const { page } = workbench;
  const { trial } = await tasteKitchen(workbench, []);
  await workbench.open(`/trials/${trial}/taste`);
  await tabTo(page, page.getByRole('link', { name: 'Build a tasting' }));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Build a tasting');
  for (const name of ['Ann', 'Ben']) {
    await tabTo(page, page.getByRole('button', { name: 'Add a taster' }));
    await page.keyboard.press('Enter');
    await tabTo(page, page.getByRole('dialog').getByLabel('Name'));
    await page.keyboard.type(name);
    await page.keyboard.press('Enter');
    await expect(page.getByRole('checkbox', { name })).toBeChecked();
  }
  await tabTo(page, page.getByLabel('Of each jar, in mL'));
  await page.keyboard.type('30');
  await tabTo(page, page.getByRole('checkbox', { name: /^vinegar note/ }));
  await page.keyboard.press('Space');
  await tabTo(page, page.getByRole('button', { name: 'Draw codes and orders' }));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Before pouring' })).toBeVisible();
  await tabTo(page, page.getByRole('link', { name: 'Ann' }));
  await page.keyboard.press('Enter');
  await tabTo(page, page.getByRole('textbox', { name: /^tang of/ }).first());
  for (let cell = 0; cell < 20; cell += 1) {
    await page.keyboard.press('5');
    await page.keyboard.press('Enter');
  }
  await expect(page.getByText('20 of 20 kept')).toBeVisible();
  await tabTo(page, page.getByRole('link', { name: 'Back to the tasting' }));
  await page.keyboard.press('Enter');
  await expect(page.getByText('Waiting for Ben.')).toBeVisible();
  await tabTo(page, page.getByRole('button', { name: 'Close and reveal…' }));
  await page.keyboard.press('Enter');
  await tabTo(page, page.getByRole('button', { name: 'Close and reveal now' }));
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/findings$/);
  const { tastings } = await workbench.ask('tastings:list', {});
  expect(tastings[0]).toMatchObject({ scores: 20, expected: 40, closedAt: expect.any(String) });
});
