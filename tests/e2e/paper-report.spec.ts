import { daysTrial, expectNothingCutOff, printed, readOnPaper, sixPulled, tasteSix } from './paper-kitchen.ts';
import { expect, test } from './workbench.ts';

const a4 = [210, 297];
const letter = [216, 279.5];

test('the report of the sample’s days trial is one page: question, answer with its doubt, charts, means, winner, cautions', async ({
  sample,
}) => {
  const { page, ask } = sample;
  const trial = await daysTrial(sample);
  await sample.open(`/trials/${trial}/findings`);
  await page.getByRole('link', { name: 'Print a report' }).click();
  const sheet = page.getByRole('article', { name: 'The report' });
  await expect(sheet.locator('.recharts-surface')).toHaveCount(6, { timeout: 20_000 });
  await expect(sheet.getByText(/Selling is another matter/)).toBeVisible();
  const { headline } = await ask('findings:read', { trial });
  const words = await readOnPaper(page);
  for (const needed of [
    'How many days should pear and ginger stand?',
    headline?.sentence ?? 'no headline',
    headline?.sureness ?? 'no sureness',
    ...(headline?.doubts ?? ['no doubts']),
    'B 2 days (control)',
    'stirring once a day',
    'Best liked: 3 days, 7.4',
    'gas builds up in anything closed',
  ]) {
    expect(words).toContain(needed);
  }
  await expect(sheet.getByRole('row', { name: /^Liking 5\.3 . 6\.5 . 7\.4 . 5\.1 .$/ })).toBeVisible();
  for (const [paper, size] of [
    ['a4', a4],
    ['letter', letter],
  ] as const) {
    await page.getByLabel('Paper').selectOption(paper);
    expect(await printed(page)).toEqual({ pages: 1, sizes_mm: [size] });
    await expectNothingCutOff(page, '.report');
  }
});

test('the report of a trial of six levels and six attributes is one page too', async ({ workbench }) => {
  const { page } = workbench;
  const six = await sixPulled(workbench);
  await workbench.open(`/trials/${six.trial}/report`);
  await expect(page.getByText('Nothing to report yet')).toBeVisible();
  await tasteSix(workbench, six);
  await workbench.open(`/trials/${six.trial}/report`);
  await expect(page.locator('.recharts-surface')).toHaveCount(6, { timeout: 30_000 });
  await expect(page.getByText(/Best liked: 3 days/)).toBeVisible();
  for (const [paper, size] of [
    ['a4', a4],
    ['letter', letter],
  ] as const) {
    await page.getByLabel('Paper').selectOption(paper);
    expect(await printed(page)).toEqual({ pages: 1, sizes_mm: [size] });
    await expectNothingCutOff(page, '.report');
  }
});
