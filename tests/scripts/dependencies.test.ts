import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { billOfMaterials, packageUrl } from '#scripts/dependencies/bill-of-materials.ts';
import { licenceList } from '#scripts/dependencies/licence-list.ts';
import { lockedPackages, resolvedPlace } from '#scripts/dependencies/locked-packages.ts';
import { isPermitted } from '#scripts/dependencies/permitted-licence.ts';
import { readAudit } from '#scripts/dependencies/read-audit.ts';
import { shippedPlaces } from '#scripts/dependencies/shipped-packages.ts';

const root = join(import.meta.dirname, '..', '..');
const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as Record<
  string,
  Record<string, unknown>
>;
const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
  packages: Record<string, Record<string, unknown>>;
};
const all = lockedPackages(root);

describe('package.json and its lock', () => {
  it('name every dependency by one exact version, and agree', () => {
    let seen = 0;
    for (const list of ['dependencies', 'devDependencies', 'optionalDependencies', 'peerDependencies']) {
      for (const [name, version] of Object.entries(manifest[list] ?? {})) {
        expect(version, name).toMatch(/^\d+\.\d+\.\d+(-[\w.]+)?$/);
        expect(all.get(`node_modules/${name}`)?.version, name).toBe(version);
        seen += 1;
      }
      expect(lock.packages['']?.[list]).toEqual(manifest[list]);
    }
    expect(seen).toBeGreaterThan(30);
  });

  it('hold a SHA-512 of every package’s archive', () => {
    expect([...all.values()].filter(({ integrity }) => !/^sha512-[A-Za-z0-9+/]{86}==$/.test(integrity ?? ''))).toEqual(
      [],
    );
    expect(all.size).toBeGreaterThan(300);
  });

  it('let no package run a script at its installation but those that package.json names', () => {
    const named = Object.keys(manifest.allowScripts ?? {});
    expect([...all.values()].filter((each) => each.hasInstallScript && !named.includes(each.name))).toEqual([]);
    // And those named are named to be stopped.
    expect(Object.values(manifest.allowScripts ?? {}).filter((allowed) => allowed !== false)).toEqual([]);
  });
});

describe('licences', () => {
  it('every package has one that may be used', () => {
    const { lines, problems } = licenceList(root);
    expect(problems).toEqual([]);
    expect(lines.length).toBe(all.size);
  });

  it('knows what goes along with the program', () => {
    const names = new Set([...shippedPlaces(all, root)].map((place) => all.get(place)?.name));
    for (const name of ['react', 'react-dom', 'zod', 'recharts', 'better-sqlite3', 'electron', 'scheduler'])
      expect(names).toContain(name);
    for (const name of ['vitest', 'typescript', 'electron-builder', '@playwright/test', 'extract-zip'])
      expect(names).not.toContain(name);
  });

  // Expressions after SPDX 2.3, annex D.
  it.each([
    ['MIT', true],
    ['(MIT OR GPL-3.0-only)', true],
    ['MIT AND GPL-3.0-only', false],
    ['GPL-3.0-only OR MIT AND ISC', true],
    ['(GPL-3.0-only OR MIT) AND AGPL-3.0-only', false],
    ['MPL-2.0', false],
    ['Apache-2.0 WITH LLVM-exception', false],
    ['MIT+', false],
    ['UNLICENSED', false],
    ['SEE LICENSE IN x', false],
    ['(MIT', false],
    ['', false],
    [null, false],
  ])('%s in the program: %s', (expression, permitted) => {
    expect(isPermitted(expression, 'program')).toBe(permitted);
  });

  it('a tool may be under the Mozilla licence', () => {
    expect(isPermitted('MPL-2.0', 'tool')).toBe(true);
  });
});

