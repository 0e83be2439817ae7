import { EventEmitter } from 'node:events';
import type { IpcMain, IpcMainInvokeEvent, WebContents, WebFrameMain } from 'electron';
import { pageAddress } from '#hosts/ipc/page-address.ts';

type Handler = (event: IpcMainInvokeEvent, ...rest: unknown[]) => unknown;

/** Stands in for `ipcMain`: keeps the handlers, so that a test can call them as a window would. */
export function standInIpcMain() {
  const handlers = new Map<string, Handler>();
  const ipc: Pick<IpcMain, 'handle'> = {
    handle: (channel, handler) => void handlers.set(channel, handler),
  };
  return {
    ipc,
    channels: () => [...handlers.keys()],
    call: (channel: string, event: IpcMainInvokeEvent, ...rest: unknown[]): unknown =>
      handlers.get(channel)?.(event, ...rest),
  };
}

/** Stands in for a window's contents: only what the host reads of it. */
export function standInPage(id: number, url = pageAddress) {
  const sent: { channel: string; message: unknown }[] = [];
  const emitter = new EventEmitter();
  const mainFrame = { url } as WebFrameMain;
  let isGone = false;
  const page = Object.assign(emitter, {
    id,
    mainFrame,
    isDestroyed: () => isGone,
    send: (channel: string, message: unknown) => {
      if (isGone) throw new Error('Object has been destroyed');
      sent.push({ channel, message });
    },
  }) as unknown as WebContents;
  return {
    page,
    sent,
    event: (frame: WebFrameMain | null = mainFrame) => ({ sender: page, senderFrame: frame }) as IpcMainInvokeEvent,
    destroy() {
      isGone = true;
      emitter.emit('destroyed');
    },
  };
}
