// How long from Enter to a ready page, against an empty page in the same kind of window. Run: npm run bench
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openBrowserWindow } from '#scripts/browser-window.ts';
import { buildWhenStale } from '#scripts/build.ts';
import { findBrowser, hasDisplay } from '#scripts/find-browser.ts';

const root = join(import.meta.dirname, '..', '..');
const rounds = 5;

// Without a display the same browser runs the same page without showing it.
const windowFlags = hasDisplay() ? [] : ['--headless=new'];

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

/** Ends a process we started together with what it started, and waits until it is gone. */
async function end(child: ChildProcess, isGroup: boolean): Promise<void> {
  if (child.exitCode !== null || child.pid === undefined) return;
  const gone = new Promise((resolve) => child.once('exit', resolve));
  process.kill(isGroup ? -child.pid : child.pid, 'SIGTERM');
  await gone;
}

/** Milliseconds from spawning the window to an empty page that has run its script. */
async function emptyPage(browser: string, profile: string): Promise<number> {
  let ready = () => {};
  const isReady = new Promise<void>((resolve) => {
    ready = resolve;
  });
  const server = createServer((request, response) => {
    if (request.url === '/ready') ready();
    response.setHeader('content-type', request.url === '/page.js' ? 'text/javascript' : 'text/html');
    response.end(
      request.url === '/page.js'
        ? "fetch('/ready')"
        : '<!doctype html><title>Empty</title><script src="/page.js"></script>',
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  const start = performance.now();
  const window = openBrowserWindow({ browser, address, profile, moreFlags: windowFlags });
  await isReady;
  const took = performance.now() - start;
  await end(window, false);
  server.closeAllConnections();
  server.close();
  return took;
}

/** Milliseconds from `npm start` to the first answer that the page has received. */
async function workbench(folder: string): Promise<number> {
  const start = performance.now();
  const child = spawn('npm', ['start', '--', '--store', join(folder, 'kitchen.sidejar')], {
    cwd: root,
    detached: true,
    env: {
      ...process.env,
      XDG_DATA_HOME: folder,
      DISPLAY: process.env.DISPLAY ?? ':none',
      SIDEJAR_WINDOW_FLAGS: windowFlags.join(' '),
    },
  });
  let said = '';
  const took = await new Promise<number>((resolve, reject) => {
    child.stderr.on('data', (part: Buffer) => {
      said += part.toString();
      if (said.includes('The workbench is open')) resolve(performance.now() - start);
    });
    child.once('exit', () => reject(new Error(`npm start ended: ${said}`)));
  });
  child.removeAllListeners('exit');
  await end(child, true);
  return took;
}

/** Prints the start-up ratio; the aim is under 1.3 times the empty page plus one second. */
export async function startUpBench(): Promise<void> {
  const browser = findBrowser();
  if (browser === null || process.platform === 'win32') {
    console.log('start-up: not measured, no Chromium, Chrome or Edge is installed here');
    return;
  }
  await buildWhenStale(console.log);
  const folder = mkdtempSync(join(tmpdir(), 'sidejar-bench-'));
  const empty: number[] = [];
  const whole: number[] = [];
  // The first of each only warms the profile up.
  for (let round = 0; round <= rounds; round += 1) {
    empty.push(await emptyPage(browser, join(folder, 'empty')));
    whole.push(await workbench(folder));
  }
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  const [emptyMedian, wholeMedian] = [median(empty.slice(1)), median(whole.slice(1))];
  const aim = 1.3 * emptyMedian + 1000;
  console.log(
    `start-up (medians of ${rounds}): empty page ${emptyMedian.toFixed(0)} ms, workbench ${wholeMedian.toFixed(0)} ms; ratio ${(wholeMedian / emptyMedian).toFixed(2)}; aim 1.3 × empty + 1000 ms = ${aim.toFixed(0)} ms: ${wholeMedian < aim ? 'met' : 'missed'}`,
  );
}
