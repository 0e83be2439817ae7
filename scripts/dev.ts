import { type ChildProcess, spawn } from 'node:child_process';
import { watch } from 'node:fs';
import { join } from 'node:path';
import { buildWhenStale } from './build.ts';

// npm run dev: builds on every change and serves the result anew on one port; the page reads its data again by itself.

const root = join(import.meta.dirname, '..');
const words = process.argv.slice(2);
let server: ChildProcess | undefined;
let pending: NodeJS.Timeout | undefined;

async function again(): Promise<void> {
  try {
    await buildWhenStale(console.error);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    return;
  }
  const old = server;
  if (old !== undefined) {
    const gone = new Promise((resolve) => old.once('exit', resolve));
    old.kill();
    await gone;
  }
  server = spawn(process.execPath, ['scripts/start.ts', '--serve', '--port', '4173', ...words], {
    cwd: root,
    stdio: 'inherit',
  });
}

for (const folder of ['core', 'shared', 'electron', 'renderer']) {
  watch(join(root, folder), { recursive: true }, () => {
    clearTimeout(pending);
    pending = setTimeout(again, 150);
  });
}
process.on('SIGINT', () => {
  server?.kill();
  process.exit(0);
});
await again();
