import { spawn } from 'node:child_process';
import { accessSync, constants, readFileSync, statSync } from 'node:fs';
import { mkdtemp, readdir, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

// Electron's runtime is a separate download of about 110 MB, which may be impossible where we are: the npm package
// alone does not bring it. To ask the package for its path would start that download, so the files are looked at.

export interface ElectronRuntime {
  readonly executable: string;
  /** The unpacked folder that the executable lies in. */
  readonly dist: string;
}

/** Where to look; all by default what this project has. */
export interface RuntimePlace {
  /** Folder of the npm package `electron`. */
  readonly module?: string;
  readonly environment?: Readonly<Record<string, string | undefined>>;
  readonly platform?: NodeJS.Platform;
}

const ownModule = join(import.meta.dirname, '..', 'node_modules', 'electron');

function usualName(platform: NodeJS.Platform): string {
  if (platform === 'darwin') return 'Electron.app/Contents/MacOS/Electron';
  return platform === 'win32' ? 'electron.exe' : 'electron';
}

function textOf(file: string): string | null {
  try {
    return readFileSync(file, 'utf8').trim();
  } catch {
    return null;
  }
}

function isExecutable(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}

function versionIn(file: string): string | null {
  const text = textOf(file);
  if (text === null) return null;
  const { version } = JSON.parse(text) as { version?: unknown };
  return typeof version === 'string' ? version : null;
}

/** The runtime, or one sentence about what is missing. */
export function inspectElectronRuntime(place: RuntimePlace = {}): ElectronRuntime | { readonly lack: string } {
  const { module: folder = ownModule, environment = process.env, platform = process.platform } = place;
  const version = versionIn(join(folder, 'package.json'));
  if (version === null) return { lack: 'the npm package electron is not installed' };
  const named = textOf(join(folder, 'path.txt'));
  const elsewhere = environment.ELECTRON_OVERRIDE_DIST_PATH;
  if (elsewhere !== undefined && elsewhere !== '') {
    const executable = join(elsewhere, named ?? usualName(platform));
    return isExecutable(executable)
      ? { executable, dist: elsewhere }
      : { lack: `ELECTRON_OVERRIDE_DIST_PATH is set, but ${executable} is no program` };
  }
  const dist = join(folder, 'dist');
  const found = textOf(join(dist, 'version'))?.replace(/^v/, '');
  if (named === null || found === undefined) return { lack: `Electron ${version}’s runtime was never downloaded` };
  if (found !== version) return { lack: `the runtime is Electron ${found}, but version ${version} is needed` };
  const executable = join(dist, named);
  return isExecutable(executable) ? { executable, dist } : { lack: `${executable} is no program` };
}

/**
 * Finds Electron's runtime without starting a download.
 *
 * @returns null where it is missing, of another version, or no program (`inspectElectronRuntime` says which)
 */
export function findElectronRuntime(place: RuntimePlace = {}): ElectronRuntime | null {
  const seen = inspectElectronRuntime(place);
  return 'lack' in seen ? null : seen;
}

export interface FetchOptions extends RuntimePlace {
  /** Give up when nothing has arrived for so long. */
  readonly silence_ms?: number;
  /** Told in a short sentence how far it is. */
  readonly onProgress?: (said: string) => void;
}

async function bytesUnder(folder: string): Promise<number> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
  const sizes = entries
    .filter((entry) => entry.isFile())
    .map((entry) =>
      stat(join(entry.parentPath, entry.name)).then(
        ({ size }) => size,
        () => 0,
      ),
    );
  return (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0);
}

function firstError(output: string): string {
  const lines = output.split('\n').map((line) => line.trim());
  return (lines.find((line) => /error/i.test(line)) ?? lines.find((line) => line !== '') ?? '').slice(0, 200);
}

/**
 * Tries once to download Electron's runtime, with its own installer.
 *
 * Method: the installer says nothing for its first half minute, so what it has written is measured instead: its
 * temporary folder is one of ours. It is given up when neither bytes nor words arrive for `silence_ms`.
 *
 * @returns whether the runtime is here now, and otherwise why not, in a line
 */
export async function fetchElectronRuntime({
  silence_ms = 5000,
  onProgress = () => undefined,
  ...place
}: FetchOptions = {}): Promise<{ readonly ok: boolean; readonly why: string | null }> {
  const folder = place.module ?? ownModule;
  const temporary = await mkdtemp(join(tmpdir(), 'sidejar-electron-'));
  const child = spawn(process.execPath, [join(folder, 'install.js')], {
    env: { ...(place.environment ?? process.env), TMPDIR: temporary, TMP: temporary, TEMP: temporary },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let output = '';
  let heardAt = performance.now();
  for (const stream of [child.stdout, child.stderr]) {
    stream.on('data', (part: Buffer) => {
      output = (output + part.toString('utf8')).slice(-20_000);
      heardAt = performance.now();
    });
  }
  let bytes = 0;
  let isSilent = false;
  async function look(): Promise<void> {
    const now = (await bytesUnder(temporary)) + (await bytesUnder(join(folder, 'dist')));
    if (now !== bytes) {
      heardAt = performance.now();
      if (Math.floor(now / 1e6) !== Math.floor(bytes / 1e6))
        onProgress(`Electron’s runtime: ${Math.floor(now / 1e6)} MB`);
      bytes = now;
    }
    if (performance.now() - heardAt > silence_ms) {
      isSilent = true;
      child.kill('SIGKILL');
    }
  }
  const watch = setInterval(() => void look(), Math.min(250, silence_ms / 4));
  const code = await new Promise<number | null>((settle) => {
    child.once('error', () => settle(null));
    child.once('close', settle);
  });
  clearInterval(watch);
  await rm(temporary, { recursive: true, force: true });
  if (isSilent) return { ok: false, why: `nothing arrived for ${silence_ms / 1000} s` };
  if (code !== 0) return { ok: false, why: firstError(output) || 'the installer could not be run' };
  const seen = inspectElectronRuntime(place);
  return 'lack' in seen ? { ok: false, why: seen.lack } : { ok: true, why: null };
}
