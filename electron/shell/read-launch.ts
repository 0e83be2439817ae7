import { resolve } from 'node:path';

/** What the program was started for. */
export interface Launch {
  /** A request to answer without a window, or null. */
  readonly ask: string | null;
  /** The kitchen asked for, absolute, or null for the usual one. */
  readonly store: string | null;
}

interface Found {
  readonly value: string;
  readonly isGiven: boolean;
}

function option(words: readonly string[], name: string): Found | null {
  for (const [place, word] of words.entries()) {
    if (word.startsWith(`${name}=`))
      return { value: word.slice(name.length + 1), isGiven: word.length > name.length + 1 };
    if (word === name) {
      const next = words[place + 1] ?? '';
      return { value: next, isGiven: next !== '' && !next.startsWith('--') };
    }
  }
  return null;
}

/**
 * Reads `--store FILE` and `--ask REQUEST` from the command line, wherever they stand among Chromium's own switches.
 *
 * @param words the command line without the program itself
 * @param folder the folder that relative files start from
 * @returns the launch, or a sentence that says what is missing
 * @example readLaunch(['--store', 'cellar.sidejar'], '/home/ada') // { ask: null, store: '/home/ada/cellar.sidejar' }
 */
export function readLaunch(words: readonly string[], folder: string): Launch | { readonly problem: string } {
  const ask = option(words, '--ask');
  const store = option(words, '--store');
  if (ask?.isGiven === false) return { problem: '--ask needs the name of a request, such as --ask store:check.' };
  if (store?.isGiven === false) return { problem: '--store needs a file, such as --store cellar.sidejar.' };
  return { ask: ask?.value ?? null, store: store === null ? null : resolve(folder, store.value) };
}
