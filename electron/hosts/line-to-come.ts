import type { DeskLine } from './desk-line.ts';

/**
 * A line to a desk that is not there yet: who asks waits until it is. A window takes long to open; meanwhile the desk can be made.
 *
 * @param coming the desk's own line; where it fails, so does every request
 */
export function lineToCome(coming: Promise<DeskLine>): DeskLine {
  // Whoever asks is told; nobody may be asking yet.
  coming.catch(() => undefined);
  return {
    async ask(message) {
      return (await coming).ask(message);
    },
    stop(ask) {
      void coming.then(
        (line) => line.stop(ask),
        () => undefined,
      );
    },
    listen(listener) {
      let forget: (() => void) | null = null;
      let isForgotten = false;
      void coming.then(
        (line) => {
          if (!isForgotten) forget = line.listen(listener);
        },
        () => undefined,
      );
      return () => {
        isForgotten = true;
        forget?.();
      };
    },
    async close() {
      await coming.then(
        (line) => line.close(),
        () => undefined,
      );
    },
  };
}
