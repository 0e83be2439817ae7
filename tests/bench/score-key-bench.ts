// From a key on the scoring sheet to its paint, with 12 tasters × 8 jars × 8 attributes. Run: npm run bench
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium, type Page } from 'playwright';
import { type DeskLine, openDeskLine } from '#hosts/desk-line.ts';
import { startLoopback } from '#hosts/loopback/loopback-server.ts';
import { buildWhenStale } from '#scripts/build.ts';
import { findBrowser } from '#scripts/find-browser.ts';
import type { AskedOf, RequestName, ValueOf } from '#shared/contract/all-requests.ts';
import { medianAnd95, quantile } from './percentiles.ts';

const dist = join(import.meta.dirname, '..', '..', 'dist');
const aim_ms = 16;
const size = { tasters: 12, jars: 8, attributes: 8 };
const sheets = 2;
/** How long a page takes to come to rest. */
const settles_ms = 4000;
/** Some 15 keys a second: faster than scores are written. */
const between_ms = 60;
/** The first keys let the browser compile what it runs. */
const warmUp = 16;

async function asked<Name extends RequestName>(
  line: DeskLine,
  name: Name,
  input: AskedOf<Name>,
): Promise<ValueOf<Name>> {
  const envelope = await line.ask({ ask: `bench-${name}`, name, input });
  if (!envelope.ok) throw new Error(`${name}: ${envelope.error.message}`);
  return envelope.value as ValueOf<Name>;
}

/** A tasting of that size, with all sheets but the first filled in; gives the first taster's sheet. */
async function fullTasting(line: DeskLine): Promise<string> {
  const { trial, jars } = await asked(line, 'trials:save', {
    question: 'How many days?',
    factor: 'days',
    levels: Array.from({ length: size.jars }, (_, place) => ({ name: `${place + 1} days`, value: place + 1 })),
    control: '1 days',
    held: { additions: [] },
    calendar: 'staggered-pull',
    baseAvailable_mL: 8000,
    baseEach_mL: 700,
    vessel: { kind: 'open-jar', capacity_mL: 1000 },
    start: new Date(Date.now() - 3_600_000).toISOString(),
    seed: 1,
  });
  await asked(line, 'jars:start', { jars: jars.map(({ id }) => id) });
  const tasters: string[] = [];
  for (let place = 1; place <= size.tasters; place += 1) {
    tasters.push((await asked(line, 'tasters:save', { name: `Taster ${place}` })).taster);
  }
  const { tasting, codes } = await asked(line, 'tastings:build', {
    trial,
    name: 'Bench',
    samples: jars.map(({ id }) => ({ jar: id })),
    tasters,
    attributes: Array.from({ length: size.attributes }, (_, place) => ({
      name: place === 0 ? 'liking' : `attribute ${place}`,
      low: 0,
      high: 9,
    })),
    seed: 5,
  });
  const { attributes } = await asked(line, 'tastings:open', { tasting });
  const scores = tasters
    .slice(1)
    .flatMap((taster) =>
      Object.values(codes).flatMap((code) =>
        attributes.map(({ name }, place) => ({ taster, sample: code, attribute: name, score: (place * 3 + 1) % 9 })),
      ),
    );
  await asked(line, 'scores:enter', { tasting, scores });
  return `/tastings/${tasting}/sheet/${tasters[0]}`;
}

/** Types a digit into each cell and goes on by Enter, over and over; milliseconds from the key's own time to the end of the frame that shows it. */
async function timedKeys(page: Page): Promise<number[]> {
  await page.evaluate(() => {
    const took: number[] = [];
    Object.assign(window, { took });
    addEventListener(
      'keydown',
      ({ timeStamp }) =>
        requestAnimationFrame(() => {
          // A message is read only after style, layout and paint of the frame.
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => took.push(performance.now() - timeStamp);
          port2.postMessage(null);
        }),
      { capture: true },
    );
  });
  const cells = size.jars * size.attributes;
  await page.locator('input[data-sample="0"][data-attribute="0"]').focus();
  for (let turn = 0; turn < sheets * cells; turn += 1) {
    if (turn > 0 && turn % cells === 0) await page.locator('input[data-sample="0"][data-attribute="0"]').focus();
    for (const key of [String(1 + ((turn * 7) % 8)), 'Enter']) {
      await page.keyboard.press(key);
      await page.waitForTimeout(between_ms);
    }
  }
  const typed = await page
    .locator('table input[data-attribute]')
    .evaluateAll((inputs) => inputs.filter((input) => input instanceof HTMLInputElement && input.value !== '').length);
  if (typed < cells - 1) throw new Error(`Only ${typed} of ${cells} cells took a digit.`);
  return page.evaluate(() => (window as unknown as { took: number[] }).took);
}

async function keysIn(browserPath: string, address: string, screen: string): Promise<number[]> {
  const browser = await chromium.launch({
    executablePath: browserPath,
    args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
  });
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.goto(address);
    await page.locator('h1').waitFor();
    await page.evaluate((hash) => {
      location.hash = hash;
    }, screen);
    await page.locator('input[data-sample="0"][data-attribute="0"]').waitFor();
    // The other screens are read while nobody does anything: that comes before the first score.
    await page.waitForTimeout(settles_ms);
    return (await timedKeys(page)).slice(warmUp);
  } finally {
    await browser.close();
  }
}

/** Prints the median and the 95th percentile; the aim is one frame of 16 ms. */
export async function scoreKeyBench(): Promise<void> {
  const browserPath = findBrowser();
  if (browserPath === null) {
    console.log('scoring sheet: not measured, no Chromium, Chrome or Edge is installed here');
    return;
  }
  await buildWhenStale(console.log);
  const folder = mkdtempSync(join(tmpdir(), 'sidejar-keys-'));
  const line = openDeskLine({
    worker: pathToFileURL(join(dist, 'desk-worker.js')),
    store: join(folder, 'kitchen.sidejar'),
  });
  const loopback = await startLoopback({ line, page: join(dist, 'page'), port: 0 });
  try {
    const screen = await fullTasting(line);
    const keys = await keysIn(browserPath, loopback.address(), screen);
    console.log(
      `scoring sheet, ${size.tasters} tasters × ${size.jars} jars × ${size.attributes} attributes, from key to paint, with the wait for the screen’s beat (${keys.length} keys): ${medianAnd95(keys)}; aim ${aim_ms} ms: ${quantile(keys, 0.95) <= aim_ms ? 'met' : 'missed'}`,
    );
  } finally {
    await loopback.close();
    await line.close();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}
