import type { IpcMain, IpcMainInvokeEvent, WebContents } from 'electron';
import type { DeskLine } from '#hosts/desk-line.ts';
import type { DeskEvent } from '#shared/carriage.ts';
import type { Envelope, FailureCode } from '#shared/failure.ts';
import { channels } from './channels.ts';
import { isKitchenPath } from './kitchen-path.ts';
import { isPageAddress } from './page-address.ts';
import { isAskMark, readAskMessage } from './read-ask-message.ts';

/** Carries requests of our own windows to their desks. */
export interface DeskCarrier {
  /** From now on this window may ask this desk, and hears what it tells; ends by itself with the window. */
  attach(page: WebContents, line: DeskLine): void;
}

interface Attached {
  readonly line: DeskLine;
  readonly underWay: Set<string>;
}

function failed(code: FailureCode, message: string): Envelope<never> {
  return { ok: false, error: { code, message } };
}

/** Sends an event to a page, if its window is still there. */
export function tellPage(page: WebContents, event: DeskEvent): void {
  if (!page.isDestroyed()) page.send(channels.event, event);
}

/**
 * Opens the channels on which windows ask, and hands on what the desks tell.
 *
 * Method: only the main frame of an attached window, showing the page's own origin, is answered. Each window's marks are
 * kept apart on the line, so that progress reaches only the window that asked and nobody stops another's request.
 *
 * @param ipc Electron's `ipcMain`
 * @param askedIn told of the language of each request
 * @param dropped told of a kitchen's file that was dropped on one of the windows
 * @returns where windows are attached to their desks
 */
export function carryDesk(
  ipc: Pick<IpcMain, 'handle'>,
  askedIn: (language: string, line: DeskLine) => void = () => {},
  dropped: (file: string) => void = () => {},
): DeskCarrier {
  const pages = new Map<WebContents, Attached>();

  function senderOf({ sender, senderFrame }: IpcMainInvokeEvent): Attached | null {
    if (senderFrame === null || senderFrame !== sender.mainFrame || !isPageAddress(senderFrame.url)) return null;
    return pages.get(sender) ?? null;
  }
  const markOn = (page: WebContents) => `${page.id}:`;

  ipc.handle(channels.ask, async (event, value: unknown): Promise<Envelope<unknown>> => {
    const attached = senderOf(event);
    if (attached === null) return failed('not-allowed', 'Only the workbench’s own window may ask the desk.');
    const message = readAskMessage(value);
    if (message === null) return failed('invalid-input', 'A request needs a mark and a name, both short texts.');
    const { line, underWay } = attached;
    askedIn(message.ways?.language ?? 'en', line);
    const ask = markOn(event.sender) + message.ask;
    const isAgain = underWay.has(ask);
    underWay.add(ask);
    try {
      return await line.ask({ ...message, ask });
    } finally {
      if (!isAgain) underWay.delete(ask);
    }
  });

  ipc.handle(channels.stop, (event, ask: unknown): void => {
    if (isAskMark(ask)) senderOf(event)?.line.stop(markOn(event.sender) + ask);
  });

  ipc.handle(channels.dropped, (event, file: unknown): void => {
    if (senderOf(event) !== null && isKitchenPath(file)) dropped(file);
  });

  return {
    attach(page, line) {
      const attached: Attached = { line, underWay: new Set() };
      const mark = markOn(page);
      const stopListening = line.listen((event) => {
        if (event.kind !== 'progress') tellPage(page, event);
        else if (event.ask.startsWith(mark)) tellPage(page, { ...event, ask: event.ask.slice(mark.length) });
      });
      pages.set(page, attached);
      page.once('destroyed', () => {
        stopListening();
        pages.delete(page);
        // Nobody is left to hear the answers.
        for (const ask of attached.underWay) line.stop(ask);
      });
    },
  };
}
