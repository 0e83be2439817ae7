import type { BrowserWindow } from 'electron';
import type { DeskLine } from '#hosts/desk-line.ts';
import type { DeskCarrier } from '#hosts/ipc/carry-desk.ts';

/** The open kitchens: each has one window and one desk. */
export interface Kitchens {
  /** Opens a kitchen in a window of its own, or brings its window to the front. */
  open(store: string): void;
  /** Brings the window used last to the front; false when none is open. */
  focus(): boolean;
  /** The kitchen in front, or null. */
  front(): { readonly store: string; readonly window: BrowserWindow } | null;
  /** Closes every desk, and settles when all are closed. */
  close(): Promise<void>;
}

export interface KitchensOptions {
  readonly carrier: DeskCarrier;
  openLine(store: string): DeskLine;
  /** @param others how many windows are open already */
  openWindow(others: number): BrowserWindow;
  load(window: BrowserWindow): Promise<void>;
}

function raise(window: BrowserWindow): void {
  if (window.isMinimized()) window.restore();
  window.show();
  window.focus();
}

export function kitchensOf({ carrier, openLine, openWindow, load }: KitchensOptions): Kitchens {
  /** In the order of their last use, the latest at the end. */
  const windows = new Map<string, BrowserWindow>();
  const lines = new Set<DeskLine>();

  async function closeLine(line: DeskLine): Promise<void> {
    await line.close();
    lines.delete(line);
  }

  return {
    open(store) {
      const known = windows.get(store);
      if (known !== undefined) {
        raise(known);
        return;
      }
      const line = openLine(store);
      lines.add(line);
      const window = openWindow(windows.size);
      windows.set(store, window);
      carrier.attach(window.webContents, line);
      window.on('focus', () => {
        windows.delete(store);
        windows.set(store, window);
      });
      window.once('closed', () => {
        windows.delete(store);
        void closeLine(line);
      });
      void load(window);
    },
    focus() {
      const last = [...windows.values()].at(-1);
      if (last !== undefined) raise(last);
      return last !== undefined;
    },
    front() {
      const last = [...windows].at(-1);
      return last === undefined ? null : { store: last[0], window: last[1] };
    },
    async close() {
      await Promise.all([...lines].map(closeLine));
    },
  };
}
