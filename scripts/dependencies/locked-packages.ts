import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';

const names = z.record(z.string(), z.string());
const entry = z.object({
  name: z.string().optional(),
  version: z.string().optional(),
  license: z.string().optional(),
  integrity: z.string().optional(),
  dev: z.boolean().optional(),
  hasInstallScript: z.boolean().optional(),
  dependencies: names.optional(),
  devDependencies: names.optional(),
  optionalDependencies: names.optional(),
  peerDependencies: names.optional(),
});
const lock = z.object({ lockfileVersion: z.literal(3), packages: z.record(z.string(), entry) });

/** One package of the lock file, at its place under node_modules. */
export interface LockedPackage {
  readonly place: string;
  readonly name: string;
  readonly version: string;
  /** An SPDX expression; null when its makers name none. */
  readonly licence: string | null;
  /** Subresource Integrity of the archive; null where the lock has none. */
  readonly integrity: string | null;
  readonly hasInstallScript: boolean;
  /** The places of the packages that it will find by its own imports. */
  readonly needs: readonly string[];
}

function nameAt(place: string): string {
  return place.slice(place.lastIndexOf('node_modules/') + 'node_modules/'.length);
}

/** Where Node finds `name` from inside `place`: in its own node_modules, else in those of the folders above. */
export function resolvedPlace(places: { has(place: string): boolean }, place: string, name: string): string | null {
  for (let at: string = place; ; ) {
    const tried = at === '' ? `node_modules/${name}` : `${at}/node_modules/${name}`;
    if (places.has(tried)) return tried;
    if (at === '') return null;
    const above = at.lastIndexOf('/node_modules/');
    at = above === -1 ? '' : at.slice(0, above);
  }
}

/**
 * Every package that `npm ci` may put on the disk.
 *
 * @param root folder of package-lock.json (version 3)
 */
export function lockedPackages(root: string): ReadonlyMap<string, LockedPackage> {
  const { packages } = lock.parse(JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')));
  const places = new Set(Object.keys(packages).filter((place) => place !== ''));
  const all = new Map<string, LockedPackage>();
  for (const [place, found] of Object.entries(packages)) {
    if (place === '') continue;
    const wanted = { ...found.dependencies, ...found.optionalDependencies, ...found.peerDependencies };
    all.set(place, {
      place,
      name: found.name ?? nameAt(place),
      version: found.version ?? '',
      licence: found.license ?? null,
      integrity: found.integrity ?? null,
      hasInstallScript: found.hasInstallScript ?? false,
      needs: Object.keys(wanted)
        .map((name) => resolvedPlace(places, place, name))
        .filter((each) => each !== null),
    });
  }
  return all;
}
