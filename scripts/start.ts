import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { dataFolder, defaultStore } from '#hosts/default-store.ts';
import type { DeskLine } from '#hosts/desk-line.ts';
import { lineToCome } from '#hosts/line-to-come.ts';
import { type Loopback, startLoopback } from '#hosts/loopback/loopback-server.ts';
import { Failure } from '#shared/failure.ts';
import { freeProfile, openBrowserWindow } from './browser-window.ts';
import { buildWhenStale, wasEverBuilt } from './build.ts';
import { findBrowser, hasDisplay } from './find-browser.ts';
import { readStartWords, type StartWords } from './start-words.ts';
import { tellAddresses } from './tell-address.ts';

// npm start: builds when sources changed, then opens the workbench in the best window there is.

const root = join(import.meta.dirname, '..');
const dist = join(root, 'dist');
const say = (line: string): void => {
  process.stderr.write(`${line}\n`);
};

/** Electron's window; resolves with its exit code. */
function openElectron(executable: string, store: string): Promise<number> {
  const child = spawn(executable, [root, '--store', store], { stdio: 'inherit' });
  return new Promise((resolve) => {
    child.on('error', () => resolve(1));
    child.on('exit', (code) => resolve(code ?? 1));
  });
}

function tellAddress(loopback: Loopback, store: string): void {
  tellAddresses(loopback, process.stdin, process.stdout);
  say('  Open it in a browser on this machine; it works once (press Enter for a fresh one).');
  say(`  Behind it stands the kitchen ${store}, served to this machine alone.`);
  say('  Ctrl+C ends it. Everything is saved as you go.');
}

/** An app window of an installed browser, with a profile of its own. */
function openWindow(browser: string, loopback: Loopback): ChildProcess {
  return openBrowserWindow({
    browser,
    address: loopback.address(),
    profile: freeProfile(join(dataFolder(process.platform, process.env), 'window')),
    moreFlags: (process.env.SIDEJAR_WINDOW_FLAGS ?? '').split(' ').filter((flag) => flag !== ''),
  });
}

/** The desk in its thread, once page and desk are built from the sources as they are. */
async function openDesk(store: string): Promise<DeskLine> {
  await buildWhenStale(say);
  // Read only now: a window takes its time to open, and is on its way.
  const { openDeskLine } = await import('#hosts/desk-line.ts');
  return openDeskLine({
    worker: pathToFileURL(join(dist, 'desk-worker.js')),
    store,
    log: join(dataFolder(process.platform, process.env), 'workbench.log'),
    beside: 'in-place',
    onMoved: (file) => say(`The workbench is open: ${file}`),
    onTended(envelope) {
      if (!envelope.ok) say(`The daily backup was not made: ${envelope.error.message}`);
    },
  });
}

async function serve(words: StartWords, store: string, browser: string | null): Promise<void> {
  const desk = Promise.withResolvers<DeskLine>();
  const line = lineToCome(desk.promise);
  let window: ChildProcess | null = null;
  let isEnding = false;
  let hasDesk = false;
  const loopback = await startLoopback({
    line,
    page: join(dist, 'page'),
    built: desk.promise,
    port: words.port,
    onDeserted: () => void (window !== null && end(0)),
    onReady: () => say(`The workbench is open: ${store}`),
  });
  async function end(code: number): Promise<void> {
    isEnding = true;
    window?.removeAllListeners();
    window?.kill();
    await loopback.close();
    // A desk that is still being built is not waited for.
    if (hasDesk) await line.close();
    process.exit(code);
  }
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void end(0));
  // Of all that takes its time the window takes the most, and is begun first.
  if (browser !== null) {
    window = openWindow(browser, loopback);
    window.on('exit', () => void end(0));
    window.on('error', () => {
      window = null;
      say(`The window of ${browser} could not be opened.`);
      tellAddress(loopback, store);
    });
  }
  try {
    desk.resolve(await openDesk(store));
    hasDesk = true;
  } catch (error) {
    say(startFailure(error));
    desk.reject(error);
    await end(1);
  }
  if (isEnding) return;
  const opened = await line.ask({ ask: 'start', name: 'kitchen:open', input: {} });
  if (!opened.ok) {
    say(opened.error.message);
    await end(1);
  }
  if (browser === null) tellAddress(loopback, store);
}

async function start(): Promise<void> {
  // npm runs scripts in the package's folder; a relative --store is meant from where the person stood.
  const words = readStartWords(process.argv.slice(2), process.env.INIT_CWD ?? process.cwd());
  if ('problem' in words) throw new Failure('invalid-input', words.problem);
  const store = words.store ?? defaultStore(process.platform, process.env);
  if (!words.serve && hasDisplay()) {
    const { obtainElectron } = await import('./obtain-electron.ts');
    const electron = await obtainElectron({ again: words.fetchElectron, say });
    if (electron !== null) {
      await buildWhenStale(say);
      process.exit(await openElectron(electron, store));
    }
  }
  // The first time the window would stand blank for as long as it takes.
  if (!wasEverBuilt()) await buildWhenStale(say);
  await serve(words, store, words.serve || !hasDisplay() ? null : findBrowser());
}

function startFailure(error: unknown): string {
  if (error instanceof Failure) return error.message;
  return `The workbench could not start: ${error instanceof Error ? error.message : String(error)}`;
}

try {
  await start();
} catch (error) {
  say(startFailure(error));
  process.exit(1);
}
