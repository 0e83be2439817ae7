import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { buildForNode } from '#scripts/build.ts';

const root = join(import.meta.dirname, '..', '..');

export interface BuiltChild {
  readonly file: string;
  remove(): void;
}

/** The child as one plain file: a process that starts in a tenth of a second can be killed thousands of times. */
export async function buildChild(): Promise<BuiltChild> {
  const folder = join(root, 'out', `faults-${process.pid}`);
  const file = await buildForNode('child', 'tests/faults/crash-child.ts', folder);
  return { file, remove: () => rmSync(folder, { recursive: true, force: true }) };
}
