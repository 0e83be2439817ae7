import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { pathToFileURL } from 'node:url';
import { dataFolder, defaultStore } from '#hosts/default-store.ts';
import { openDeskLine } from '#hosts/desk-line.ts';
import { type Loopback, startLoopback } from '#hosts/loopback/loopback-server.ts';
import { Failure } from '#shared/failure.ts';
import { openBrowserWindow } from './browser-window.ts';
import { buildWhenStale } from './build.ts';
import { findBrowser, hasDisplay } from './find-browser.ts';
import { readStartWords, type StartWords } from './start-words.ts';

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
  process.stdout.write(`${loopback.address()}\n`);
  say('  Open it in a browser on this machine; it works once (press Enter for a fresh one).');
  say(`  Behind it stands the kitchen ${store}, served to this machine alone.`);
  say('  Ctrl+C ends it. Everything is saved as you go.');
}

async function serve(words: StartWords, store: string, browser: string | null): Promise<void> {
  const line = openDeskLine({ worker: pathToFileURL(join(dist, 'desk-worker.js')), store });
  const opened = await line.ask({ ask: 'start', name: 'kitchen:open', input: {} });
  if (!opened.ok) {
    await line.close();
    throw new Failure(opened.error.code, opened.error.message);
  }
  const end = async (): Promise<void> => {
    await loopback.close();
    await line.close();
    process.exit(0);
  };
  let isWindow = false;
  const loopback = await startLoopback({
    line,
    page: join(dist, 'page'),
    port: words.port,
    onDeserted: () => void (isWindow && end()),
    onReady: () => say(`The workbench is open: ${store}`),
  });
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void end());
  if (browser === null) {
    tellAddress(loopback, store);
    if (process.stdin.readable) {
      createInterface({ input: process.stdin }).on('line', () => process.stdout.write(`${loopback.address()}\n`));
    }
    return;
  }
  isWindow = true;
  const window = openBrowserWindow({
    browser,
    address: loopback.address(),
    profile: join(dataFolder(process.platform, process.env), 'window'),
    moreFlags: (process.env.SIDEJAR_WINDOW_FLAGS ?? '').split(' ').filter((flag) => flag !== ''),
  });
  window.on('error', () => {
    isWindow = false;
    say(`The window of ${browser} could not be opened.`);
    tellAddress(loopback, store);
  });
  window.on('exit', () => void end());
  // Whoever ends the program ends its window.
  process.on('exit', () => window.kill());
}

async function start(): Promise<void> {
  // npm runs scripts in the package's folder; a relative --store is meant from where the person stood.
  const words = readStartWords(process.argv.slice(2), process.env.INIT_CWD ?? process.cwd());
  if ('problem' in words) throw new Failure('invalid-input', words.problem);
  await buildWhenStale(say);
  const store = words.store ?? defaultStore(process.platform, process.env);
  if (!words.serve && hasDisplay()) {
    const { obtainElectron } = await import('./obtain-electron.ts');
    const electron = await obtainElectron({ again: words.fetchElectron, say });
    if (electron !== null) process.exit(await openElectron(electron, store));
  }
  await serve(words, store, words.serve || !hasDisplay() ? null : findBrowser());
}

try {
  await start();
} catch (error) {
  say(
    error instanceof Failure
      ? error.message
      : `The workbench could not start: ${error instanceof Error ? error.message : String(error)}`,
  );
  process.exit(1);
}
