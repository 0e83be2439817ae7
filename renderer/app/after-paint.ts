import { pageIsGoing } from './leaving.ts';

/** A window that is covered paints nothing; nobody waits longer than this. */
const most_ms = 100;

/**
 * Resolves once the frame that is being made has been shown, and at once in a window that is hidden or about to go.
 *
 * What is not seen, such as a request, begins after it: so the eye never waits for it.
 */
export function afterPaint(): Promise<void> {
  return new Promise((resolve) => {
    if (document.hidden || pageIsGoing()) {
      resolve();
      return;
    }
    function done(): void {
      window.removeEventListener('pagehide', done);
      resolve();
    }
    window.addEventListener('pagehide', done);
    // The task after a frame's callbacks comes after its paint.
    requestAnimationFrame(() => setTimeout(done));
    setTimeout(done, most_ms);
  });
}
