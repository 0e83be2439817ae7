import { builtTasting, tasteKitchen } from './taste-kitchen.ts';
import { expect, test } from './workbench.ts';

test('a tasting is built by mouse, and says while it is built what the panel can see and who must not taste', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { trial, jars } = await tasteKitchen(workbench, ['Ann', 'Ben', 'Cem', 'Dora', 'Eve', 'Finn']);
  await workbench.ask('tasters:save', { name: 'Gus', avoidsAlcohol: true });
  await workbench.open(`/trials/${trial}/taste`);
  await page.getByRole('link', { name: 'Build a tasting' }).click();
  const sight = page.getByRole('complementary', { name: 'What this panel can see' });
  await page.getByRole('checkbox', { name: 'Ann' }).check();
  await expect(sight).toContainText('One taster can say which sample they like best.');
  for (const name of ['Ben', 'Cem', 'Dora', 'Eve', 'Finn']) await page.getByRole('checkbox', { name }).check();
  const { detectableDifference } = await workbench.ask('panel:design', {
    samples: jars.map(({ id }) => id),
    tasters: 6,
    errorSd: 1.8,
    difference: 2,
    seed: 1,
  });
  await expect(sight).toContainText(
    `With 6 tasters and 4 samples a gap of ${detectableDifference?.toFixed(1)} points would most likely show.`,
  );
  await expect(sight).toContainText('1.8 points (common practice, no source)');
  await page.getByRole('checkbox', { name: /Gus/ }).check();
  await expect(sight.getByText(/Gus avoids alcohol/)).toBeVisible();
  await page.getByLabel('Of each jar, in mL').fill('30');
  await expect(page.getByText('7 cups of each jar: 210 mL altogether.')).toBeVisible();
  await page.getByLabel('Served at, in °C').fill('8');
  await page.getByRole('checkbox', { name: /^fruit/ }).uncheck();
  await page.getByRole('button', { name: 'Add your own attribute' }).click();
  await page.getByRole('button', { name: 'Draw codes and orders' }).click();
  await expect(page.getByText('Give it a name.')).toBeVisible();
  await page.getByLabel('Its name').fill('bite');
  await page.getByLabel('Word at the upper end').fill('very hot');
  await page.getByRole('button', { name: 'Draw codes and orders' }).click();
  await expect(page).toHaveURL(/\/tastings\/[^/]+$/);
  await expect(page.getByRole('heading', { name: 'Before pouring' })).toBeVisible();
  const { tastings } = await workbench.ask('tastings:list', {});
  const built = await workbench.ask('tastings:open', { tasting: tastings[0]?.id ?? '' });
  expect(built).toMatchObject({ served_C: 8, tasters: 7, samples: 4 });
  expect(built.attributes.map(({ name }) => name)).toEqual([
    'tang',
    'fizz',
    'sweetness',
    'vinegar note',
    'liking',
    'bite',
  ]);
  expect(built.sampleList[0]?.served_mL).toBe(30);
});

test('nothing tells jar or level while the tasting is open; the pouring list waits behind a deliberate opening', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { tasting, tasters, codes, jars } = await builtTasting(workbench);
  for (const path of ['', `/sheet/${tasters[0]?.id}`, '/pour']) {
    await workbench.open(`/tastings/${tasting}${path}`);
    await expect(page.getByText(Object.values(codes)[0] ?? '').first()).toBeVisible();
    expect(await page.locator('main').textContent()).not.toMatch(/(5|10|15|20)\sg/);
  }
  await page.getByRole('button', { name: 'I pour: show the list' }).click();
  const row = page.getByRole('row', { name: /10\sg/ });
  await expect(row).toContainText(codes[jars[1]?.id ?? ''] ?? '?');
  await expect(row).toContainText('30 mL');
  await page.getByRole('button', { name: 'Hide the list' }).click();
  expect(await page.locator('main').textContent()).not.toMatch(/10\sg/);
});

