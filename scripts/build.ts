import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { InlineConfig } from 'vite';
import { sourceHash } from './source-hash.ts';

const root = join(import.meta.dirname, '..');
const out = join(root, 'dist');
const stamp = join(out, '.built-from');

/** What must not be bundled: the native store, Electron, and Node's own modules. */
const external = ['electron', 'better-sqlite3', /^node:/];

interface NodeSide {
  readonly entries: Readonly<Record<string, string>>;
  readonly format?: 'es' | 'cjs';
  readonly folder?: string;
  readonly logLevel: 'info' | 'warn' | 'error';
}

function nodeSide({ entries, format = 'es', folder = out, logLevel }: NodeSide): InlineConfig {
  return {
    root,
    configFile: false,
    logLevel,
    publicDir: false,
    ssr: { noExternal: true },
    build: {
      ssr: true,
      outDir: folder,
      emptyOutDir: false,
      target: 'node22',
      minify: false,
      rolldownOptions: {
        input: Object.fromEntries(Object.entries(entries).map(([name, file]) => [name, join(root, file)])),
        external,
        output: {
          format,
          entryFileNames: format === 'cjs' ? '[name].cjs' : '[name].js',
          chunkFileNames: 'chunks/[name]-[hash].js',
        },
      },
    },
  };
}

/** Whether dist/ was made from the sources as they are now. */
export function isBuilt(): boolean {
  return existsSync(stamp) && readFileSync(stamp, 'utf8') === sourceHash(root);
}

/** Whether there is anything to show at all while it is looked whether it is up to date. */
export function wasEverBuilt(): boolean {
  return existsSync(stamp);
}

/** One file of the Node side as plain JavaScript, in a folder within the project, from where its packages are found. */
export async function buildForNode(name: string, source: string, folder: string): Promise<string> {
  const { build } = await import('vite');
  await build(nodeSide({ entries: { [name]: source }, folder, logLevel: 'error' }));
  return join(folder, `${name}.js`);
}

/** Builds page, desk, window and bridge into dist/. */
export async function buildAll(options: { quiet?: boolean } = {}): Promise<void> {
  const logLevel = options.quiet === true ? 'warn' : 'info';
  const hash = sourceHash(root);
  const { build } = await import('vite');
  rmSync(out, { recursive: true, force: true });
  mkdirSync(out, { recursive: true });
  await build({ configFile: join(root, 'vite.page.config.ts'), logLevel });
  const node = { main: 'electron/main.ts', 'desk-worker': 'electron/desk/desk-worker.ts' };
  await build(nodeSide({ entries: node, logLevel }));
  await build(nodeSide({ entries: { preload: 'electron/preload.ts' }, format: 'cjs', logLevel }));
  cpSync(join(root, 'words'), join(out, 'words'), { recursive: true });
  writeFileSync(stamp, hash);
}

/** Builds when sources changed since the last build. */
export async function buildWhenStale(say: (line: string) => void): Promise<void> {
  if (isBuilt()) return;
  say('Building the workbench …');
  await buildAll({ quiet: true });
}

if (import.meta.main) await buildAll();
