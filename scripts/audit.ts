import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { readAudit } from './dependencies/read-audit.ts';

// npm run audit: asks the package registry for known weaknesses of the locked packages. Needs a network, so no test runs it.

const asked = spawnSync('npm', ['audit', '--json'], {
  cwd: join(import.meta.dirname, '..'),
  encoding: 'utf8',
  timeout: 60_000,
  shell: process.platform === 'win32',
  maxBuffer: 64 * 1024 * 1024,
});
const { lines, code } = readAudit(asked.stdout ?? '');
for (const line of lines) console.log(line);
process.exitCode = code;