test('half a sheet is kept on leaving, found again, and named as missing; a missed sample and a remark are kept', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { tasting, orders } = await builtTasting(workbench);
  const order = orders[0];
  const [first = '', second = '', third = '', fourth = ''] = order?.sittings[0]?.codes ?? [];
  await workbench.open(`/tastings/${tasting}/sheet/${order?.taster}`);
  await page.getByRole('textbox', { name: `tang of ${first}` }).click();
  for (const digit of '56247') {
    await page.keyboard.press(digit);
    await page.keyboard.press('Enter');
  }
  // The sixth is typed and not moved away from; then the taster walks off.
  await page.keyboard.press('8');
  await page.getByRole('link', { name: 'First round' }).click();
  await expect(page.getByRole('heading', { name: 'Sheets' })).toBeVisible();
  await expect(page.getByText(`still to come: ${second}, ${third} and ${fourth}`)).toBeVisible();
  expect((await workbench.ask('scores:list', { tasting })).scores).toHaveLength(6);
  await page.getByRole('link', { name: order?.name ?? '' }).click();
  await expect(page.getByRole('textbox', { name: `liking of ${first}` })).toHaveValue('8');
  await page.getByRole('button', { name: `Missed it: ${second}` }).click();
  await expect(page.getByText('not tasted, left empty')).toBeVisible();
  await page.getByRole('textbox', { name: `Remark on ${first}` }).fill('a little yeasty');
  await page.getByRole('textbox', { name: `Remark on ${first}` }).press('Enter');
  await expect
    .poll(async () => (await workbench.ask('remarks:list', { tasting })).remarks.map(({ words }) => words).sort())
    .toEqual(['a little yeasty', 'missed']);
  await page.reload();
  await expect(page.getByRole('textbox', { name: `Remark on ${first}` })).toHaveValue('a little yeasty');
  await page.getByRole('link', { name: 'Back to the tasting' }).click();
  await expect(page.getByText(`still to come: ${third} and ${fourth}; missed ${second}`)).toBeVisible();
});

test('a pasted table with bad rows names them and changes nothing until it is told to leave them out', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { tasting, codes } = await builtTasting(workbench);
  const [a = '', b = ''] = Object.values(codes);
  await workbench.open(`/tastings/${tasting}/import`);
  const table = page.getByLabel('The table');
  await table.fill(`Taster\tCode\ttang\tliking\nAnn\t${a}\t6\t7\nZoe\t${a}\t5\t5\nBen\t${b}\t12\t8\nBen\t${a}\t4,5\t`);
  await expect(page.getByText('4 scores can be taken.')).toBeVisible();
  await expect(page.getByRole('row', { name: /“Zoe” is not one of this tasting’s tasters/ }).first()).toContainText(
    '3',
  );
  await expect(page.getByRole('row', { name: /tang is scored from 0 to 10; 12 is outside/ })).toContainText('4');
  await expect(page.getByText('Nothing has been changed yet.')).toBeVisible();
  expect((await workbench.ask('scores:list', { tasting })).scores).toEqual([]);
  await page.getByRole('button', { name: 'Take the 4 good scores, leave 2 rows out' }).click();
  await expect(page.getByRole('heading', { name: 'Sheets' })).toBeVisible();
  const { scores } = await workbench.ask('scores:list', { tasting });
  expect(
    scores.map(({ taster, sample, attribute, score }) => `${taster} ${sample} ${attribute} ${score}`).sort(),
  ).toEqual([`Ann ${a} tang 6`, `Ann ${a} liking 7`, `Ben ${b} liking 8`, `Ben ${a} tang 4.5`].sort());
  await page.getByRole('button', { name: /^Undo: / }).click();
  await expect.poll(async () => (await workbench.ask('scores:list', { tasting })).scores.length).toBe(0);
});

test('columns that are not understood are asked about, and a file is taken like a pasted table', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { tasting, codes } = await builtTasting(workbench);
  const [a = ''] = Object.values(codes);
  await workbench.open(`/tastings/${tasting}/import`);
  await page.getByLabel('Or choose a file (CSV or TSV)').setInputFiles({
    name: 'scores.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(`who;glass;sourness;room\nAnn;${a};6;kitchen\n`),
  });
  await expect(page.getByRole('heading', { name: 'What each column is' })).toBeVisible();
  await page.getByLabel('Column “who”').selectOption({ label: 'the taster' });
  await page.getByLabel('Column “glass”').selectOption({ label: 'the sample (code)' });
  await page.getByLabel('Column “sourness”').selectOption({ label: 'tang' });
  await expect(page.getByText(/“room” is not scored in this tasting/)).toBeVisible();
  await page.getByLabel('Column “room”').selectOption({ label: 'leave it out' });
  await page.getByRole('button', { name: 'Take this score' }).click();
  await expect
    .poll(async () => (await workbench.ask('scores:list', { tasting })).scores.map(({ score }) => score))
    .toEqual([6]);
});

