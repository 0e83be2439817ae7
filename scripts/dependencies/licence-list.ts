import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { type LockedPackage, lockedPackages } from './locked-packages.ts';
import { isPermitted } from './permitted-licence.ts';
import { shippedPlaces } from './shipped-packages.ts';

export interface LicenceLine {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  /** Whether it can go to a person's machine with the program. */
  readonly isShipped: boolean;
}

export interface LicenceList {
  readonly lines: readonly LicenceLine[];
  readonly problems: readonly string[];
}

const manifest = z.object({ license: z.unknown() });

/** What the package on the disk says of itself; undefined where it is not installed (another system's, say). */
function licenceOnDisk(root: string, { place }: LockedPackage): unknown {
  const file = join(root, place, 'package.json');
  return existsSync(file) ? manifest.parse(JSON.parse(readFileSync(file, 'utf8'))).license : undefined;
}

/** Every package's licence, by the lock file and held against what lies in node_modules, with what is not permitted. */
export function licenceList(root: string): LicenceList {
  const all = lockedPackages(root);
  const shipped = shippedPlaces(all, root);
  const problems: string[] = [];
  const lines: LicenceLine[] = [];
  for (const each of all.values()) {
    const isShipped = shipped.has(each.place);
    const label = `${each.name} ${each.version}`;
    lines.push({ name: each.name, version: each.version, licence: each.licence ?? 'none named', isShipped });
    if (each.licence === null) problems.push(`${label} names no licence.`);
    else if (!isPermitted(each.licence, isShipped ? 'program' : 'tool'))
      problems.push(
        `${label} is under ${each.licence}, which is not permitted ${isShipped ? 'in the program' : 'here'}.`,
      );
    const said = licenceOnDisk(root, each);
    if (typeof said === 'string' && each.licence !== null && said !== each.licence)
      problems.push(`${label} says ${said} in node_modules and ${each.licence} in the lock file.`);
  }
  lines.sort((a, b) => a.name.localeCompare(b.name) || a.version.localeCompare(b.version));
  return { lines, problems };
}
