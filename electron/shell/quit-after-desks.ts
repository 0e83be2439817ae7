import type { App } from 'electron';

/** A desk deep in a computation is not waited for longer: what it has not committed is not in the kitchen. */
const patience_ms = 10_000;

/**
 * Holds the program's end back until every desk has closed its kitchen.
 *
 * @param close closes every desk and settles when all are closed
 * @param longest_ms how long to wait at most
 */
export function quitAfterDesks(
  app: Pick<App, 'on' | 'exit'>,
  close: () => Promise<void>,
  longest_ms: number = patience_ms,
): void {
  let isClosing = false;
  app.on('will-quit', (event) => {
    event.preventDefault();
    if (isClosing) return;
    isClosing = true;
    let timer: NodeJS.Timeout | undefined;
    const late = new Promise<number>((settle) => {
      timer = setTimeout(() => settle(1), longest_ms);
    });
    const closed = close().then(
      () => 0,
      () => 1,
    );
    void Promise.race([closed, late]).then((code) => {
      clearTimeout(timer);
      app.exit(code);
    });
  });
}

/** Ends with the last window, except on macOS, where the program waits in the dock and opens again on a click. */
export function endWithLastWindow(app: Pick<App, 'on' | 'quit'>, platform: NodeJS.Platform, reopen: () => void): void {
  app.on('window-all-closed', () => {
    if (platform !== 'darwin') app.quit();
  });
  app.on('activate', (_event, hasVisibleWindows) => {
    if (!hasVisibleWindows) reopen();
  });
}
