import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test, type Workbench } from './workbench.ts';

async function trialOf(workbench: Workbench, factor: string): Promise<string> {
  const { trials } = await workbench.ask('trials:list', {});
  return trials.find((trial) => trial.factor === factor)?.id ?? '';
}

async function onlyTest(workbench: Workbench): Promise<string> {
  const { discriminations } = await workbench.ask('discriminations:list', {});
  return discriminations[0]?.id ?? '';
}

/** The place of the odd cup on every tray, as only the pouring list tells. */
async function oddPlaces(workbench: Workbench, discrimination: string): Promise<number[]> {
  const { list } = await workbench.ask('discriminations:pour', { discrimination });
  return list.map(({ cups }) => [...cups].findIndex((cup) => cups.split(cup).length === 2) + 1);
}

async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let presses = 0; presses < 80; presses += 1) {
    const here = await page.evaluate(() => {
      const at = document.activeElement;
      const label =
        at instanceof HTMLInputElement || at instanceof HTMLSelectElement ? at.labels?.[0]?.textContent : null;
      return label ?? at?.getAttribute('aria-label') ?? at?.textContent ?? '';
    });
    if (name.test(here)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never came to ${name}.`);
}

test('by mouse: set up a triangle, answer blind, reveal once, read the sentence', async ({ sample }) => {
  const { page, ask } = sample;
  await sample.open(`/trials/${await trialOf(sample, 'days')}/telling-apart`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Telling two jars apart');
  await expect(page.getByRole('button', { name: 'Set it up' })).toBeDisabled();
  await page.getByRole('checkbox', { name: 'Taster A' }).check();
  await expect(page.getByText('1 answer can’t show a difference')).toBeVisible();
  await expect(page.getByText('Whether anybody else would notice stays open.')).toBeVisible();
  await page.getByRole('button', { name: 'Choose all' }).click();
  // ISO 4120: six of eight at 5 %.
  await expect(page.getByText('Of 8 answers, 6 right would be more than luck')).toBeVisible();
  await expect(page.getByText('Taster H avoids alcohol')).toBeVisible();
  await page.getByLabel('The other jar').selectOption({ label: 'D: 4 days' });
  await page.getByRole('button', { name: 'Set it up' }).click();

  await expect(page.getByText('0 of 8 answers in')).toBeVisible();
  // It takes the focus but does nothing yet, and looks like it.
  await expect(page.getByRole('button', { name: 'Close and reveal' })).toHaveCSS('border-style', 'dashed');
  const discrimination = await onlyTest(sample);
  await expect(page.locator('main')).not.toContainText(/jar [A-D]\b|\b4 days\b|\b2 days\b/);
  const odd = await oddPlaces(sample, discrimination);
  const choose = (tray: number, place: number) =>
    page
      .getByRole('group', { name: `Taster ${'ABCDEFGH'[tray]}`, exact: true })
      .getByRole('radio')
      .nth(place - 1)
      .check();
  for (let tray = 0; tray < 3; tray += 1) await choose(tray, odd[tray] ?? 0);
  await expect(page.getByText('3 of 8 answers in')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Close and reveal' })).toHaveCSS('border-style', 'solid');

  // Half filled: kept when the page is left.
  await page.getByRole('link', { name: 'Tests of this trial' }).click();
  await page.getByRole('link', { name: /Odd one out/ }).click();
  await expect(page.getByText('3 of 8 answers in')).toBeVisible();
  await page.getByRole('button', { name: 'Take back: Taster C' }).click();
  await expect(page.getByText('2 of 8 answers in')).toBeVisible();
  for (let tray = 2; tray < 7; tray += 1) await choose(tray, odd[tray] ?? 0);
  await expect(page.getByText('7 of 8 answers in')).toBeVisible();

  // The pouring list opens only when asked for, and goes away again.
  await expect(page.getByText('Cup 1')).toHaveCount(0);
  await page.getByRole('button', { name: 'Open the pouring list' }).click();
  await expect(page.getByRole('cell', { name: /^\d{3}: jar [BD]$/ })).toHaveCount(24);
  await page.getByRole('button', { name: 'Put the pouring list away' }).click();
  await expect(page.getByRole('cell', { name: /jar/ })).toHaveCount(0);

  await page.getByRole('button', { name: 'Close and reveal' }).click();
  const dialog = page.getByRole('dialog', { name: 'Reveal the cups?' });
  await expect(dialog).toContainText('7 of 8 answers in; 1 is missing and will be left out.');
  await dialog.getByRole('button', { name: 'Not yet' }).click();
  expect((await ask('discriminations:open', { discrimination })).closedAt).toBeNull();
  await page.getByRole('button', { name: 'Close and reveal' }).click();
  await dialog.getByRole('button', { name: 'Reveal them' }).click();

  await expect(
    page.getByText(/^7 of 7 found the odd cup; guessing would give about 2\.3\. These two jars/),
  ).toBeVisible();
  await expect(page.getByText('The cups held jar B (2 days) and jar D (4 days).')).toBeVisible();
  await expect(
    page.getByRole('img', { name: 'Of 7: 7 right; by luck: about 2.3; more than luck: 5 or more.' }),
  ).toBeVisible();
  const stored = await ask('discriminations:open', { discrimination });
  expect(stored.list.map(({ chosen }) => chosen)).toEqual([...odd.slice(0, 7), null]);
  expect(stored.result).toMatchObject({ correct: 7, trials: 7, minimumCorrect: 5, significant: true });
  await page.getByText('How large is the difference?').click();
  await expect(page.getByText('too large to tell')).toBeVisible();
  await page.locator('summary', { hasText: 'Every answer' }).click();
  await expect(page.getByRole('cell', { name: 'no answer' })).toBeVisible();
  await expect(page.locator('main')).not.toContainText(/taste the same|no difference|proved|\bp\s*[=<]/);
  // It can't be undone: the button says so by standing still.
  await expect(page.getByRole('button', { name: /^Undo: Close the test/ })).toBeDisabled();
});

test('by keyboard alone: set up a pair with an expectation, answer with digits, reveal', async ({ sample }) => {
  const { page, ask } = sample;
  await sample.open(`/trials/${await trialOf(sample, 'days')}/telling-apart`);
  await expect(page.getByRole('heading', { name: 'Set up a test' })).toBeVisible();
  await tabTo(page, /^Odd one out/);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await tabTo(page, /^Which cup is/);
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('tangier');
  await tabTo(page, /^Either could be/);
  await page.keyboard.press('ArrowDown');
  for (const letter of ['A', 'B', 'C']) {
    await tabTo(page, new RegExp(`^Taster ${letter}`));
    await page.keyboard.press('Space');
  }
  await tabTo(page, /^Rounds for each taster/);
  await tabTo(page, /^Name of the test/);
  await page.keyboard.type('Tangier?');
  await page.keyboard.press('Enter');

  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tangier?');
  await expect(page.getByText('which cup is tangier?')).toBeVisible();
  const discrimination = await onlyTest(sample);
  await tabTo(page, /^\d{3}$/);
  await page.keyboard.press('2');
  await page.keyboard.press('Enter');
  await page.keyboard.press('1');
  await page.keyboard.press('Backspace');
  await page.keyboard.press('3');
  await page.keyboard.press('2');
  await page.keyboard.press('Enter');
  await page.keyboard.press('1');
  await page.keyboard.press('Enter');
  await expect
    .poll(async () => (await ask('discriminations:open', { discrimination })).list.map(({ chosen }) => chosen))
    .toEqual([2, 2, 1]);
  await expect(page.getByRole('button', { name: 'Close and reveal' })).toBeFocused();
  // The page hears of the last answers a moment after the desk has them.
  await expect(page.getByRole('button', { name: 'Close and reveal' })).toHaveAttribute('aria-disabled', 'false');
  await page.keyboard.press('Enter');
  await tabTo(page, /^Reveal them/);
  await page.keyboard.press('Enter');
  await expect(
    page.getByText(/of 3 chose as expected \(jar B: tangier\); guessing would give about 1\.5/),
  ).toBeVisible();
  await expect(page.getByText(/nor that they taste alike/)).toBeVisible();
  const stored = await ask('discriminations:open', { discrimination });
  expect(stored).toMatchObject({ method: 'paired', expected: 'A', asked: 'tangier' });
  expect(stored.closedAt).not.toBeNull();
});

test('a choice can be undone, another window’s answer is shown, and a removed test comes back', async ({ sample }) => {
  const { page, ask } = sample;
  const trial = await trialOf(sample, 'days');
  const { jarsWhole } = await ask('trials:open', { trial });
  const { tasters } = await ask('tasters:list', {});
  const taster = tasters[1]?.id ?? '';
  const { discrimination } = await ask('discriminations:build', {
    trial,
    name: 'Match',
    method: 'duo-trio',
    jarA: jarsWhole[0]?.id ?? '',
    jarB: jarsWhole[1]?.id ?? '',
    tasters: tasters.slice(0, 2).map(({ id }) => id),
    rounds: 2,
    seed: 3,
  });
  await sample.open(`/telling-apart/${discrimination}`);
  await expect(page.getByText('Reference', { exact: true })).toHaveCount(4);
  await page.getByRole('group', { name: 'Taster A, round 2' }).getByRole('radio').first().check();
  await expect(page.getByText('1 of 4 answers in')).toBeVisible();
  await ask('discriminations:answer', { discrimination, taster, round: 1, chosen: 2 });
  await expect(page.getByText('2 of 4 answers in')).toBeVisible();
  await page.getByRole('button', { name: /^Undo: Note/ }).click();
  await expect(page.getByText('1 of 4 answers in')).toBeVisible();
  await expect(page.getByRole('group', { name: 'Taster A, round 2' }).getByRole('radio').first()).toBeChecked();
  await page.getByRole('button', { name: 'Remove this test' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Telling two jars apart');
  expect((await ask('discriminations:list', {})).discriminations).toEqual([]);
  await page.getByRole('button', { name: /^Undo: Remove the test/ }).click();
  await expect(page.getByRole('link', { name: 'Match' })).toBeVisible();
});

async function grave(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

for (const theme of ['light', 'dark'] as const) {
  test(`open to everybody in ${theme}, and never wider than a small phone`, async ({ sample }) => {
    const { page, ask } = sample;
    await page.emulateMedia({ colorScheme: theme });
    await page.setViewportSize({ width: 360, height: 780 });
    const trial = await trialOf(sample, 'days');
    const { jarsWhole } = await ask('trials:open', { trial });
    const { tasters } = await ask('tasters:list', {});
    const build = async (name: string) =>
      (
        await ask('discriminations:build', {
          trial,
          name,
          method: 'duo-trio',
          jarA: jarsWhole[0]?.id ?? '',
          jarB: jarsWhole[3]?.id ?? '',
          tasters: tasters.map(({ id }) => id),
          rounds: 2,
        })
      ).discrimination;
    const [open, closed] = [await build('Open'), await build('Closed')];
    await ask('discriminations:answer', { discrimination: closed, taster: tasters[0]?.id ?? '', round: 1, chosen: 1 });
    await ask('discriminations:close', { discrimination: closed });
    await ask('profiles:save', {
      trial,
      wishes: [
        { attribute: 'liking', goal: 'more', low: 2, high: 9 },
        { attribute: 'tang', goal: 'target', low: 1, high: 9, target: 5 },
      ],
    });
    await sample.open('/');
    for (const path of [
      `/trials/${trial}/telling-apart`,
      `/telling-apart/${open}`,
      `/telling-apart/${closed}`,
      `/trials/${trial}/wishes`,
    ]) {
      await page.evaluate((hash) => {
        location.hash = hash;
      }, path);
      await expect(page.getByRole('heading', { level: 2 }).first()).toBeVisible();
      await page.waitForTimeout(600);
      const pouring = page.getByRole('button', { name: 'Open the pouring list' });
      if ((await pouring.count()) > 0) await pouring.click();
      for (const summary of await page.locator('main summary').all()) await summary.click();
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over, path).toBeLessThanOrEqual(0);
      expect(await grave(page), path).toEqual([]);
    }
  });
}
