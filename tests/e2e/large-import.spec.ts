import { tasteKitchen } from './taste-kitchen.ts';
import { expect, test } from './workbench.ts';

const rows = 200_000;

test('a table of 200,000 readings is read while the window stays usable, and can be stopped', async ({ workbench }) => {
  test.setTimeout(180_000);
  const { page } = workbench;
  const { trial, jars } = await tasteKitchen(workbench);
  await workbench.open(`/trials/${trial}/readings`);
  // From another program: a mark at its head, semicolons, decimal commas, and a formula in a cell.
  const lines = Array.from(
    { length: rows },
    (_, place) => `${jars[place % jars.length]?.label};0,${place % 9};${place % 9},5;=1+1`,
  );
  const table = `\uFEFFjar;hours;brix;note\r\n${lines.join('\r\n')}\r\n`;
  await page.evaluate(() => {
    const watch = { last: performance.now(), longest: 0 };
    Object.assign(window, { watch });
    setInterval(() => {
      watch.longest = Math.max(watch.longest, performance.now() - watch.last);
      watch.last = performance.now();
    }, 20);
  });
  await page.locator('input[type=file]').setInputFiles({
    name: 'readings.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(table, 'utf8'),
  });
  await expect(page.getByText('readings.csv: 200,001 lines, too many to show here.')).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('200,000 readings can be taken.')).toBeVisible({ timeout: 90_000 });
  await page.getByRole('button', { name: /^Take 200,000 readings/ }).click();
  const progress = page.getByRole('progressbar', { name: 'Keeping the readings…' });
  await expect
    .poll(() => progress.evaluate((bar: HTMLProgressElement) => bar.value), { timeout: 60_000 })
    .toBeGreaterThan(0.02);
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(page.getByText(/^Stopped before the end/)).toBeVisible({ timeout: 60_000 });
  const longest_ms = await page.evaluate(() => (window as unknown as { watch: { longest: number } }).watch.longest);
  test.info().annotations.push({ type: 'longest pause, ms', description: String(Math.round(longest_ms)) });
  expect(longest_ms).toBeLessThan(2500);
  expect((await workbench.ask('jars:open', { jar: jars[0]?.id ?? '' })).readings).toEqual([]);
});
