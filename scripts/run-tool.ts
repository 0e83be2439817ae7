import { spawn } from 'node:child_process';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');

/** Runs a development tool's own script with this Node, as it was started itself; resolves with its exit code. */
export function runTool([script = '', ...args]: readonly string[], env: NodeJS.ProcessEnv = {}): Promise<number> {
  const child = spawn(process.execPath, [...process.execArgv, join(root, 'node_modules', script), ...args], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, ...env },
  });
  return new Promise((resolve) => {
    child.on('error', () => resolve(1));
    child.on('exit', (code) => resolve(code ?? 1));
  });
}
