import { resolve } from 'node:path';
import { allRequests } from '#shared/contract/all-requests.ts';
import { defaultStore } from '../default-store.ts';
import { runHeadless } from './run-headless.ts';

// npm run -s sidejar -- <request> [--store FILE]

const words = process.argv.slice(2);
const at = words.indexOf('--store');
// npm runs scripts in the package's folder; a relative file is meant from where the person stood.
const named = at >= 0 ? words[at + 1] : undefined;
const store =
  named === undefined
    ? defaultStore(process.platform, process.env)
    : resolve(process.env.INIT_CWD ?? process.cwd(), named);
const [request, ...others] = at >= 0 ? words.toSpliced(at, 2) : words;

if (request === undefined || request.startsWith('-') || others.length > 0 || (at >= 0 && named === undefined)) {
  process.stderr.write(
    `Usage: npm run -s sidejar -- <request> [--store FILE] < input.json\nRequests: ${Object.keys(allRequests).sort().join(', ')}\n`,
  );
  process.exitCode = 1;
} else {
  process.exitCode = await runHeadless({
    request,
    store,
    worker: new URL('../../desk/desk-worker.ts', import.meta.url),
    stdin: process.stdin,
    stdout: process.stdout,
    stderr: process.stderr,
  });
}
