import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { fetchElectronRuntime, findElectronRuntime, inspectElectronRuntime } from '#scripts/electron-runtime.ts';

interface Parts {
  readonly version?: string;
  readonly pathText?: string;
  readonly isProgram?: boolean;
  readonly installer?: string;
}

/** A folder laid out as the npm package `electron` lays out its own. */
function packageFolder({ version, pathText, isProgram, installer }: Parts = {}): string {
  const folder = mkdtempSync(join(tmpdir(), 'electron-package-'));
  writeFileSync(join(folder, 'package.json'), '{"name":"electron","version":"45.5.0","type":"commonjs"}');
  if (installer !== undefined) writeFileSync(join(folder, 'install.js'), installer);
  if (version !== undefined) {
    mkdirSync(join(folder, 'dist'));
    writeFileSync(join(folder, 'dist', 'version'), version);
    writeFileSync(join(folder, 'dist', 'electron'), '#!/bin/sh\n');
    if (isProgram ?? true) chmodSync(join(folder, 'dist', 'electron'), 0o755);
  }
  if (pathText !== undefined) writeFileSync(join(folder, 'path.txt'), pathText);
  return folder;
}

const place = (module: string, environment = {}) => ({ module, environment, platform: 'linux' as const });

describe('findElectronRuntime', () => {
  test.each(['45.5.0', 'v45.5.0\n'])('finds the runtime whose version file says %j', (version) => {
    const folder = packageFolder({ version, pathText: 'electron' });
    expect(findElectronRuntime(place(folder))).toEqual({
      executable: join(folder, 'dist', 'electron'),
      dist: join(folder, 'dist'),
    });
  });

  test.each<[string, Parts, RegExp]>([
    ['nothing was downloaded', {}, /never downloaded/],
    ['path.txt is missing: the unpacking was cut short', { version: '45.5.0' }, /never downloaded/],
    ['another version lies there', { version: '44.1.0', pathText: 'electron' }, /44\.1\.0, but version 45\.5\.0/],
    ['the executable is missing', { version: '45.5.0', pathText: 'elsewhere/electron' }, /no program/],
    ['the executable is a folder', { version: '45.5.0', pathText: '.' }, /no program/],
    ['the executable may not be run', { version: '45.5.0', pathText: 'electron', isProgram: false }, /no program/],
  ])('finds none, and says why, when %s', (_case, parts, why) => {
    const folder = packageFolder(parts);
    expect(findElectronRuntime(place(folder))).toBeNull();
    expect(inspectElectronRuntime(place(folder))).toEqual({ lack: expect.stringMatching(why) });
  });

  test('finds none when the npm package is not installed', () => {
    expect(inspectElectronRuntime(place(join(tmpdir(), 'no-such-package')))).toEqual({
      lack: expect.stringMatching(/not installed/),
    });
  });

  test('takes the folder that ELECTRON_OVERRIDE_DIST_PATH names, and only when a program lies there', () => {
    const elsewhere = join(packageFolder({ version: '45.5.0', pathText: 'electron' }), 'dist');
    const folder = packageFolder();
    const at = (dist: string) => findElectronRuntime(place(folder, { ELECTRON_OVERRIDE_DIST_PATH: dist }));
    expect(at(elsewhere)).toEqual({ executable: join(elsewhere, 'electron'), dist: elsewhere });
    expect(at(folder)).toBeNull();
    expect(at('')).toBeNull();
  });

  test('looks, and starts no download', () => {
    const folder = packageFolder({ installer: `require('fs').writeFileSync(__dirname + '/started', '')` });
    findElectronRuntime(place(folder));
    expect(existsSync(join(folder, 'started'))).toBe(false);
  });
});

const download = `
  const { appendFileSync, mkdirSync, writeFileSync, chmodSync } = require('node:fs');
  const { join } = require('node:path');
  const zip = join(require('node:os').tmpdir(), 'electron.zip');
  let parts = 0;
  const timer = setInterval(() => {
    appendFileSync(zip, Buffer.alloc(1_500_000));
    parts += 1;
    if (parts < 5) return;
    clearInterval(timer);
    mkdirSync(join(__dirname, 'dist'));
    writeFileSync(join(__dirname, 'dist', 'version'), '45.5.0');
    writeFileSync(join(__dirname, 'dist', 'electron'), '#!/bin/sh\\n');
    chmodSync(join(__dirname, 'dist', 'electron'), 0o755);
    writeFileSync(join(__dirname, 'path.txt'), 'electron');
  }, 600);`;

describe('fetchElectronRuntime', () => {
  test('waits for a slow download as long as bytes arrive, and tells how far it is', async () => {
    const folder = packageFolder({ installer: download });
    const said: string[] = [];
    const { PATH } = process.env;
    // Three seconds in all, longer than may pass in silence.
    const result = await fetchElectronRuntime({
      ...place(folder, { PATH }),
      silence_ms: 2000,
      onProgress: (line) => said.push(line),
    });
    expect(result).toEqual({ ok: true, why: null });
    expect(said.length).toBeGreaterThan(1);
    expect(said.every((line) => /^Electron’s runtime: \d+ MB$/.test(line))).toBe(true);
    expect(findElectronRuntime(place(folder))).not.toBeNull();
  });

  test('gives up when nothing arrives, and ends the installer', async () => {
    const installer = `
      require('node:fs').writeFileSync(__dirname + '/pid', String(process.pid));
      setInterval(() => {}, 1000);`;
    const folder = packageFolder({ installer });
    const startedAt = performance.now();
    const result = await fetchElectronRuntime({ ...place(folder), silence_ms: 1500 });
    expect(result).toEqual({ ok: false, why: 'nothing arrived for 1.5 s' });
    expect(performance.now() - startedAt).toBeLessThan(10_000);
    const pid = Number(readFileSync(join(folder, 'pid'), 'utf8'));
    expect(() => process.kill(pid, 0)).toThrow('ESRCH');
  });

  test('says the installer’s first error in one line when it fails', async () => {
    const installer = `console.error('    at somewhere\\nTypeError: fetch failed\\n    at elsewhere'); process.exit(1);`;
    const folder = packageFolder({ installer });
    expect(await fetchElectronRuntime(place(folder))).toEqual({ ok: false, why: 'TypeError: fetch failed' });
  });

  test('does not believe an installer that ends well and leaves nothing', async () => {
    const folder = packageFolder({ installer: 'process.exit(0);' });
    expect(await fetchElectronRuntime(place(folder))).toEqual({
      ok: false,
      why: expect.stringMatching(/never downloaded/),
    });
  });

  test('fails in a line where there is no installer', async () => {
    const result = await fetchElectronRuntime(place(packageFolder()));
    expect(result.ok).toBe(false);
    expect(result.why).not.toContain('\n');
  });
});
