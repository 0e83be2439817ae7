import { runHeadless } from '#hosts/headless/run-headless.ts';

/** Writes what is left of a stream; a reader that went away is no reason to stay. */
function drained(stream: NodeJS.WritableStream): Promise<void> {
  return new Promise((done) => {
    stream.once('error', () => done());
    stream.write('', () => done());
  });
}

/**
 * Answers one request without a window, on the standard streams.
 *
 * @returns the exit code, once everything is written
 */
export async function answerAsk(request: string, store: string, worker: URL): Promise<number> {
  const { stdin, stdout, stderr } = process;
  const code = await runHeadless({ request, store, worker, stdin, stdout, stderr });
  // Leaving at once would cut off what a pipe has not taken yet.
  await Promise.all([drained(stdout), drained(stderr)]);
  return code;
}
