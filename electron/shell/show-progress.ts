import type { BrowserWindow } from 'electron';
import type { DeskLine } from '#hosts/desk-line.ts';

/** Without news for this long, the work has ended or was stopped. */
const quiet_ms = 1500;

/**
 * Shows long work in the task bar, while it goes on.
 *
 * @returns ends it
 */
export function showProgress(
  window: Pick<BrowserWindow, 'setProgressBar' | 'isDestroyed'>,
  line: DeskLine,
): () => void {
  let timer: NodeJS.Timeout | undefined;
  const clear = () => {
    if (!window.isDestroyed()) window.setProgressBar(-1);
  };
  const deafen = line.listen((event) => {
    if (event.kind !== 'progress' || window.isDestroyed()) return;
    clearTimeout(timer);
    if (event.done >= event.total) return clear();
    window.setProgressBar(event.done / event.total);
    timer = setTimeout(clear, quiet_ms);
  });
  return () => {
    clearTimeout(timer);
    deafen();
  };
}
