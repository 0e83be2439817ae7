import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { build, Platform } from 'electron-builder';
import { beforeAll, describe, expect, test } from 'vitest';
import { packing } from '../electron-builder.config.ts';

// electron-builder itself packs a small program, over a stand-in for Electron's binary that has its fuse wire.

/**
 * Sentinel, wire version 1, eight fuses, as Electron 45 leaves them; '0' is off, '1' is on.
 * Source: @electron/fuses, README and FuseV1Options: RunAsNode, EnableCookieEncryption,
 * EnableNodeOptionsEnvironmentVariable, EnableNodeCliInspectArguments, EnableEmbeddedAsarIntegrityValidation,
 * OnlyLoadAppFromAsar, LoadBrowserProcessSpecificV8Snapshot, GrantFileProtocolExtraPrivileges.
 * The first four and the last are on by default there (from memory).
 */
const sentinel = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';
const untouched = `${sentinel}\u0001\u000810110001`;

const folder = mkdtempSync(join(tmpdir(), 'packing-'));
const unpacked = join(folder, 'out', 'linux-unpacked');

function lay(files: Readonly<Record<string, string>>): void {
  for (const [name, text] of Object.entries(files)) {
    const file = join(folder, name);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
}

interface Entry {
  readonly files?: Readonly<Record<string, Entry>>;
}

/** Paths in an asar archive. Its header is JSON, its length at byte 12. Source: @electron/asar, README, "Format". */
function namesInArchive(archive: string): string[] {
  const bytes = readFileSync(archive);
  const header = JSON.parse(bytes.toString('utf8', 16, 16 + bytes.readUInt32LE(12))) as Entry;
  const under = (entry: Entry, path: string): string[] =>
    entry.files === undefined
      ? [path]
      : Object.entries(entry.files).flatMap(([name, inner]) => under(inner, path === '' ? name : `${path}/${name}`));
  return under(header, '').sort();
}

beforeAll(async () => {
  const sqlite = 'node_modules/better-sqlite3';
  lay({
    'package.json': JSON.stringify({
      name: 'sidejar',
      version: '0.1.0',
      description: 'A program to pack',
      main: 'dist/main.js',
      type: 'module',
      dependencies: { 'better-sqlite3': '13.2.0' },
      devDependencies: { react: '19.3.1' },
    }),
    'dist/main.js': 'export {};',
    'dist/preload.cjs': '',
    'dist/desk-worker.js': '',
    'dist/page/index.html': '',
    'dist/page/assets/page.js.map': '',
    'dist/.built-from': '',
    'core/secret.ts': '',
    'kitchen.sidejar': '',
    [`${sqlite}/package.json`]: JSON.stringify({
      name: 'better-sqlite3',
      version: '13.2.0',
      main: 'lib/index.js',
      dependencies: { 'node-addon-api': '^8.0.0' },
    }),
    [`${sqlite}/lib/index.js`]: '',
    [`${sqlite}/deps/sqlite3/sqlite3.c`]: '',
    [`${sqlite}/src/addon.cpp`]: '',
    [`${sqlite}/prebuilds/linux-x64.node`]: 'binary',
    [`${sqlite}/prebuilds/linuxmusl-x64.node`]: 'binary',
    [`${sqlite}/prebuilds/darwin-arm64.node`]: 'binary',
    [`${sqlite}/prebuilds/win32-x64.node`]: 'binary',
    'node_modules/node-addon-api/package.json': JSON.stringify({ name: 'node-addon-api', version: '8.0.0' }),
    'node_modules/node-addon-api/napi.h': '',
    'node_modules/react/package.json': JSON.stringify({ name: 'react', version: '19.3.1' }),
    'electron/electron': untouched,
    'electron/version': '45.5.0',
    'electron/LICENSE': '',
    'electron/LICENSES.chromium.html': '',
    'electron/chrome-sandbox': '',
    'electron/resources/default_app.asar': '',
  });
  chmodSync(join(folder, 'electron', 'electron'), 0o755);
  await build({
    projectDir: folder,
    targets: Platform.LINUX.createTarget('dir', 1),
    config: { ...packing, electronVersion: '45.5.0', electronDist: join(folder, 'electron') },
    publish: 'never',
  });
}, 120_000);

describe('the packed program', () => {
  test('holds the built program and what SQLite needs on this system, and nothing else', () => {
    expect(namesInArchive(join(unpacked, 'resources', 'app.asar'))).toEqual([
      'dist/desk-worker.js',
      'dist/main.js',
      'dist/page/index.html',
      'dist/preload.cjs',
      'node_modules/better-sqlite3/lib/index.js',
      'node_modules/better-sqlite3/package.json',
      'node_modules/better-sqlite3/prebuilds/linux-x64.node',
      'package.json',
    ]);
  });

  test('leaves Electron’s own sample program behind', () => {
    expect(existsSync(join(unpacked, 'resources', 'default_app.asar'))).toBe(false);
  });

  test('keeps SQLite’s binary outside the archive, where it can be loaded', () => {
    const file = 'node_modules/better-sqlite3/prebuilds/linux-x64.node';
    expect(existsSync(join(unpacked, 'resources', 'app.asar.unpacked', file))).toBe(true);
  });

  test('has its fuses set: no Node from outside, an archive that is checked, no powers for file://', () => {
    const binary = readFileSync(join(unpacked, 'sidejar'), 'latin1');
    const at = binary.indexOf(sentinel) + sentinel.length + 2;
    expect(binary.slice(at, at + 8)).toBe('01001100');
  });
});
