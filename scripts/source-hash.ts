import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const folders = ['core', 'shared', 'electron', 'renderer', 'words'];
const files = [
  'vite.page.config.ts',
  'scripts/build.ts',
  'scripts/first-chunk.ts',
  'scripts/preload-main.ts',
  'package-lock.json',
  'package.json',
];

function below(root: string, folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

/** One hash over everything that goes into the build. Contents, not times: a fresh checkout of the same sources is the same. */
export function sourceHash(root: string): string {
  const hash = createHash('sha256');
  const all = [...files.map((file) => join(root, file)), ...folders.flatMap((folder) => below(root, folder))];
  for (const file of all) hash.update(file.slice(root.length)).update('\0').update(readFileSync(file)).update('\0');
  return hash.digest('hex');
}