test('in the sample kitchen a second tasting is built beside the first, with other codes', async ({ sample }) => {
  const { page } = sample;
  const { tastings } = await sample.ask('tastings:list', {});
  const first = tastings.find(({ closedAt }) => closedAt === null);
  await sample.open(`/trials/${first?.trial}/taste`);
  await page.getByRole('link', { name: 'Build a tasting' }).click();
  await page.getByRole('checkbox', { name: 'Taster A' }).check();
  await page.getByRole('checkbox', { name: /Taster H/ }).check();
  await page.getByRole('button', { name: 'Draw codes and orders' }).click();
  await expect(page).toHaveURL(/\/tastings\/[^/]+$/);
  await expect(page.getByText(/Taster H avoids alcohol/).first()).toBeVisible();
  const { tastings: now } = await sample.ask('tastings:list', {});
  expect(now).toHaveLength(tastings.length + 1);
  const codesOf = async (tasting: string) =>
    (await sample.ask('tastings:open', { tasting })).sampleList.map(({ code }) => code);
  const second = now.find(({ id }) => !tastings.some((one) => one.id === id));
  const firstCodes = await codesOf(first?.id ?? '');
  for (const code of await codesOf(second?.id ?? '')) expect(firstCodes).not.toContain(code);
});

test('a score that can’t be kept is said at its cell and kept when tried again', async ({ workbench }) => {
  const { page } = workbench;
  const { tasting, orders } = await builtTasting(workbench);
  await workbench.open(`/tastings/${tasting}/sheet/${orders[0]?.taster}`);
  const cell = page.getByRole('textbox', { name: /^tang of/ }).first();
  await cell.click();
  // The desk answers as a full disk would.
  await page.route('**/*', async (route) => {
    if (route.request().postData()?.includes('scores:enter') !== true) return route.continue();
    return route.fulfill({
      status: 200,
      contentType: 'application/json',
      body: JSON.stringify({ ok: false, error: { code: 'store-full', message: 'The disk is full.' } }),
    });
  });
  await page.keyboard.press('6');
  await page.keyboard.press('Enter');
  await expect(page.getByText('The disk is full.')).toBeVisible();
  await expect(cell).toHaveValue('6');
  await expect(page.getByText('0 of 24 kept')).toBeVisible();
  await page.unroute('**/*');
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(page.getByText('1 of 24 kept')).toBeVisible();
  expect((await workbench.ask('scores:list', { tasting })).scores.map(({ score }) => score)).toEqual([6]);
});

