import { expectAccessible, expectNoSidewaysScroll, tabTo } from './looked-over.ts';
import { builtTasting } from './taste-kitchen.ts';
import { expect, test } from './workbench.ts';

test('mould takes a jar out of the tasting, and the sheet says so in its place; a mistaken look brings it back', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { jars, codes, tasting, tasters, attributes } = await builtTasting(workbench);
  const [jar] = jars;
  const code = codes[jar?.id ?? ''] ?? '';
  await workbench.ask('scores:enter', {
    tasting,
    scores: [{ taster: 'Ann', sample: code, attribute: attributes[0]?.name ?? '', score: 4 }],
  });

  await workbench.open(`/jars/${jar?.id}`);
  await page.getByRole('button', { name: 'Mould: discard the jar' }).click();
  await expect(page.getByText('It is taken out of First round.')).toBeVisible();
  await expect(page.getByText('Discarded, the control: mould', { exact: true })).toBeVisible();

  await page.goto(`${page.url().split('#')[0]}#/tastings/${tasting}`);
  await expect(page.getByText(`Cup ${code} is taken away: its jar was discarded (mould).`)).toBeVisible();
  await expect(page.getByText('0 of 18').first()).toBeVisible();
  await page.getByRole('link', { name: 'Ann', exact: true }).click();
  const row = page.getByRole('row').filter({ hasText: code });
  await expect(row).toContainText('Its jar was discarded (mould): don’t taste it.');
  await expect(row.getByRole('textbox')).toHaveCount(0);
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await page.setViewportSize({ width: 1280, height: 800 });

  // By keys alone the sheet goes past it: three cups of six attributes are eighteen digits and as many moves.
  const sheet = page.getByRole('table', { name: 'Sheet of Ann' });
  await sheet.getByRole('textbox').first().focus();
  for (let cell = 0; cell < 18; cell += 1) {
    await page.keyboard.press('5');
    await page.keyboard.press('Enter');
  }
  await expect(page.getByText('18 of 18 kept')).toBeVisible();
  await expect(page.getByText('Every sample has its scores. Thank you.')).toBeVisible();
  expect(tasters).toHaveLength(2);

  await page.goto(`${page.url().split('#')[0]}#/tastings/${tasting}/pen-sheets`);
  await expect(page.getByRole('heading', { name: 'Ann' })).toBeVisible();
  await expect(page.locator('.pen-sheet').first()).not.toContainText(code);

  await page.goto(`${page.url().split('#')[0]}#/jars/${jar?.id}`);
  await tabTo(page, 'button', /^Seen by mistake: mould/);
  await page.keyboard.press('Enter');
  const asking = page.getByRole('dialog', { name: 'Was it no mould?' });
  await asking.getByRole('button', { name: 'film yeast' }).click();
  await page.keyboard.press('Tab');
  await expectAccessible(page);
  await asking.getByRole('button', { name: 'It was a mistake' }).press('Enter');
  await expect(page.getByText(`Jar ${jar?.label} is back. It counts again in First round.`)).toBeVisible();
  const diary = page.getByRole('list', { name: 'Diary' });
  await expect(diary.locator('s')).toHaveText('mould');
  await expect(diary).toContainText('seen by mistake, corrected');
  await expect(diary).toContainText('film yeast');
  await expectAccessible(page);
  expect(await workbench.ask('tastings:open', { tasting })).toMatchObject({ samples: 4 });

  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(page.getByText('Discarded, the control: mould', { exact: true })).toBeVisible();
});

test('a smell is tapped and named in a word; mould in the base stands at each jar poured from it', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { base } = await workbench.ask('bases:start', { name: 'Saturday', volume_mL: 3000 });
  const { trial, jars } = await workbench.ask('trials:save', {
    question: 'How much ginger?',
    factor: 'amount',
    levels: [
      { name: '5 g', value: 5 },
      { name: '10 g', value: 10 },
    ],
    control: '5 g',
    held: { additions: [{ ingredient: 'ginger root, raw', mass_g: 5, state: 'fresh' }], days: 2 },
    calendar: 'staggered-pull',
    base,
    baseAvailable_mL: 3000,
    baseEach_mL: 700,
    vessel: { kind: 'open-jar', capacity_mL: 1000 },
    start: new Date(Date.now() - 3_600_000).toISOString(),
    seed: 1,
  });
  await workbench.ask('jars:start', { jars: jars.map(({ id }) => id) });
  await workbench.open(`/jars/${jars[0]?.id}`);
  await tabTo(page, 'button', 'smells of …');
  await page.keyboard.press('Enter');
  await page.keyboard.type('vinegar');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('list', { name: 'Diary' })).toContainText('smells of vinegar');

  await workbench.ask('sightings:log', { base, what: 'mould' });
  await expect(page.getByText('Its base, “Saturday”, was seen with mould.')).toBeVisible();
  await page.goto(`${page.url().split('#')[0]}#/trials/${trial}`);
  await expect(page.getByText('Its base, “Saturday”, was seen with mould.')).toBeVisible();
  await expectAccessible(page);
});

test('a jar that is in bottles is read by what was noted at closing', async ({ workbench }) => {
  const { page } = workbench;
  const { jars } = await builtTasting(workbench);
  const jar = jars[0]?.id ?? '';
  await workbench.ask('bottles:fill', { jar, count: 2, size_mL: 330, closure: 'swing-top', sugar_g_per_L: 9 });
  await workbench.open(`/jars/${jar}`);
  await expect(page.getByText(/into 2 × 330\smL \(swing-top.*\) with 9(\.0)?\sg\/L of sugar left/)).toBeVisible();
  await expect(page.getByText('Nobody has said what pressure the bottles are made for')).toBeVisible();
});
