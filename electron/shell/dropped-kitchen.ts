import type { IpcRenderer, WebUtils } from 'electron';
import { channels } from '#hosts/ipc/channels.ts';

/**
 * Hands a kitchen's file that is dropped on the page to the main process, which opens it in a window of its own.
 *
 * Only here can be seen where a dropped file lies. Other files are the page's, and so is a drop that no hand has made.
 */
export function handDroppedKitchens(
  page: Window,
  ipc: Pick<IpcRenderer, 'invoke'>,
  files: Pick<WebUtils, 'getPathForFile'>,
): void {
  page.addEventListener(
    'drop',
    (event) => {
      if (!event.isTrusted) return;
      const kitchens = [...(event.dataTransfer?.files ?? [])].filter(({ name }) => /\.sidejar$/i.test(name));
      if (kitchens.length === 0) return;
      event.preventDefault();
      for (const file of kitchens) void ipc.invoke(channels.dropped, files.getPathForFile(file)).catch(() => undefined);
    },
    { capture: true },
  );
}
