import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { type LockedPackage, lockedPackages } from './locked-packages.ts';
import { shippedPlaces } from './shipped-packages.ts';

const manifest = z.object({ name: z.string(), version: z.string(), license: z.string(), description: z.string() });
const algorithms: Readonly<Record<string, string>> = {
  sha1: 'SHA-1',
  sha256: 'SHA-256',
  sha384: 'SHA-384',
  sha512: 'SHA-512',
};

/** A package URL of npm: the scope's @ is encoded, the slash behind it is not. */
export function packageUrl(name: string, version: string): string {
  return `pkg:npm/${name.replace('@', '%40')}@${encodeURIComponent(version)}`;
}

function licences(expression: string | null): object[] {
  if (expression === null) return [];
  return /\s/.test(expression) ? [{ expression }] : [{ license: { id: expression } }];
}

function hashes(integrity: string | null): object[] {
  return (integrity ?? '')
    .split(' ')
    .filter((each) => each !== '')
    .map((each) => {
      const [name = '', digest = ''] = each.split(/-(.*)/s);
      return { alg: algorithms[name] ?? name, content: Buffer.from(digest, 'base64').toString('hex') };
    });
}

/** A UUID (version 8, RFC 9562) made of the lock file's hash: the same packages make the same bill. */
function serialOf(text: string): string {
  const hex = createHash('sha256').update(text).digest('hex');
  return `urn:uuid:${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-a${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

/**
 * What the program is made of, as CycloneDX 1.6 JSON.
 *
 * Method: every package of the lock file with its purl, licence, archive hash and what it needs. Those that can go along with the
 * program are `required`, those that only built or tested it `excluded`. Two places of the same version are one component.
 *
 * @param root folder of package.json and package-lock.json
 * @param madeAt when the bill is written
 * Source: CycloneDX specification 1.6; package URL specification, type npm.
 */
export function billOfMaterials(root: string, madeAt: Date): object {
  const about = manifest.parse(JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')));
  const all = lockedPackages(root);
  const shipped = shippedPlaces(all, root);
  const refOf = (each: LockedPackage): string => packageUrl(each.name, each.version);
  const components = new Map<string, object>();
  const needs = new Map<string, Set<string>>();
  // Shipped ones first: a version that is both counts as required.
  const inOrder = [...all.values()].sort((a, b) => Number(shipped.has(b.place)) - Number(shipped.has(a.place)));
  for (const each of inOrder) {
    const ref = refOf(each);
    const own = needs.get(ref) ?? new Set<string>();
    needs.set(ref, own);
    for (const place of each.needs) {
      const found = all.get(place);
      if (found !== undefined) own.add(refOf(found));
    }
    if (components.has(ref)) continue;
    components.set(ref, {
      type: 'library',
      'bom-ref': ref,
      name: each.name,
      version: each.version,
      scope: shipped.has(each.place) ? 'required' : 'excluded',
      hashes: hashes(each.integrity),
      licenses: licences(each.licence),
      purl: ref,
    });
  }
  const self = packageUrl(about.name, about.version);
  const direct = [...shipped].map((place) => all.get(place)).filter((each) => each !== undefined);
  return {
    bomFormat: 'CycloneDX',
    specVersion: '1.6',
    serialNumber: serialOf(readFileSync(join(root, 'package-lock.json'), 'utf8')),
    version: 1,
    metadata: {
      timestamp: madeAt.toISOString(),
      component: {
        type: 'application',
        'bom-ref': self,
        name: about.name,
        version: about.version,
        description: about.description,
        licenses: licences(about.license),
        purl: self,
      },
    },
    components: [...components.values()],
    dependencies: [
      { ref: self, dependsOn: [...new Set(direct.map(refOf))].sort() },
      ...[...needs].map(([ref, own]) => ({ ref, dependsOn: [...own].sort() })),
    ],
  };
}
