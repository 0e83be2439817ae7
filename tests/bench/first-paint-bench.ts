// From spawning the program to the first paint of its window, with the sample kitchen, against an empty page in the same window.
// Run: npm run bench
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { chromium, type Page } from 'playwright';
import { buildWhenStale } from '#scripts/build.ts';
import { findBrowser, hasDisplay } from '#scripts/find-browser.ts';
import { quantile } from './percentiles.ts';

const root = join(import.meta.dirname, '..', '..');
const rounds = 7;
const aim = 1.3;

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  await new Promise((resolve) => server.close(resolve));
  if (address === null || typeof address === 'string') throw new Error('No port was given.');
  return address.port;
}

/** When the page's first content was painted, by the clock of this machine, in milliseconds. */
async function firstPaint(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        new PerformanceObserver((list) => {
          const [painted] = list.getEntriesByName('first-contentful-paint');
          if (painted !== undefined) resolve(performance.timeOrigin + painted.startTime);
        }).observe({ type: 'paint', buffered: true });
      }),
  );
}

/** The page of the window that listens on this port, once it shows something of ours. */
async function shownPage(port: number): Promise<{ page: Page; close: () => Promise<void> }> {
  for (let turn = 0; turn < 300; turn += 1) {
    try {
      const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
      for (let look = 0; look < 300; look += 1) {
        const page = browser
          .contexts()
          .flatMap((context) => context.pages())
          .find((one) => one.url().startsWith('http://127.0.0.1'));
        if (page !== undefined) return { page, close: () => browser.close() };
        await wait(20);
      }
    } catch {
      // The window is not there yet.
    }
    await wait(20);
  }
  throw new Error('No window came.');
}

/** Ends what was started together with what it started, and waits until it is gone. */
async function end(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.pid === undefined) return;
  const gone = new Promise((resolve) => child.once('exit', resolve));
  process.kill(-child.pid, 'SIGTERM');
  await gone;
}

/** Milliseconds from spawning a program to the first paint of the window that it opens. */
async function timed(script: string, words: readonly string[], folder: string): Promise<number> {
  const port = await freePort();
  const flags = [...(hasDisplay() ? [] : ['--headless=new']), `--remote-debugging-port=${port}`];
  const start = Date.now();
  const child = spawn(process.execPath, [join(root, script), ...words], {
    cwd: root,
    detached: true,
    stdio: 'ignore',
    env: {
      ...process.env,
      // As `npm start` has it: what Node made of the sources the last time is used again.
      NODE_COMPILE_CACHE: join(root, 'node_modules', '.cache', 'compiled'),
      XDG_DATA_HOME: folder,
      DISPLAY: process.env.DISPLAY ?? ':none',
      SIDEJAR_WINDOW_FLAGS: flags.join(' '),
    },
  });
  try {
    const { page, close } = await shownPage(port);
    const painted = await firstPaint(page);
    await close();
    return painted - start;
  } finally {
    await end(child);
  }
}

/** Prints the ratio of the medians; the aim is 1.3. */
export async function firstPaintBench(): Promise<void> {
  if (findBrowser() === null || process.platform === 'win32') {
    console.log('first paint: not measured, no Chromium, Chrome or Edge is installed here');
    return;
  }
  await buildWhenStale(console.log);
  const folder = mkdtempSync(join(tmpdir(), 'sidejar-paint-'));
  const store = join(folder, 'kitchen.sidejar');
  const made = spawnSync(
    process.execPath,
    [join(root, 'electron/hosts/headless/main.ts'), 'kitchen:sample', '--store', store],
    { cwd: root, input: '{}', encoding: 'utf8' },
  );
  if (made.status !== 0) throw new Error(`The sample kitchen was not made: ${made.stderr}`);
  const empty: number[] = [];
  const whole: number[] = [];
  // The first of each only warms the profile up.
  for (let round = 0; round <= rounds; round += 1) {
    empty.push(await timed('tests/bench/empty-window.ts', [], join(folder, 'empty')));
    whole.push(await timed('scripts/start.ts', ['--store', store], join(folder, 'whole')));
  }
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  const [emptyMedian, wholeMedian] = [quantile(empty.slice(1), 0.5), quantile(whole.slice(1), 0.5)];
  const ratio = wholeMedian / emptyMedian;
  console.log(
    `first paint with the sample kitchen, from spawning the program (medians of ${rounds}): empty page ${emptyMedian.toFixed(0)} ms, workbench ${wholeMedian.toFixed(0)} ms; ratio ${ratio.toFixed(2)}; aim ${aim}: ${ratio <= aim ? 'met' : 'missed'}`,
  );
}
