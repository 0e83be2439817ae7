import { decimalMark } from '#core/words/figures.ts';
import { laidWords } from '#core/words/laid-words.ts';
import { phrase } from '#core/words/phrase.ts';
import type { AskedWays, Bridge, CountedWork } from '#shared/carriage.ts';
import type { AskedOf, RequestName, ValueOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';

export interface AskOptions {
  /** Told how far a long request has come. */
  readonly onProgress?: (done: number, total: number, work?: CountedWork) => void;
  /** Aborting asks the desk to stop; the request then fails as `stopped`. */
  readonly signal?: AbortSignal;
}

let bridge: Bridge | null = null;
let asked = 0;
const mark = Array.from(crypto.getRandomValues(new Uint8Array(8)), (byte) => byte.toString(16).padStart(2, '0')).join(
  '',
);

/** Says which bridge carries the page's requests from now on. */
export function connect(to: Bridge): void {
  bridge = to;
}

/** In which words and figures the answer is to be said; nothing where they are the desk's own. */
function ways(): { readonly ways?: AskedWays } {
  const [language, decimal] = [laidWords()?.language ?? 'en', decimalMark()];
  return language === 'en' && decimal === '.' ? {} : { ways: { language, decimal } };
}

/**
 * Asks the desk, by a request's name in the contract.
 *
 * @returns the answer's value
 * @throws Failure with the desk's code, sentence and path
 * @example const { trials } = await ask('trials:list', {});
 */
export async function ask<Name extends RequestName>(
  name: Name,
  input: AskedOf<Name>,
  { onProgress, signal }: AskOptions = {},
): Promise<ValueOf<Name>> {
  if (bridge === null) throw new Failure('internal', phrase`The page is not connected to its kitchen yet.`);
  if (signal?.aborted) throw new Failure('stopped', phrase`Stopped before it began.`);
  asked += 1;
  const carrier = bridge;
  const id = `${mark}-${asked}`;
  const stop = () => carrier.stop(id);
  signal?.addEventListener('abort', stop, { once: true });
  const deafen =
    onProgress === undefined
      ? undefined
      : carrier.listen((event) => {
          if (event.kind === 'progress' && event.ask === id) onProgress(event.done, event.total, event.work);
        });
  try {
    const envelope = await carrier.ask({ ask: id, name, input, ...ways() });
    if (!envelope.ok) throw new Failure(envelope.error.code, envelope.error.message, envelope.error.path);
    return envelope.value as ValueOf<Name>;
  } finally {
    signal?.removeEventListener('abort', stop);
    deafen?.();
  }
}
