import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..', '..');

export interface BuiltChild {
  readonly file: string;
  remove(): void;
}

/** The child as one plain file: a process that starts in a tenth of a second can be killed thousands of times. */
export async function buildChild(): Promise<BuiltChild> {
  // Inside the project, so that better-sqlite3 is found from there.
  const folder = join(root, 'out', `faults-${process.pid}`);
  mkdirSync(folder, { recursive: true });
  const { build } = await import('vite');
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    ssr: { noExternal: true },
    build: {
      ssr: true,
      outDir: folder,
      emptyOutDir: true,
      target: 'node22',
      minify: false,
      rolldownOptions: {
        input: { child: join(root, 'tests/faults/crash-child.ts') },
        external: ['better-sqlite3', /^node:/],
        output: { format: 'es', entryFileNames: '[name].mjs' },
      },
    },
  });
  return { file: join(folder, 'child.mjs'), remove: () => rmSync(folder, { recursive: true, force: true }) };
}
