import { statSync } from 'node:fs';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';

/** Knows the kitchen's file as it was opened, and notices when it is no longer the one at its place. */
export interface FileKeeper {
  /** @throws Failure `store-missing` when the file, or the log beside it, was moved, deleted or replaced */
  assertThere(): void;
}

function identityOf(path: string): string | null {
  const found = statSync(path, { throwIfNoEntry: false, bigint: true });
  return found === undefined ? null : `${found.dev}/${found.ino}`;
}

/**
 * A deleted file stays writable for whoever holds it open, and everything written to it is lost with the program: so each write
 * looks first whether the file at its place is still the one that was opened. One look costs a few microseconds.
 */
export function fileKeeperOf(file: string): FileKeeper {
  const opened = identityOf(file);
  // Made by the first write; a new one is another file and not ours.
  let log: string | null = null;
  return {
    assertThere() {
      const logNow = identityOf(`${file}-wal`);
      const isSame = opened !== null && identityOf(file) === opened && (log === null || logNow === log);
      log ??= logNow;
      if (isSame) return;
      throw new Failure(
        'store-missing',
        phrase`The kitchen’s file was moved, deleted or replaced while it was open. Nothing was written. What this program still holds can be read: make a backup into another folder now, then start again.`,
      );
    },
  };
}
