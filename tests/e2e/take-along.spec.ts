import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Download, Page } from '@playwright/test';
import { tabTo } from './looked-over.ts';
import { tasteKitchen } from './taste-kitchen.ts';
import { expect, test, type Workbench } from './workbench.ts';

async function trialOf({ ask }: Workbench, words: string): Promise<string> {
  const { trials } = await ask('trials:list', {});
  return trials.find(({ question }) => question.includes(words))?.id ?? '';
}

async function contentOf(download: Download): Promise<string> {
  return readFileSync(await download.path(), 'utf8');
}

async function drop(page: Page, name: string, content: string): Promise<void> {
  const data = await page.evaluateHandle(
    ([called, text]) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([text ?? ''], called ?? ''));
      return transfer;
    },
    [name, content],
  );
  await page.dispatchEvent('body', 'dragover', { dataTransfer: data });
  await page.dispatchEvent('body', 'drop', { dataTransfer: data });
}

test('everything as files: by mouse, into a folder that is named, with every table described', async ({ sample }) => {
  const { page } = sample;
  await sample.open('/data');
  await page.getByRole('button', { name: 'Save everything as files' }).click();
  const said = page.getByRole('status').filter({ hasText: /in all, stand in/ });
  await expect(said).toBeVisible({ timeout: 30_000 });
  const folder = (await said.locator('.data-path').textContent()) ?? '';
  const files = readdirSync(folder);
  expect(files).toContain('kitchen.json');
  const described = files.filter((name) => name.endsWith('.csv'));
  expect(described.length).toBeGreaterThan(15);
  const metadata = files.find((name) => name.endsWith('-metadata.json')) ?? '';
  const { tables } = JSON.parse(readFileSync(join(folder, metadata), 'utf8')) as {
    tables: { url: string; tableSchema: { columns: { name: string }[] } }[];
  };
  expect(tables.map(({ url }) => url).sort()).toEqual(described.sort());
  for (const { url, tableSchema } of tables) {
    const [head = ''] = readFileSync(join(folder, url), 'utf8').replace('\uFEFF', '').split(/\r?\n/);
    expect(
      tableSchema.columns.map(({ name }) => name),
      url,
    ).toEqual(head.split(','));
  }
});

test('a trial is saved as a file by keyboard, dropped on another kitchen’s window, looked at first, taken in, and undone', async ({
  sample,
}) => {
  const { page } = sample;
  const trial = await trialOf(sample, 'pear and ginger');
  await sample.open(`/trials/${trial}`);
  await tabTo(page, 'button', 'Save as a file');
  const coming = page.waitForEvent('download');
  await page.keyboard.press('Enter');
  const download = await coming;
  expect(download.suggestedFilename()).toMatch(/\.sidejar-trial$/);
  const text = await contentOf(download);

  // The same kitchen without its sample is another one: nothing of the trial stands in it.
  await sample.ask('kitchen:removeSample', {});
  await expect.poll(async () => (await sample.ask('trials:list', {})).trials).toHaveLength(0);
  await drop(page, 'pears.sidejar-trial', text);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Data');
  await expect(page.getByText(/^A trial from “.*”\. It would bring:$/)).toBeVisible();
  expect((await sample.ask('trials:list', {})).trials).toHaveLength(0);
  await page.getByRole('button', { name: 'Take it in' }).click();
  await expect(page.getByText(/^Taken in from/)).toBeVisible();
  const [taken] = (await sample.ask('trials:list', {})).trials;
  expect(taken).toMatchObject({ id: trial });
  await page
    .getByRole('button', { name: /^undo: take in/i })
    .first()
    .click();
  await expect.poll(async () => (await sample.ask('trials:list', {})).trials).toHaveLength(0);
});

