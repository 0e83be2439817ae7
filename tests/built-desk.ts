import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { TestProject } from 'vitest/node';
import { buildForNode } from '#scripts/build.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** The desk's worker as plain JavaScript, as the workbench itself runs it: many are started, and none reads TypeScript anew. */
    deskWorker: string;
  }
}

const folder = join(import.meta.dirname, '..', 'out', `desk-${process.pid}`);

export async function setup({ provide }: TestProject): Promise<void> {
  provide('deskWorker', pathToFileURL(await buildForNode('desk-worker', 'electron/desk/desk-worker.ts', folder)).href);
}

export function teardown(): void {
  rmSync(folder, { recursive: true, force: true });
}
