import { expect, test, type Workbench } from './workbench.ts';

async function trialOf(workbench: Workbench, factor: string): Promise<string> {
  const { trials } = await workbench.ask('trials:list', {});
  return trials.find((trial) => trial.factor === factor)?.id ?? '';
}

test('wishes by mouse are kept at once, judged where something was tasted, and can be undone', async ({ sample }) => {
  const { page, ask } = sample;
  const trial = await trialOf(sample, 'days');
  const stored = async () => (await ask('profiles:open', { trial })).wishes;
  await sample.open(`/trials/${trial}/wishes`);
  await expect(page.getByText('Say at least one wish above')).toBeVisible();
  await page.getByLabel('Liking: what is wanted').selectOption('more');
  await expect(page.getByText(/“3 days” comes closest to what is wanted/)).toBeVisible();
  await expect(page.getByText('These wishes were said or changed after')).toBeVisible();
  expect(await stored()).toEqual([{ attribute: 'liking', goal: 'more', low: 1, high: 9, target: null, importance: 1 }]);
  await page.getByLabel('Liking: how much it counts').selectOption('2');
  await page.getByLabel('Tang: what is wanted').selectOption('target');
  const tang = page.getByRole('group', { name: /^Tang/ });
  await tang.getByLabel('Just right at').fill('6,5');
  await tang.getByLabel('Too much from').click();
  await expect.poll(stored).toEqual([
    { attribute: 'liking', goal: 'more', low: 1, high: 9, target: null, importance: 2 },
    { attribute: 'tang', goal: 'target', low: 0, high: 10, target: 6.5, importance: 1 },
  ]);

  // A target outside its ends is refused beside its field, and nothing else is lost.
  await tang.getByLabel('Just right at').fill('12');
  await tang.getByLabel('Too much from').click();
  await expect(tang.getByRole('alert')).toHaveText('The target must lie between the ends.');
  expect((await stored())[1]?.target).toBe(6.5);
  await tang.getByLabel('Just right at').fill('about six');
  await tang.getByLabel('Too much from').click();
  await expect(tang.getByRole('alert')).toHaveText('A number, please.');
  await tang.getByLabel('Just right at').fill('6');
  await tang.getByLabel('Just right at').press('Enter');
  await expect.poll(async () => (await stored())[1]?.target).toBe(6);
  await expect(tang.getByRole('alert')).toHaveCount(0);

  await page.getByRole('button', { name: /^Undo: Say what is wanted/ }).click();
  await expect(tang.getByLabel('Just right at')).toHaveValue('6.5');
  await page.getByText('The levels as a table').click();
  await expect(page.getByRole('row', { name: /^3 days/ })).toContainText(/\d+ of 100 \(\d+ to \d+\)/);
});

test('by keyboard alone: a wish before the tasting is not late once the codes are seen', async ({ sample }) => {
  const { page, ask } = sample;
  const trial = await trialOf(sample, 'formula');
  await sample.open(`/trials/${trial}/wishes`);
  await expect(page.getByText('No tasting of this trial is closed yet.')).toBeVisible();
  await page.getByLabel('Liking: what is wanted').focus();
  await page.keyboard.press('ArrowDown');
  const low = page.getByRole('group', { name: /^Liking/ }).getByLabel('Won’t do at');
  await expect(low).toHaveValue('1');
  await page.keyboard.press('Tab');
  await expect(low).toBeFocused();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('3');
  await page.keyboard.press('Tab');
  await expect
    .poll(async () => (await ask('profiles:open', { trial })).wishes)
    .toEqual([{ attribute: 'liking', goal: 'more', low: 3, high: 9, target: null, importance: 1 }]);
  const { tastings } = await ask('tastings:list', {});
  await ask('tastings:close', { tasting: tastings.find((tasting) => tasting.trial === trial)?.id ?? '' });
  await expect(page.getByText(/comes closest to what is wanted/)).toBeVisible();
  await expect(page.getByText('These wishes were said or changed after')).toHaveCount(0);
});

test('what the panel will see moves while its numbers change', async ({ sample }) => {
  const { page, ask } = sample;
  await sample.open(`/trials/${await trialOf(sample, 'state')}/wishes`);
  const sentence = page.getByText(/would most likely show\.$/).first();
  await expect(sentence).toHaveText(/^With 8 tasters and 2 samples a gap of \d\.\d\spoints? would most likely show\.$/);
  const experience = await ask('panel:experience', {});
  const gapOf = async (tasters: number, samples: number) => {
    const { detectableDifference } = await ask('panel:sight', {
      samples,
      tasters,
      errorSd: experience.errorSd ?? 0,
    });
    return (detectableDifference ?? 0).toFixed(1);
  };
  await page.getByLabel('Tasters', { exact: true }).fill('4');
  await expect(sentence).toHaveText(
    `With 4 tasters and 2 samples a gap of ${await gapOf(4, 2)} points would most likely show.`,
  );
  await expect(page.getByText('as in 2 closed tastings of this kitchen')).toBeVisible();
  await page.getByLabel('Tasters for a gap of (points)').fill('0,5');
  const needed = await ask('panel:sight', {
    samples: 2,
    tasters: 4,
    errorSd: experience.errorSd ?? 0,
    differences: [0.5],
  });
  await expect(page.getByText(`${needed.tastersNeededFor[0]?.tasters} tasters.`)).toBeVisible();
  await page.getByText('The chance to see a gap, as a table').click();
  await expect(page.getByRole('row', { name: /^8/ })).toContainText('%');
  await page.getByLabel('Tasters', { exact: true }).fill('1');
  await expect(page.getByText(/How sure that is can’t be told/)).toBeVisible();
});
