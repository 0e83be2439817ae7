import type { AskedOf } from '#shared/contract/all-requests.ts';
import { expectAccessible, expectNoSidewaysScroll } from './looked-over.ts';
import { expect, test, type Workbench } from './workbench.ts';

const start = Date.now() - 80 * 3_600_000;
const at = (hours: number) => new Date(start + hours * 3_600_000).toISOString();

type Plan = AskedOf<'trials:save'>;

const plan: Plan = {
  question: 'Fresh or frozen raspberries?',
  factor: 'state',
  levels: [
    { name: 'fresh', state: 'fresh' },
    { name: 'frozen', state: 'frozen' },
  ],
  control: 'fresh',
  held: {
    additions: [{ ingredient: 'raspberries', mass_g: 100, state: 'fresh' }],
    days: 3,
    cover: 'cloth',
    temperature_C: 22,
  },
  calendar: 'staggered-pull',
  baseAvailable_mL: 3000,
  baseEach_mL: 800,
  vessel: { kind: 'open-jar', capacity_mL: 1000 },
  start: at(0),
  seed: 7,
};

/** Two jars with eight readings each; the frozen one starts late. */
async function readTrial(workbench: Workbench, change: Partial<Plan> = {}) {
  const { base } = await workbench.ask('bases:start', {
    name: 'Saturday',
    volume_mL: 4000,
    sugarStart_g_per_L: 60,
    sugarNow_g_per_L: 40,
    alcohol_pctVol: 0.3,
  });
  const { trial, jars } = await workbench.ask('trials:save', { ...plan, base, ...change });
  await workbench.ask('jars:start', { jars: jars.map(({ id }) => id), at: at(0) });
  for (const [place, { id }] of jars.entries()) {
    const warmth = place === 0 ? [22, 22, 22, 22, 22, 22, 22, 22] : [11, 16, 20, 22, 22, 22, 22, 22];
    for (const [turn, hours] of [1, 5, 12, 24, 36, 48, 60, 72].entries()) {
      const brix = 4 * Math.exp(-(0.012 - 0.004 * place) * hours);
      await workbench.ask('readings:log', {
        jar: id,
        at: at(hours),
        brix: Number(brix.toFixed(1)),
        ph: Number((3.9 - 0.006 * hours).toFixed(2)),
        temperature_C: warmth[turn] ?? 22,
      });
    }
    await workbench.ask('sightings:log', { jar: id, at: at(place === 0 ? 9 : 26), what: 'first-bubbles' });
  }
  const idOf = (level: string) => jars.find((jar) => jar.level === level)?.id ?? '';
  return { trial, fresh: idOf('fresh'), frozen: idOf('frozen') };
}

test('a jar’s page says what it holds, its cold start by its own readings, and its course', async ({ workbench }) => {
  const { page } = workbench;
  const { frozen } = await readTrial(workbench);
  await workbench.open(`/jars/${frozen}`);
  const sheet = page.getByRole('region', { name: 'What it holds and may become' });
  await expect(sheet).toContainText('% full');
  await expect(sheet).toContainText('Neither figure below is a forecast');
  await expect(sheet).toContainText('the 0.3 % vol that the base holds already counted in');
  await expect(sheet).toContainText('Calibrated by this jar’s own readings: 11 °C at 1 h');
  await expect(sheet).toContainText(/Of 17\sh, the cold explains about .*\sh; the rest is not temperature/);
  const found = await workbench.ask('sheets:ofJar', { jar: frozen });
  await expect(sheet).toContainText(`${found.sheet?.alcohol.ifAllSugar_pctVol?.toFixed(2)} % vol at most`);
  await sheet.getByText('How this is reckoned').click();
  await expect(sheet).toContainText('Choi and Okos (1986)');

  const course = page.getByRole('region', { name: 'Its course' });
  await expect(course.locator('.course-reading')).toHaveCount(24);
  await expect(course.locator('.course-band')).toHaveCount(1);
  await course.getByLabel('Sweetness wanted').fill('2.6');
  await expect(course.getByText(/2\.6\s°Bx after about \d+\sh \(95\s%: \d+\sh to \d+\sh\)/)).toBeVisible();
  await expect(course.locator('.course-sweet')).toHaveCount(1);
  await course.getByText('Sugar as a table').click();
  await expect(course.getByRole('table', { name: 'Sugar: every figure' }).getByRole('row')).toHaveCount(9);
  await expect(course).toContainText(/Stood \d+\sh; that did as much as/);

  await expect(sheet).toContainText('An open jar keeps no gas');
});