test('the findings are saved as text, with the answer first and no name of a taster', async ({ sample }) => {
  const { page } = sample;
  const trial = await trialOf(sample, 'pear and ginger');
  await sample.open(`/trials/${trial}/findings`);
  await expect(page.getByRole('figure').first()).toBeVisible({ timeout: 20_000 });
  await tabTo(page, 'button', 'Save as text (Markdown)');
  const coming = page.waitForEvent('download');
  await page.keyboard.press('Enter');
  const download = await coming;
  expect(download.suggestedFilename()).toMatch(/\.md$/);
  const text = await contentOf(download);
  expect(text).toMatch(/^# /);
  expect(text).toContain('| Level |');
  const { tasters } = await sample.ask('tasters:list', {});
  for (const { name } of tasters) expect(text).not.toContain(name);
});

test('a table from a file is read as readings: two bytes a letter, semicolons, decimal commas, a formula', async ({
  workbench,
}) => {
  const { page } = workbench;
  const { trial, jars } = await tasteKitchen(workbench);
  await workbench.open(`/trials/${trial}/readings`);
  const table = ['jar;hours;brix;note', `${jars[0]?.label};0,5;6,4;=HYPERLINK("x")`, `${jars[1]?.label};0,5;sour;`];
  await page.locator('input[type=file]').setInputFiles({
    name: 'readings.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(`\uFEFF${table.join('\r\n')}\r\n`, 'utf16le'),
  });
  await expect(page.getByText('1 reading can be taken.')).toBeVisible();
  await expect(page.getByText('1 place in the table can’t be taken:').first()).toBeVisible();
  await expect(page.getByRole('row', { name: /^3 brix/ })).toBeVisible();
  await tabTo(page, 'button', 'Take 1 reading');
  await page.keyboard.press('Enter');
  await expect(page.getByText('1 reading kept.')).toBeVisible();
  const { readings } = await workbench.ask('jars:open', { jar: jars[0]?.id ?? '' });
  expect(readings).toMatchObject([{ brix: 6.4, note: '=HYPERLINK("x")' }]);

  // What is no table says so in a sentence, and the page stays as it was.
  await workbench.open(`/trials/${trial}`);
  await drop(page, 'nonsense.csv', '\u0000\u0001 once upon a time');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Readings from a table');
  await expect(page.getByText('No reading can be taken.').or(page.getByRole('alert')).first()).toBeVisible();
  await expect(page.getByRole('button', { name: /^Take \d/ })).toHaveCount(0);
});

test('what can’t be taken where it was dropped is said in a sentence, and nothing is left behind', async ({
  workbench,
}) => {
  const { page } = workbench;
  await workbench.open('/trials');
  await drop(page, 'scores.csv', 'a,b\n1,2\n');
  await expect(page.getByText('A table can be dropped on a tasting’s page (scores)', { exact: false })).toBeVisible();
  await drop(page, 'movie.mkv', 'x');
  await expect(page.getByText('Files that can be dropped here:', { exact: false })).toBeVisible();
  await drop(page, 'kitchen.json', '{"__proto__":{"a":1}}');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Data');
  await expect(page.getByRole('alert')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Take it in' })).toHaveCount(0);
  expect(existsSync(`${workbench.store}.photos`)).toBe(false);
});

test('a kitchen that lies near at hand opens when it is dropped on the window; one from elsewhere is said, and nothing changes', async ({
  sample,
}) => {
  const { page, store } = sample;
  const other = join(dirname(store), 'other.sidejar');
  await sample.ask('store:backup', { to: other });
  await sample.ask('kitchen:removeSample', {});
  await sample.open('/trials');
  await expect(page.getByRole('link', { name: 'Plan your first trial' })).toBeVisible();
  const dropKitchen = async (name: string, size: number, lastModified: number) => {
    const data = await page.evaluateHandle(
      ([called, length, time]) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([new Uint8Array(Number(length))], String(called), { lastModified: Number(time) }));
        return transfer;
      },
      [name, size, lastModified] as const,
    );
    await page.dispatchEvent('body', 'drop', { dataTransfer: data });
  };
  await dropKitchen('far.sidejar', 4096, Date.now());
  await expect(page.getByText(/none of the kitchens in the usual folders is surely far\.sidejar/)).toBeVisible();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Data');
  const { size, mtimeMs } = statSync(other);
  await dropKitchen('other.sidejar', size, Math.round(mtimeMs));
  await expect(page.getByText(/^Opened .*other\.sidejar\.$/)).toBeVisible();
  await expect.poll(async () => (await sample.ask('trials:list', {})).trials.length).toBeGreaterThan(0);
});
