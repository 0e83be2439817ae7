import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { InlineConfig } from 'vite';
import { sourceHash } from './source-hash.ts';

const root = join(import.meta.dirname, '..');
const out = join(root, 'dist');
const stamp = join(out, '.built-from');

/** What must not be bundled: the native store, Electron, and Node's own modules. */
const external = ['electron', 'better-sqlite3', /^node:/];

function nodeSide(entries: Record<string, string>, format: 'es' | 'cjs', quiet: boolean): InlineConfig {
  return {
    root,
    configFile: false,
    logLevel: quiet ? 'warn' : 'info',
    publicDir: false,
    ssr: { noExternal: true },
    build: {
      ssr: true,
      outDir: out,
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

/** Builds page, desk, window and bridge into dist/. */
export async function buildAll(options: { quiet?: boolean } = {}): Promise<void> {
  const quiet = options.quiet ?? false;
  const hash = sourceHash(root);
  const { build } = await import('vite');
  rmSync(out, { recursive: true, force: true });
  mkdirSync(out, { recursive: true });
  await build({ configFile: join(root, 'vite.page.config.ts'), logLevel: quiet ? 'warn' : 'info' });
  await build(nodeSide({ main: 'electron/main.ts', 'desk-worker': 'electron/desk/desk-worker.ts' }, 'es', quiet));
  await build(nodeSide({ preload: 'electron/preload.ts' }, 'cjs', quiet));
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