describe('billOfMaterials(root, madeAt)', () => {
  const bill = billOfMaterials(root, new Date('2026-05-01T00:00:00Z')) as {
    serialNumber: string;
    components: {
      'bom-ref': string;
      name: string;
      scope: string;
      purl: string;
      hashes: { alg: string; content: string }[];
      licenses: unknown[];
    }[];
    dependencies: { ref: string; dependsOn: string[] }[];
    metadata: { component: { 'bom-ref': string } };
  };

  // Members and their forms: CycloneDX 1.6 JSON schema.
  it('is a CycloneDX bill whose every reference is named', () => {
    expect(bill).toMatchObject({ bomFormat: 'CycloneDX', specVersion: '1.6', version: 1 });
    expect(bill.serialNumber).toMatch(/^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/);
    const refs = new Set([bill.metadata.component['bom-ref'], ...bill.components.map((each) => each['bom-ref'])]);
    expect(refs.size).toBe(bill.components.length + 1);
    for (const { ref, dependsOn } of bill.dependencies) {
      expect(refs).toContain(ref);
      for (const other of dependsOn) expect(refs).toContain(other);
      expect(new Set(dependsOn).size).toBe(dependsOn.length);
    }
  });

  it('gives each component purl, licence and hash', () => {
    for (const { purl, licenses, hashes } of bill.components) {
      expect(purl).toMatch(/^pkg:npm\/(%40[\w.-]+\/)?[\w.-]+@\d/);
      expect(licenses).toHaveLength(1);
      expect(hashes).toEqual([{ alg: 'SHA-512', content: expect.stringMatching(/^[0-9a-f]{128}$/) as string }]);
    }
    const needsOf = new Map(bill.dependencies.map(({ ref, dependsOn }) => [ref, dependsOn]));
    const react = bill.components.find(({ name }) => name === 'react-dom');
    expect(react?.scope).toBe('required');
    expect(needsOf.get(react?.purl ?? '')?.some((ref) => ref.startsWith('pkg:npm/scheduler@'))).toBe(true);
    expect(bill.components.find(({ name }) => name === 'vitest')?.scope).toBe('excluded');
  });

  it('is the same for the same packages', () => {
    expect(billOfMaterials(root, new Date('2026-05-01T00:00:00Z'))).toEqual(bill);
  });

  // purl-spec, type npm: "pkg:npm/%40angular/animation@12.3.1".
  it('writes a scope’s @ encoded', () => {
    expect(packageUrl('@angular/animation', '12.3.1')).toBe('pkg:npm/%40angular/animation@12.3.1');
  });
});

describe('resolvedPlace(places, place, name)', () => {
  it('finds the nearest, as Node does', () => {
    const places = new Set(['node_modules/a', 'node_modules/b', 'node_modules/a/node_modules/b', 'node_modules/@s/c']);
    expect(resolvedPlace(places, 'node_modules/a', 'b')).toBe('node_modules/a/node_modules/b');
    expect(resolvedPlace(places, 'node_modules/a/node_modules/b', 'a')).toBe('node_modules/a');
    expect(resolvedPlace(places, 'node_modules/@s/c', 'b')).toBe('node_modules/b');
    expect(resolvedPlace(places, 'node_modules/a', 'none')).toBeNull();
  });
});

describe('readAudit(text)', () => {
  const metadata = { vulnerabilities: { total: 0 }, dependencies: { total: 700 } };

  it('never takes silence for good news', () => {
    for (const text of ['', 'not JSON', '{"error":{"code":"ENOTFOUND"}}', '{"message":"request failed"}'])
      expect(readAudit(text)).toMatchObject({ code: 2, lines: [expect.stringContaining('nothing was checked')] });
  });

  it('names what is known', () => {
    expect(readAudit(JSON.stringify({ metadata, vulnerabilities: {} })).code).toBe(0);
    const found = readAudit(JSON.stringify({ metadata, vulnerabilities: { left: { severity: 'high', range: '<2' } } }));
    expect(found).toEqual({ code: 1, lines: ['left <2: high', '700 packages asked about, 1 with a known weakness'] });
  });
});
