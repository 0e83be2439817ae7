import type { BrowserWindow, Notification } from 'electron';
import type { DeskLine } from '#hosts/desk-line.ts';
import { tellPage } from '#hosts/ipc/carry-desk.ts';
import { tellWhatIsDue } from './tell-what-is-due.ts';

/** Notifications that the system has not let go of: one that is collected forgets its click. */
const shown = new Set<Notification>();

/**
 * Shows what is newly due in a kitchen as notifications of the system; a click brings its window to the front, on Today.
 *
 * @param notifications Electron's `Notification`
 * @returns ends it; ends by itself with the window
 */
export function dueNotifications(
  notifications: typeof Notification,
  window: BrowserWindow,
  line: Pick<DeskLine, 'ask'>,
): () => void {
  if (!notifications.isSupported()) return () => undefined;
  const stop = tellWhatIsDue({
    line,
    clock: Date.now,
    show(words) {
      const notification = new notifications({ ...words });
      const forget = () => shown.delete(notification);
      notification.on('close', forget);
      notification.on('click', () => {
        forget();
        if (window.isDestroyed()) return;
        if (window.isMinimized()) window.restore();
        window.show();
        window.focus();
        tellPage(window.webContents, { kind: 'menu', act: 'go:/' });
      });
      shown.add(notification);
      notification.show();
    },
  });
  window.once('closed', stop);
  return stop;
}
