import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { isBuilt } from '#scripts/build.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';

const root = join(import.meta.dirname, '..', '..');

it('npm start -- --serve prints an address, serves its page, and Ctrl+C ends it at once, built or still building', async () => {
  const wasBuilt = isBuilt();
  const store = join(temporaryFolder(), 'k.sidejar');
  const child = spawn(process.execPath, [join(root, 'scripts/start.ts'), '--serve', '--store', store], { cwd: root });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (part: Buffer) => (said += part.toString()));
  const gone = new Promise<number | NodeJS.Signals | null>((resolve) =>
    child.once('close', (code, signal) => resolve(code ?? signal)),
  );
  if (wasBuilt) {
    await expect.poll(() => said, { timeout: 20_000 }).toMatch(/http:\/\/127\.0\.0\.1:\d+\/#ticket=/);
    const [address = ''] = /http:\/\/127\.0\.0\.1:\d+\//.exec(said) ?? [];
    expect(await (await fetch(address)).text()).toContain('<title>Sidejar</title>');
  } else {
    await expect.poll(() => said, { timeout: 20_000 }).toContain('Building the workbench');
  }
  child.kill('SIGINT');
  // Before there is anything to tidy up the system's own way will do.
  expect(wasBuilt ? [0] : [0, 'SIGINT']).toContain(await gone);
  expect(said).not.toContain('has stopped');
}, 60_000);
