import { phrase } from '#core/words/phrase.ts';
import { Failure, type FailureReport } from '#shared/failure.ts';
import { openDeskLine } from '../desk-line.ts';
import { bodyLimit_bytes, parseJson } from '../read-json.ts';

export interface HeadlessOptions {
  readonly request: string;
  readonly store: string;
  /** The desk's worker file. */
  readonly worker: URL;
  readonly stdin: NodeJS.ReadableStream & { readonly isTTY?: boolean };
  readonly stdout: NodeJS.WritableStream;
  readonly stderr: NodeJS.WritableStream;
}

async function readInput(stdin: HeadlessOptions['stdin']): Promise<unknown> {
  if (stdin.isTTY) return {};
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of stdin) {
    const bytes = Buffer.from(part as Buffer | string);
    length += bytes.length;
    if (length > bodyLimit_bytes) {
      throw new Failure('too-large', phrase`The input may have up to ${Math.floor(bodyLimit_bytes / 1024 / 1024)} MB.`);
    }
    parts.push(bytes);
  }
  const text = Buffer.concat(parts).toString('utf8');
  return text.trim() === '' ? {} : parseJson(text);
}

/**
 * Answers one request: JSON on standard input, its value as JSON on standard output.
 *
 * @returns the exit code: 0, or 1 with the failure as JSON on standard error and nothing on standard output
 */
export async function runHeadless(options: HeadlessOptions): Promise<number> {
  const fail = (report: FailureReport): number => {
    options.stderr.write(`${JSON.stringify(report)}\n`);
    return 1;
  };
  let input: unknown;
  try {
    input = await readInput(options.stdin);
  } catch (error) {
    return fail(
      error instanceof Failure ? error.report() : { code: 'internal', message: phrase`The input could not be read.` },
    );
  }
  const line = openDeskLine({ worker: options.worker, store: options.store, makes: 'writes' });
  const ask = 'headless';
  const forget = line.listen((event) => {
    if (event.kind === 'progress') options.stderr.write(`${JSON.stringify(event)}\n`);
  });
  const stop = () => line.stop(ask);
  process.once('SIGINT', stop);
  const envelope = await line.ask({ ask, name: options.request, input });
  process.removeListener('SIGINT', stop);
  forget();
  await line.close();
  if (!envelope.ok) return fail(envelope.error);
  options.stdout.write(`${JSON.stringify(envelope.value)}\n`);
  return 0;
}