test('the trial’s page draws all jars on one axis, each by its own mark and label', async ({ workbench }) => {
  const { page } = workbench;
  const { trial, fresh } = await readTrial(workbench);
  await workbench.ask('jars:pull', { jars: [fresh], at: at(75) });
  await workbench.open(`/trials/${trial}`);
  const course = page.getByRole('region', { name: 'The jars’ course' });
  await expect(course.getByRole('figure')).toHaveCount(4);
  const sugar = course.getByRole('figure').first();
  await expect(sugar.locator('.course-fall')).toHaveCount(2);
  await expect(sugar.locator('.chart-mean-words')).toHaveText(['A', 'B']);
  await expect(sugar.getByText('A pulled')).toBeVisible();
  const shapes = await sugar
    .locator('.course-reading')
    .evaluateAll((marks) => [
      ...new Set(
        marks.map((mark) => `${mark.getAttribute('fill')} ${(mark.getAttribute('d')?.match(/[aL]/g) ?? []).join('')}`),
      ),
    ]);
  expect(shapes).toHaveLength(2);
  await course.getByLabel('Sweetness wanted').fill('2');
  await expect(course.getByRole('table', { name: 'When each jar is as sweet as wanted' })).toContainText(
    '2 °Bx after about',
  );
  await expect(page.getByRole('table', { name: /Hours stood/ }).getByRole('row')).toHaveCount(3);
  const cautions = page.getByRole('region', { name: 'The usual cautions' });
  await expect(cautions).toContainText('Film yeast is not mould');
  await cautions.getByText(/^More usual cautions/).click();
  await expect(cautions).toContainText('local authority or a licensed process authority');
  await expect(cautions).toContainText('up to 4 mg/L of chlorine');
});

test('a bottle without a rating is cautioned at any pressure; what closing it would do can be asked', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { cover: _, ...held } = plan.held as Plan['held'] & { cover?: unknown };
  const { fresh } = await readTrial(workbench, { vessel: { kind: 'swing-top', capacity_mL: 1000 }, held });
  await workbench.open(`/jars/${fresh}`);
  const sheet = page.getByRole('region', { name: 'What it holds and may become' });
  await expect(sheet).toContainText(/Closed with the .*\sg\/L of its last reading/);
  await expect(sheet).toContainText('Nobody has said what pressure the vessel is made for');
  await page.getByLabel('Sugar left when it is closed').fill('0');
  await expect(sheet).toContainText('Closed with 0 g/L of sugar left');
  await expect(page.getByRole('region', { name: 'The usual cautions' })).toContainText('Use a vessel with a rating');
  await page.getByLabel('Sugar left when it is closed').fill('much');
  await page.getByLabel('Sugar left when it is closed').blur();
  await expect(
    page.getByText('"much" does not begin with one clear number; write 75, 1.5, 1/2 or 1 1/2.'),
  ).toBeVisible();
});

test('a jar of unknown sugar asks for it, and one without readings says what would be drawn', async ({ workbench }) => {
  const { page } = workbench;
  const { jars } = await workbench.ask('trials:save', plan);
  await workbench.open(`/jars/${jars[0]?.id}`);
  const sheet = page.getByRole('region', { name: 'What it holds and may become' });
  await expect(sheet).toContainText('An unknown sugar is never counted as none');
  await expect(sheet).toContainText('not known');
  await expect(sheet.getByRole('link', { name: 'Go to the bases' })).toHaveAttribute('href', '#/bases');
  await expect(page.getByText(/No reading yet\. With Brix or SG/)).toBeVisible();
  await expect(page.getByRole('figure')).toHaveCount(0);
});

test('the planned jars are filled by a slider, on the shelf at once and in the form after it', async ({
  workbench,
}) => {
  const { page } = workbench;
  await workbench.open('/trials/new');
  const slider = page.getByLabel('Pour more or less');
  await slider.focus();
  for (let press = 0; press < 5; press += 1) await page.keyboard.press('ArrowRight');
  await expect(page.getByLabel('Base in each jar')).toHaveValue('50');
  await page.getByLabel('Base in each jar').fill('800 mL');
  await expect(slider).toHaveValue('80');
  await expect(slider).toHaveAttribute('aria-valuetext', '800 mL');
});

test('jar and trial are accessible in light and dark, open and closed, and fit a small telephone', async ({
  workbench,
}) => {
  test.slow();
  const { page } = workbench;
  const { trial, frozen } = await readTrial(workbench);
  for (const screen of [`/jars/${frozen}`, `/trials/${trial}`]) {
    await page.setViewportSize({ width: 1280, height: 860 });
    await workbench.open(screen);
    await expect(page.getByRole('figure').first()).toBeVisible();
    for (const summary of await page.locator('summary').all()) await summary.click();
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
  }
});
