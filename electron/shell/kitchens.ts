import type { BrowserWindow } from 'electron';
import type { DeskLine } from '#hosts/desk-line.ts';
import type { DeskCarrier } from '#hosts/ipc/carry-desk.ts';
import { showProgress } from './show-progress.ts';

/** One kitchen, its window and the line to its desk. */
export interface OpenKitchen {
  readonly store: string;
  readonly window: BrowserWindow;
  readonly line: DeskLine;
}

/** The open kitchens: each has one window and one desk. */
export interface Kitchens {
  /** Opens a kitchen in a window of its own, or brings its window to the front. */
  open(store: string): void;
  /** Brings the window used last to the front; false when none is open. */
  focus(): boolean;
  /** The kitchen in front, or null. */
  front(): OpenKitchen | null;
  /** Closes every desk, and settles when all are closed. */
  close(): Promise<void>;
}

export interface KitchensOptions {
  readonly carrier: DeskCarrier;
  openLine(store: string): DeskLine;
  /** @param others how many windows are open already */
  openWindow(others: number): BrowserWindow;
  load(window: BrowserWindow): Promise<void>;
  /** Told of every kitchen that gets a window. */
  opened?(kitchen: OpenKitchen): void;
}

function raise(window: BrowserWindow): void {
  if (window.isMinimized()) window.restore();
  window.show();
  window.focus();
}

export function kitchensOf({ carrier, openLine, openWindow, load, opened }: KitchensOptions): Kitchens {
  /** In the order of their last use, the latest at the end. */
  const windows = new Map<string, OpenKitchen>();
  const lines = new Set<DeskLine>();

  async function closeLine(line: DeskLine): Promise<void> {
    await line.close();
    lines.delete(line);
  }

  return {
    open(store) {
      const known = windows.get(store);
      if (known !== undefined) {
        raise(known.window);
        return;
      }
      const line = openLine(store);
      lines.add(line);
      const window = openWindow(windows.size);
      const kitchen: OpenKitchen = { store, window, line };
      windows.set(store, kitchen);
      carrier.attach(window.webContents, line);
      window.on('focus', () => {
        windows.delete(store);
        windows.set(store, kitchen);
      });
      window.once('closed', () => {
        windows.delete(store);
        void closeLine(line);
      });
      const quiet = showProgress(window, line);
      window.once('closed', quiet);
      opened?.(kitchen);
      void load(window);
    },
    focus() {
      const last = [...windows.values()].at(-1);
      if (last !== undefined) raise(last.window);
      return last !== undefined;
    },
    front() {
      return [...windows.values()].at(-1) ?? null;
    },
    async close() {
      await Promise.all([...lines].map(closeLine));
    },
  };
}
