import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fetchElectronRuntime, findElectronRuntime } from './electron-runtime.ts';

const attempts = join(import.meta.dirname, '..', 'node_modules', '.sidejar-electron-attempt');
const day_ms = 24 * 60 * 60 * 1000;

function triedToday(): boolean {
  if (!existsSync(attempts)) return false;
  const at = Number(readFileSync(attempts, 'utf8'));
  return Number.isFinite(at) && Date.now() - at < day_ms;
}

/**
 * Electron's executable: the one that is there, or one fetched now in a single attempt.
 *
 * A failed attempt is said in one line and not repeated for a day, unless asked for again.
 */
export async function obtainElectron(options: { again: boolean; say: (line: string) => void }): Promise<string | null> {
  const present = findElectronRuntime();
  if (present !== null) return present.executable;
  if (triedToday() && !options.again) return null;
  options.say('Fetching Electron’s runtime (once) …');
  const result = await fetchElectronRuntime({ silence_ms: 5000, onProgress: options.say });
  if (result.ok) return findElectronRuntime()?.executable ?? null;
  writeFileSync(attempts, String(Date.now()));
  options.say(
    `Electron’s runtime could not be fetched (${result.why}); another window is used. Try again with: npm start -- --fetch-electron`,
  );
  return null;
}
