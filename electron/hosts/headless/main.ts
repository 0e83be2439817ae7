import { allRequests } from '#shared/contract/all-requests.ts';
import { defaultStore } from '../default-store.ts';
import { runHeadless } from './run-headless.ts';

// npm run -s sidejar -- <request> [--store FILE]

const words = process.argv.slice(2);
const at = words.indexOf('--store');
const store = at >= 0 ? words[at + 1] : defaultStore(process.platform, process.env);
const [request, ...others] = at >= 0 ? words.toSpliced(at, 2) : words;

if (request === undefined || request.startsWith('-') || others.length > 0 || store === undefined) {
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
