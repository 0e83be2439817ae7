// How long a shelf of sixty jars takes to be drawn again while a slider moves on the plan. Run: npm run bench
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium, type Page } from 'playwright';
import { openDeskLine } from '#hosts/desk-line.ts';
import { startLoopback } from '#hosts/loopback/loopback-server.ts';
import { newAddition, newLevel, newPlan, type PlanDraft } from '#renderer/pages/plan/plan-draft.ts';
import { buildWhenStale } from '#scripts/build.ts';
import { findBrowser } from '#scripts/find-browser.ts';
import { medianAnd95, quantile } from './percentiles.ts';

const dist = join(import.meta.dirname, '..', '..', 'dist');
const frame_ms = 16;
const jars = 60;
const moves = 200;
/** The first moves let the browser compile what it runs. */
const warmUp = 40;

/** Five levels of twelve jars, two fruits in each. */
function plan(): PlanDraft {
  const bare = newPlan('metric', '2026-05-01T09:00', 1);
  const levels = Array.from({ length: 5 }, (_, place) => ({
    ...newLevel([]),
    key: String(place + 1),
    name: `${place + 1} days`,
    value: String(place + 1),
  }));
  const fruit = (key: string, ingredient: string, amount: string) => ({
    ...newAddition([]),
    key,
    ingredient,
    amount,
    state: 'fresh' as const,
  });
  return {
    ...bare,
    question: 'How many days?',
    levels,
    control: '1',
    replicates: 12,
    baseAvailable: '60 L',
    baseEach: '700',
    held: { ...bare.held, additions: [fruit('1', 'raspberries', '70 g'), fruit('2', 'mango', '40 g')], cover: 'cloth' },
  };
}

/** One move of the slider, in milliseconds. */
interface TimedMove {
  /** By the clock, from the slider's event to the end of layout: script, style, layout. */
  readonly clock: number;
  /** The same in the processor's own time, which a busy machine does not stretch. */
  readonly processor: number;
}

/** Moves the slider one step, waits for the layout and for the frame that shows it. */
async function moveOnce(page: Page, along: number): Promise<number> {
  return page.evaluate(async (to) => {
    const slider = document.querySelector<HTMLInputElement>('.plan-pour input');
    const shelf = document.querySelector('.plan-aside .shelf');
    if (slider === null || shelf === null) throw new Error('The plan shows no slider or no shelf.');
    const write = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
    const drawn = () => shelf.querySelector('.jar-fill')?.getAttribute('transform');
    const before = drawn();
    const start = performance.now();
    write?.call(slider, String(to));
    slider.dispatchEvent(new Event('input', { bubbles: true }));
    await Promise.resolve();
    shelf.getBoundingClientRect();
    const took = performance.now() - start;
    if (drawn() === before) throw new Error(`The slider at ${to} drew nothing new.`);
    return took;
  }, along);
}

/** Moves the slider there and back and times what each move costs. */
async function timedMoves(page: Page): Promise<TimedMove[]> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
  const spent = async () => {
    const { metrics } = await devtools.send('Performance.getMetrics');
    const of = (name: string) => metrics.find((one) => one.name === name)?.value ?? Number.NaN;
    return 1000 * (of('ScriptDuration') + of('RecalcStyleDuration') + of('LayoutDuration'));
  };
  const timed: TimedMove[] = [];
  for (let move = 0; move < moves; move += 1) {
    // The form that follows the slider has come to rest before the next move is timed.
    await page.evaluate(
      () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(() => requestIdleCallback(resolve), 0))),
    );
    const before = await spent();
    const clock = await moveOnce(page, 40 + Math.abs((move % 80) - 40));
    const processor = (await spent()) - before;
    if (move >= warmUp) timed.push({ clock, processor });
  }
  return timed;
}

/** Prints the median and the 95th percentile; the aim is one frame of 16 ms. */
export async function shelfBench(): Promise<void> {
  const browserPath = findBrowser();
  if (browserPath === null) {
    console.log('shelf: not measured, no Chromium, Chrome or Edge is installed here');
    return;
  }
  await buildWhenStale(console.log);
  const folder = mkdtempSync(join(tmpdir(), 'sidejar-shelf-'));
  const line = openDeskLine({
    worker: pathToFileURL(join(dist, 'desk-worker.js')),
    store: join(folder, 'kitchen.sidejar'),
  });
  const loopback = await startLoopback({ line, page: join(dist, 'page'), port: 0 });
  const browser = await chromium.launch({
    executablePath: browserPath,
    args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
  });
  try {
    const kept = await line.ask({ ask: 'bench-1', name: 'drafts:keep', input: { name: 'plan', body: plan() } });
    if (!kept.ok) throw new Error(kept.error.message);
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.goto(loopback.address());
    await page.locator('h1').waitFor();
    await page.evaluate(() => {
      location.hash = '/trials/new';
    });
    await page
      .locator('.plan-aside .shelf-place')
      .nth(jars - 1)
      .waitFor();
    const timed = await timedMoves(page);
    const of = (figure: keyof TimedMove) => timed.map((one) => one[figure]);
    const said = (figure: keyof TimedMove) => medianAnd95(of(figure));
    console.log(
      `shelf of ${jars} jars drawn again while the slider moves (${timed.length} moves; script, style and layout): ${said('clock')} by the clock; ${said('processor')} of the processor's time; aim ${frame_ms} ms: ${quantile(of('processor'), 0.95) <= frame_ms ? 'met' : 'missed'} in the processor's time, ${quantile(of('clock'), 0.95) <= frame_ms ? 'met' : 'missed'} by the clock`,
    );
  } finally {
    await browser.close();
    await loopback.close();
    await line.close();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}
