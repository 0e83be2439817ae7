import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { LockedPackage } from './locked-packages.ts';

const rooms = ['core', 'shared', 'electron', 'renderer'];
const imported = /(?:from|import)\s*\(?\s*['"]([^'"#./][^'"]*)['"]/g;

function packageOf(specifier: string): string {
  return specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
}

/** The packages that the program's own sources import by name, styles and fonts included. */
export function importedNames(root: string): ReadonlySet<string> {
  const names = new Set<string>();
  for (const room of rooms) {
    for (const file of readdirSync(join(root, room), { recursive: true, encoding: 'utf8' })) {
      if (!/\.(ts|tsx|css)$/.test(file)) continue;
      for (const [, specifier = ''] of readFileSync(join(root, room, file), 'utf8').matchAll(imported)) {
        if (!specifier.startsWith('node:')) names.add(packageOf(specifier));
      }
    }
  }
  return names;
}

/**
 * What can reach a person's machine: what our sources import, and all that these need in turn.
 *
 * Method: the closure over the lock file's own graph. It may name a package of which the bundler keeps nothing; it leaves none out.
 */
export function shippedPlaces(all: ReadonlyMap<string, LockedPackage>, root: string): ReadonlySet<string> {
  const reached = new Set<string>();
  const waiting = [...importedNames(root)].map((name) => `node_modules/${name}`).filter((place) => all.has(place));
  for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
    if (reached.has(place)) continue;
    reached.add(place);
    // Electron's package fetches its runtime with these; the installed program has the runtime alone.
    if (place !== 'node_modules/electron') waiting.push(...(all.get(place)?.needs ?? []));
  }
  return reached;
}