test('closing asks once, says that it can’t be undone, and leads to the findings', async ({ sample }) => {
  const { page } = sample;
  const { tastings } = await sample.ask('tastings:list', {});
  const open = tastings.find(({ closedAt }) => closedAt === null);
  await sample.open(`/tastings/${open?.id}`);
  await page.getByRole('button', { name: 'Close and reveal…' }).click();
  await expect(page.getByRole('dialog')).toContainText('This can’t be undone.');
  await page.getByRole('button', { name: 'Keep it open' }).click();
  expect((await sample.ask('tastings:open', { tasting: open?.id ?? '' })).closedAt).toBeNull();
  await page.getByRole('button', { name: 'Close and reveal…' }).click();
  await page.getByRole('button', { name: 'Close and reveal now' }).click();
  await expect(page).toHaveURL(new RegExp(`/trials/${open?.trial}/findings$`));
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/tastings/${open?.id}`);
  await expect(page.getByRole('heading', { name: 'Which code was which jar' })).toBeVisible();
  await expect(page.getByRole('row', { name: /Sour cherry/ })).toBeVisible();
});

test('one person alone stays blind: cups by place, codes read at the end, scores under their codes', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { trial, jars } = await tasteKitchen(workbench, ['Ann']);
  await workbench.open(`/trials/${trial}/taste`);
  await page.getByRole('link', { name: 'I taste alone' }).click();
  await page.getByRole('radio', { name: 'Ann' }).check();
  await page.getByRole('button', { name: 'Draw codes and orders' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('I taste alone');
  await page.getByRole('button', { name: 'Go on' }).click();
  await page.getByRole('button', { name: 'Go on' }).click();
  const cells = page.getByRole('textbox', { name: /of Cup/ });
  await cells.first().click();
  // The cup that is tasted first gets 1s, the next 2s, and so on.
  for (const digit of '1234') {
    for (let attribute = 0; attribute < 6; attribute += 1) {
      await page.keyboard.press(digit);
      await page.keyboard.press('Enter');
    }
  }
  await expect(page.getByRole('button', { name: 'Go on' })).toBeFocused();
  const { tastings } = await workbench.ask('tastings:list', {});
  const tasting = tastings[0]?.id ?? '';
  await expect
    .poll(async () => (await workbench.ask('drafts:open', { name: `tasting alone ${tasting}` })).draft !== null)
    .toBe(true);
  await page.waitForTimeout(600);
  await page.reload();
  await expect(cells.first()).toHaveValue('1');
  const firstCup = Number((await cells.first().getAttribute('aria-label'))?.match(/Cup (\d)/)?.[1]);
  await page.getByRole('button', { name: 'Go on' }).click();
  const { sampleList } = await workbench.ask('tastings:open', { tasting });
  const codes = sampleList.map(({ code }) => code);
  await page.getByLabel('Code under cup 1').fill('999');
  await expect(page.getByText('No sample of this tasting has the code 999.')).toBeVisible();
  for (const [place, code] of codes.entries()) await page.getByLabel(`Code under cup ${place + 1}`).fill(code);
  await page.getByRole('button', { name: 'Put the scores under their codes' }).click();
  await expect(page.getByRole('heading', { name: 'Reveal', exact: true })).toBeVisible();
  const { scores } = await workbench.ask('scores:list', { tasting });
  expect(scores).toHaveLength(24);
  const ofFirst = scores.filter(({ sample }) => sample === codes[firstCup - 1]);
  expect(ofFirst.map(({ score }) => score)).toEqual([1, 1, 1, 1, 1, 1]);
  expect((await workbench.ask('drafts:open', { name: `tasting alone ${tasting}` })).draft).toBeNull();
  await page.getByRole('button', { name: 'Close and reveal…' }).click();
  await page.getByRole('button', { name: 'Close and reveal now' }).click();
  await expect(page).toHaveURL(/findings$/);
  expect(jars).toHaveLength(4);
});

test('a sip is four digits, shown back in words, kept apart from the panel’s scores, and can be taken out', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { trial, jars } = await tasteKitchen(workbench);
  await workbench.open(`/trials/${trial}/taste`);
  await page.getByLabel('A sip of jar A').fill('5637');
  await expect(page.getByText('That is: tang 5, fizz 6, sweetness 3, liking 7 (like moderately).')).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(page.getByText('A sip of jar A is kept.')).toBeVisible();
  await page.getByLabel('Which jar').selectOption({ label: 'B · 10 g' });
  await page.getByLabel('A sip of jar B').fill('10637');
  await expect(page.getByText(/Put spaces between/)).toBeVisible();
  await page.getByLabel('A sip of jar B').fill('10 6 3 7');
  await page.getByRole('button', { name: 'Keep this sip' }).click();
  await expect(page.getByText('tang 10, fizz 6, sweetness 3, liking 7 (like moderately)')).toBeVisible();
  const { sips } = await workbench.ask('sips:byTrial', { trial });
  expect(sips.map(({ label, tang, liking }) => `${label} ${tang} ${liking}`)).toEqual(['A 5 7', 'B 10 7']);
  expect((await workbench.ask('findings:read', { trial })).scores).toEqual([]);
  await page.getByRole('button', { name: /Take out the sip of jar A/ }).click();
  await expect.poll(async () => (await workbench.ask('sips:byTrial', { trial })).sips.length).toBe(1);
  await page.getByRole('link', { name: 'Sips of every standing jar' }).click();
  await expect(page.getByLabel(`A sip of jar ${jars[3]?.label}`)).toBeVisible();
});
